package rigspeak.catalogue;

/**
 * A table that a crew supplies.
 *
 * @param name which table of the catalogue it adds to: its file's name without the ending
 * @param file what a fault calls it
 * @param text of the file
 */
public record SuppliedTable(String name, String file, String text) {}
