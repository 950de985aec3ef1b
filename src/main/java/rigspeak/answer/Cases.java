package rigspeak.answer;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * What is made of each case of a sealed type; it stands for the switch over types that the language
 * level does not have. A case without an entry is found when the table is made, not when it is
 * used.
 *
 * @param <T> the sealed type
 * @param <R> what is made of it
 */
final class Cases<T, R> {
  private final Class<T> type;
  private final Map<Class<?>, Function<T, R>> made = new HashMap<>();

  private Cases(Class<T> type) {
    this.type = type;
  }

  static <T, R> Cases<T, R> of(Class<T> type) {
    return new Cases<>(type);
  }

  <C extends T> Cases<T, R> on(Class<C> one, Function<? super C, ? extends R> make) {
    made.put(one, each -> make.apply(one.cast(each)));
    return this;
  }

  /**
   * The finished table.
   *
   * @throws IllegalStateException if a case is missing
   */
  Cases<T, R> all() {
    Set<Class<?>> missing = new LinkedHashSet<>(List.of(type.getPermittedSubclasses()));
    missing.removeAll(made.keySet());
    if (!missing.isEmpty()) {
      throw new IllegalStateException("nothing is said of " + missing);
    }
    return this;
  }

  R make(T each) {
    return made.get(each.getClass()).apply(each);
  }
}
