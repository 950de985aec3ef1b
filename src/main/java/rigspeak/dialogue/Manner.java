package rigspeak.dialogue;

/** How answers are given: how much they say and how fast they are spoken. */
public record Manner(Detail detail, Pace pace) {
  static Manner usual() {
    return new Manner(Detail.FULL, Pace.NORMAL);
  }

  Manner with(Detail wanted) {
    return new Manner(wanted, pace);
  }

  Manner with(Pace wanted) {
    return new Manner(detail, wanted);
  }
}
