/**
 * Every sentence that the tool can utter.
 *
 * <p>A sentence is words, commas and full stops, and a question mark where a drill asks: no
 * figures, no symbols, no short forms. A read-back uses the words in which the climber can say the
 * same value, so that it can be said back.
 */
package rigspeak.answer;
