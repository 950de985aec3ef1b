package rigspeak.answer;

/** What is said of a microphone or loudspeaker that is lost while one talks. */
public enum LineNotice {
  MICROPHONE_GONE("I cannot hear you. The microphone is gone. Every value is kept."),
  MICROPHONE_BACK("The microphone is back. Say again."),
  LOUDSPEAKER_BACK("The loudspeaker was gone. I say it again.");

  private final String text;

  LineNotice(String text) {
    this.text = text;
  }

  /** The words that are spoken and printed. */
  public String text() {
    return text;
  }
}
