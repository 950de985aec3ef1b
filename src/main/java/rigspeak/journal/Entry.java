package rigspeak.journal;

import java.time.Instant;

/**
 * One line of a journal.
 *
 * @param number from 1 in each file
 * @param at by the machine's clock, which may have been set back since the line before
 */
public record Entry(long number, Instant at, Event event) {}
