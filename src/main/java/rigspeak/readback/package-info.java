/**
 * A rig as it is held against a rig as it was planned: the differences, the talk over a half-duplex
 * radio in which they are settled, and when that channel may be spoken on.
 */
package rigspeak.readback;
