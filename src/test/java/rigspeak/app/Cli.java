package rigspeak.app;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/** One run of the command line, as a user sees it. */
record Cli(int exitCode, String out, String err) {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  static Cli run(Object... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] words = new String[arguments.length];
    for (int i = 0; i < words.length; i++) {
      words[i] = arguments[i].toString();
    }
    int exitCode = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
    return new Cli(exitCode, out.toString(), err.toString());
  }

  /** Every line of the output as JSON. */
  List<JsonNode> json() {
    return out.lines().map(Cli::parse).toList();
  }

  boolean hasStackTrace() {
    return (out + err).contains("\tat ") || (out + err).contains("Exception");
  }

  private static JsonNode parse(String line) {
    try {
      return MAPPER.readTree(line);
    } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
      throw new AssertionError("not JSON: " + line, e);
    }
  }
}
