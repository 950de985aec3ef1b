package rigspeak.grammar;

import java.util.List;

/** A piece of the grammar, as its file writes it. */
public sealed interface Phrase {

  /** The pieces that it is made of; what a rule allows is not among them. */
  default List<Phrase> parts() {
    return List.of();
  }

  /** One word, said as it is written. */
  record Word(String text) implements Phrase {}

  /** All parts, one after the other. */
  record Sequence(List<Phrase> parts) implements Phrase {
    public Sequence {
      parts = List.copyOf(parts);
    }
  }

  /** Any one of the options. */
  record Choice(List<Phrase> options) implements Phrase {
    public Choice {
      options = List.copyOf(options);
    }

    @Override
    public List<Phrase> parts() {
      return options;
    }
  }

  /** The part, or nothing. */
  record Maybe(Phrase part) implements Phrase {
    @Override
    public List<Phrase> parts() {
      return List.of(part);
    }
  }

  /** The part, once or again and again. */
  record OnceOrMore(Phrase part) implements Phrase {
    @Override
    public List<Phrase> parts() {
      return List.of(part);
    }
  }

  /** Whatever the rule of this name allows. */
  record Rule(String name) implements Phrase {}

  /** The part, which earns a tag when it has been said. */
  record Tagged(Phrase part, String tag) implements Phrase {
    @Override
    public List<Phrase> parts() {
      return List.of(part);
    }
  }

  /** No word at all; it is there to carry a tag. */
  record Nothing() implements Phrase {}
}
