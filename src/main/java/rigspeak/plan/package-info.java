/** A climb before anyone climbs: a file of utterances, judged from its first line to its last. */
package rigspeak.plan;
