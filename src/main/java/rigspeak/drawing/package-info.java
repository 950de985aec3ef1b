/**
 * Pictures of a rig: marks on a sheet, and their SVG. Spots and sizes are in picture units, one of
 * which is a CSS pixel where the picture is shown at its own size; x to the right, y down.
 */
package rigspeak.drawing;
