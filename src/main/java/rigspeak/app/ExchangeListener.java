package rigspeak.app;

/** Somebody who is told each exchange of a conversation, before it is spoken. */
interface ExchangeListener {
  /**
   * Takes one exchange.
   *
   * @param verb how the words came: "heard" or "said"
   */
  void exchange(String verb, Exchange exchange);
}
