/**
 * Training by ear: what is asked, what is right, how sure who answered was, and when it is best
 * asked again. Pure: the clock and the seed come from outside, and every right answer comes from
 * the same mechanics that judge a rig.
 */
package rigspeak.drill;
