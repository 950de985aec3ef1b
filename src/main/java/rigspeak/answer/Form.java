package rigspeak.answer;

import rigspeak.dialogue.Detail;

/** How much is said: what both forms share is written once, the rest side by side. */
record Form(Detail detail) {

  /** The one for the full form, the other for the brief one. */
  String or(String full, String brief) {
    return isFull() ? full : brief;
  }

  /** Said in the full form only. */
  String inFull(String words) {
    return or(words, "");
  }

  boolean isFull() {
    return detail == Detail.FULL;
  }
}
