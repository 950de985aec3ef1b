package rigspeak.answer;

/** What is said when something in the machine goes wrong. One fixed sentence each. */
public enum Mishap {
  DISK_FULL("I cannot keep the record. The disk is full. Nothing was taken."),
  READ_ONLY("I cannot keep the record. I may not write it. Nothing was taken."),
  IN_USE("I cannot keep the record. Another program is writing it. Nothing was taken."),
  CHANGED("I cannot keep the record. A line in it has been changed. Nothing was taken."),
  GONE("I cannot keep the record. Its file is gone. Nothing was taken."),
  NOT_KEPT("I cannot keep the record. The disk does not take it. Nothing was taken."),
  CLOCK_SET_BACK("The clock was set back. The record keeps its order."),
  EAR_FAILED("My hearing failed. Nothing was taken. Say it again."),
  VOICE_FAILED("My voice failed. Say again, for the answer."),
  RECKONING_FAILED("My reckoning failed. Nothing was taken. Do not load by it."),
  TOO_LONG("My reckoning takes too long. Nothing was taken. Do not load by it."),
  OUT_OF_MEMORY("I have too little memory. Nothing was taken. Say it again.");

  private final String text;

  Mishap(String text) {
    this.text = text;
  }

  /** The words that are spoken and printed. */
  public String text() {
    return text;
  }

  /** The same, to be spoken among answers. */
  public Utterance utterance() {
    return Utterance.calm(text);
  }
}
