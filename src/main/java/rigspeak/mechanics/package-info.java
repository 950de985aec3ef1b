/**
 * Forces, stresses, slip and slack: numbers in, numbers out.
 *
 * <p>Everything is plain SI, the unit is in the name: {@code N}, {@code Nm}, {@code M} (metres),
 * {@code Pa}, {@code Rad}. Nothing here knows a limit, a species or a verdict; friction, strength
 * and the like come in as arguments. {@link rigspeak.mechanics.LoadedSupport} alone reads a rig, to
 * feed them. One model a class; each says what it leaves out, its source (numbered in {@code
 * docs/sources.md}), its range and the worked example that tests it.
 *
 * <p><b>Frame.</b> The origin is where the sling lies on the limb. The x axis is the limb's plan
 * heading from its union out to its tip (bearing 0), the y axis is left of it (bearing +90
 * degrees), the z axis is up. A vertical leader has no plan heading of its own: its bearing 0 is
 * the side away from the parent stem.
 *
 * <p><b>Refusal.</b> A value that is no number, infinite or outside the stated range is a mistake
 * of the caller and is answered by an {@link IllegalArgumentException}, never by a number.
 */
package rigspeak.mechanics;
