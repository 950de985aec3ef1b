package rigspeak.drill;

/** What the trainee answered. */
public sealed interface Response {

  /** A number, in the unit of what was asked. */
  record Amount(double value) implements Response {
    public Amount {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("no answer: " + value);
      }
    }
  }

  /** A word. */
  record Named(Choice choice) implements Response {}

  /** Nothing; it counts as wrong, and says nothing of how sure anybody was. */
  record NoIdea() implements Response {}
}
