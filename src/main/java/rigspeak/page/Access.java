package rigspeak.page;

import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Who may ask for the page. Names of other machines that lead here, and pages of other places, are
 * refused; away from this machine a token is needed.
 *
 * @param hosts what the page may be asked for by, with the port
 * @param token what whoever asks must know
 */
record Access(Set<String> hosts, Optional<String> token) {
  /** A token that nobody guesses: 16 letters of 62 are 95 bits. */
  static final int SHORTEST_TOKEN = 16;

  static final String COOKIE = "rigspeak";

  Access {
    hosts = Set.copyOf(hosts);
  }

  /**
   * For a server at this address.
   *
   * @throws IllegalArgumentException if it is not on the loopback and there is no token, or the
   *     token is short or has signs that are no letters or figures
   */
  static Access to(InetSocketAddress address, Optional<String> token) {
    InetAddress bound = address.getAddress();
    if (!bound.isLoopbackAddress() && token.isEmpty()) {
      throw new IllegalArgumentException(
          "Away from this machine the page needs a token; say --token with at least "
              + SHORTEST_TOKEN
              + " letters and figures.");
    }
    if (token.isPresent() && !token.get().matches("[A-Za-z0-9]{" + SHORTEST_TOKEN + ",200}")) {
      throw new IllegalArgumentException(
          "A token has at least " + SHORTEST_TOKEN + " letters and figures, and nothing else.");
    }
    if (bound.isAnyLocalAddress()) {
      throw new IllegalArgumentException("Say one address of this machine, not all of them.");
    }
    String itself = bound.getHostAddress();
    Stream<String> names =
        bound.isLoopbackAddress()
            ? Stream.of("localhost", "127.0.0.1", "[::1]", itself)
            : Stream.of(itself.contains(":") ? "[" + itself + "]" : itself);
    return new Access(
        names.map(name -> name + ":" + address.getPort()).collect(Collectors.toSet()), token);
  }

  boolean knowsHost(Optional<String> host) {
    return host.isPresent() && hosts.contains(host.get());
  }

  /** A page of ours, or nobody's page. */
  boolean isOurs(Optional<String> origin) {
    return origin.isEmpty() || hosts.stream().anyMatch(h -> origin.get().equals("http://" + h));
  }

  boolean opens(Optional<String> said) {
    return token.isEmpty()
        || (said.isPresent()
            && MessageDigest.isEqual(
                token.get().getBytes(StandardCharsets.UTF_8),
                said.get().getBytes(StandardCharsets.UTF_8)));
  }
}
