/** Pictures on paper: the same marks as in SVG, as PDF and as PNG. */
package rigspeak.printing;
