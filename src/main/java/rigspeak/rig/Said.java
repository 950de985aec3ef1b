package rigspeak.rig;

/**
 * A value as it was said, and how it was got.
 *
 * @param value what was said
 * @param how how the climber came by it
 */
public record Said(Value value, HowGot how) {}
