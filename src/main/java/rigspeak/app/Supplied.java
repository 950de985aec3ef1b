package rigspeak.app;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import rigspeak.catalogue.Catalogue;
import rigspeak.catalogue.SuppliedTable;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.Phrase;
import rigspeak.grammar.Sentences;
import rigspeak.grammar.Sentences.Sentence;
import rigspeak.hearing.KnownWords;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understandable;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** A crew's own tables and grammar; all of them are checked before anything is done. */
final class Supplied {
  private static final String CSV = ".csv";
  private static final int LONGEST_FILE = 1_000_000;

  @Option(
      names = "--catalogue",
      paramLabel = "DIR",
      description = "with the crew's own numbers, tables in DIR; see docs/formats.md")
  private Path tables;

  @Option(
      names = "--grammar",
      paramLabel = "FILE",
      description = "with the crew's own words, a JSGF file; see docs/formats.md")
  private Path words;

  /** What a conversation thinks with. */
  record Loaded(Grammar grammar, Catalogue catalogue) {}

  /**
   * The crew's tables and grammar, or the tool's own where none is named.
   *
   * @throws IOException if something cannot be read
   * @throws rigspeak.catalogue.CatalogueFault if a table is not as it should be
   * @throws rigspeak.grammar.GrammarFault if the grammar is not as it should be
   */
  Loaded load() throws IOException {
    List<SuppliedTable> own = tables == null ? List.of() : tables(tables);
    Supplier<Catalogue> reading =
        new Ahead<>(() -> own.isEmpty() ? Catalogue.bundled() : Catalogue.with(own));
    Grammar grammar = words == null ? Grammar.bundled() : grammar(words);
    Catalogue catalogue = reading.get();
    if (tables != null || words != null) {
      refuseStrangers(grammar, catalogue);
    }
    return new Loaded(grammar, catalogue);
  }

  /** The same for plans and checks. */
  Thinking thinking() throws IOException {
    Loaded loaded = load();
    return Thinking.of(loaded.grammar(), loaded.catalogue());
  }

  private static List<SuppliedTable> tables(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.filter(file -> name(file).endsWith(CSV)).sorted().toList();
    }
    if (files.isEmpty()) {
      throw new UnreadablePlan(folder + " has no table, no file that ends in " + CSV + ".");
    }
    List<SuppliedTable> tables = new ArrayList<>();
    for (Path file : files) {
      String name = name(file).substring(0, name(file).length() - CSV.length());
      tables.add(new SuppliedTable(name, file.toString(), text(file)));
    }
    return tables;
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
  }

  private static Grammar grammar(Path file) throws IOException {
    Grammar grammar = Understandable.read(file.toString(), text(file), Grammar.bundled());
    KnownWords.refuseOthers(grammar);
    return grammar;
  }

  private static String text(Path file) throws IOException {
    try {
      return WholeFile.read(file, LONGEST_FILE);
    } catch (CharacterCodingException e) {
      throw new UnreadablePlan(file + " is no UTF-8 text.");
    }
  }

  /** A species that can be said has wood, and wood that is new can be said. */
  static void refuseStrangers(Grammar grammar, Catalogue catalogue) {
    Map<String, Set<String>> unsaid = catalogue.newSpecies();
    Understanding understanding = new Understanding(grammar);
    for (Sentence sentence :
        new Sentences(grammar).covering(new Phrase.Rule(Slot.SPECIES.key() + "_value"))) {
      Value.Species species = species(understanding, sentence);
      unsaid.values().remove(species.words());
      if (!catalogue.knows(species)) {
        throw grammar.fault(
            "<species_value>",
            "has the species \"" + sentence.text() + "\", of which no table has the wood");
      }
    }
    unsaid.keySet().stream()
        .findFirst()
        .ifPresent(
            name -> {
              throw grammar.fault(
                  "<species_value>", "has no words for \"" + name + "\" of the table wood.csv");
            });
  }

  private static Value.Species species(Understanding understanding, Sentence sentence) {
    Meaning meaning = understanding.understand(sentence.text(), Optional.of(Slot.SPECIES));
    return meaning instanceof Meaning.Values values
            && values.statements().get(0) instanceof Meaning.Statement.Value value
            && value.said().value() instanceof Value.Species species
        ? species
        : Value.Species.unknown();
  }
}
