package rigspeak.app;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import rigspeak.answer.Answers;
import rigspeak.answer.Utterance;
import rigspeak.audio.Sound;
import rigspeak.audio.UnreadableSound;
import rigspeak.audio.WavFile;
import rigspeak.catalogue.Catalogue;
import rigspeak.catalogue.CatalogueFault;
import rigspeak.catalogue.SuppliedTable;
import rigspeak.dialogue.Attention;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Dialogue;
import rigspeak.dialogue.Reply;
import rigspeak.dialogue.Turn;
import rigspeak.drill.Progress;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.GrammarFault;
import rigspeak.hearing.Profile;
import rigspeak.hostile.Attack;
import rigspeak.hostile.Hostile;
import rigspeak.hostile.SaidBy;
import rigspeak.journal.BrokenJournal;
import rigspeak.journal.CrewFolder;
import rigspeak.journal.Entry;
import rigspeak.meaning.DrillUnderstanding;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understandable;
import rigspeak.meaning.Understanding;
import rigspeak.plan.Plan;
import rigspeak.plan.PlanVerdict;
import rigspeak.plan.Walk;
import rigspeak.rig.Slot;
import rigspeak.verdict.Judge;
import rigspeak.verdict.PathVerdict;

/** Every place that takes input from outside, with the input that is tried on it. */
final class HostilePlaces {
  private static final int MEGABYTE = 1_000_000;

  /** Enough to tell good from not; the usual ten thousand would only take longer. */
  private static final int SAMPLES = 50;

  private static final Path DEMO = Path.of("demo-data");
  private static final Path OWN_GRAMMAR = Path.of("grammars", "rigspeak.jsgf");
  private static final Grammar GRAMMAR = Grammar.bundled();
  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final Judge JUDGE = new Judge(CATALOGUE, SAMPLES);
  private static final Understanding UNDERSTANDING = new Understanding(GRAMMAR);
  private static final Dialogue DIALOGUE = new Dialogue(CATALOGUE, JUDGE);
  private static final SaidBy SAID_BY = new SaidBy();

  /** A rig that is good to load; of each line one value is left out in turn. */
  private static final List<String> GOOD =
      rigspeak.page.Talk.PLAN.lines().map(String::strip).toList();

  private final Path folder;

  /**
   * @param folder for files that are read from the disk
   */
  HostilePlaces(Path folder) {
    this.folder = folder;
  }

  /**
   * One of them.
   *
   * @param few inputs in every build
   * @param many inputs in the long one
   */
  record Place(String name, int few, int many, Hostile hostile, Attack attack) {
    @Override
    public String toString() {
      return name;
    }
  }

  List<Place> all() {
    return List.of(
        place("wav", 3_000, 2_000_000, new Hostile(sounds()), 40 * MEGABYTE, 80, this::wav),
        place("words", 3_000, 2_000_000, lines(), 200 * MEGABYTE, 200, HostilePlaces::words),
        place("talk", 400, 100_000, talks(), 800 * MEGABYTE, 20_000, HostilePlaces::talk),
        place("unsaid", 800, 500_000, lines(), 800 * MEGABYTE, 2_000, HostilePlaces::unsaid),
        place("plan", 80, 40_000, plans(), 1_500 * MEGABYTE, 20_000, this::plan),
        place("profile", 2_000, 1_000_000, profiles(), 10 * MEGABYTE, 200, this::profile),
        place("trainee", 1_000, 500_000, trainees(), 30 * MEGABYTE, 300, this::trainee),
        place("journal", 300, 100_000, journals(), 900 * MEGABYTE, 2_000, this::journal),
        place("tables", 1_500, 500_000, tables(), 20 * MEGABYTE, 200, HostilePlaces::tables),
        place("grammar", 100, 20_000, grammars(), 1_500 * MEGABYTE, 2_000, HostilePlaces::grammar),
        place("script", 200, 50_000, scripts(), 900 * MEGABYTE, 20_000, this::script));
  }

  private static Place place(
      String name,
      int few,
      int many,
      Hostile hostile,
      long mostBytes,
      int mostBytesPerByte,
      Attack.Target target) {
    return new Place(
        name, few, many, hostile, new Attack(name, mostBytes, mostBytesPerByte, target));
  }

  // ---- sound ----

  private static List<byte[]> sounds() {
    short[] samples = new short[400];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (short) (8_000 * Math.sin(i / 7.0));
    }
    List<byte[]> sounds = new ArrayList<>(List.of(WavFile.bytes(Sound.of(samples))));
    for (int[] form : new int[][] {{1, 8}, {1, 24}, {1, 32}, {3, 32}, {3, 64}, {0xFFFE, 16}}) {
      for (int rate : new int[] {8_000, 44_100, 48_000}) {
        sounds.add(sound(form[0], form[1], rate, 1 + rate % 3));
      }
    }
    return sounds;
  }

  private static byte[] sound(int coding, int bits, int rate, int channels) {
    int frame = channels * bits / 8;
    ByteBuffer out = ByteBuffer.allocate(1_000).order(ByteOrder.LITTLE_ENDIAN);
    out.put(ascii("RIFF")).putInt(992).put(ascii("WAVE"));
    out.put(ascii("LIST")).putInt(6).put(ascii("INFOxx"));
    out.put(ascii("fmt ")).putInt(40).putShort((short) coding).putShort((short) channels);
    out.putInt(rate).putInt(rate * frame).putShort((short) frame).putShort((short) bits);
    out.putShort((short) 22).putShort((short) bits).putInt(0).putShort((short) 1);
    out.put(new byte[14]).put(ascii("data")).putInt(out.remaining() - 4);
    while (out.remaining() > 0) {
      out.put((byte) (out.position() * 37));
    }
    return out.array();
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private void wav(byte[] input) throws IOException {
    try (WavFile file = WavFile.open("x.wav", new ByteArrayInputStream(input))) {
      short[] some = new short[4_096];
      for (int n = file.read(some, 0, some.length); n >= 0; ) {
        n = file.read(some, 0, some.length);
      }
      file.remark().ifPresent(HostilePlaces::isOneSentence);
    } catch (UnreadableSound e) {
      isOneSentence(e.getMessage());
    }
  }

  // ---- words ----

  private static Hostile lines() {
    List<String> lines = new ArrayList<>(texts("one-day.txt", "plan.txt"));
    lines.removeIf(line -> line.isBlank() || line.startsWith("#"));
    return Hostile.ofTexts(lines);
  }

  private static List<String> texts(String... names) {
    return Arrays.stream(names).flatMap(name -> text(DEMO.resolve(name)).lines()).toList();
  }

  private static void words(byte[] input) {
    String text = utf8(input);
    Slot[] slots = Slot.values();
    Slot asked = slots[Math.floorMod(Arrays.hashCode(input), slots.length)];
    SAID_BY.hold(text, UNDERSTANDING.understand(text, Optional.empty()));
    UNDERSTANDING.hear(text, Optional.of(asked));
    UNDERSTANDING.understandRadio(text);
    new DrillUnderstanding(GRAMMAR).understand(text, Expected.inDrill("degrees"));
  }

  private static Hostile talks() {
    List<String> lines = texts("one-day.txt");
    List<String> talks = new ArrayList<>();
    for (int i = 0; i + 12 < lines.size(); i += 4) {
      talks.add(String.join("\n", lines.subList(i, i + 12)));
    }
    return Hostile.ofTexts(talks);
  }

  /** A whole talk; each answer can be said, and nothing is judged good in it but by a check. */
  private static void talk(byte[] input) {
    Conversation now = Conversation.begin();
    for (String line : utf8(input).lines().limit(60).toList()) {
      Meaning meaning = UNDERSTANDING.understand(line, now.asked());
      if (now.asked().isEmpty()) {
        SAID_BY.hold(line, meaning);
      }
      Turn turn = DIALOGUE.step(now, meaning);
      now = turn.next();
      List<Utterance> answers = Answers.say(turn.replies(), now.manner().detail());
      boolean good = answers.stream().anyMatch(each -> each.text().startsWith("Good to load"));
      if (good && !asksForVerdict(meaning)) {
        throw new AssertionError("\"" + line + "\" yields " + answers);
      }
    }
  }

  /** What repeats or explains a verdict may say it again. */
  private static boolean asksForVerdict(Meaning meaning) {
    return meaning == Meaning.Command.CHECK
        || meaning == Meaning.Command.SAY_AGAIN
        || meaning == Meaning.Command.AFFIRM
        || meaning == Meaning.Command.BRIEF
        || meaning == Meaning.Command.FULL;
  }

  /** What is left out, and the word without which nobody says it. */
  private static final Map<String, String> LEFT_OUT =
      new LinkedHashMap<>(
          Map.of(
              "all up two hundred ten pounds ", "all",
              "species northern red oak ", "species",
              "out one foot by tape", "out|at the union",
              "union sound", "union",
              "live wood ", "wood",
              "limb ten inches by tape ", "limb",
              "sling choked three wraps ", "sling",
              "over ring", "over",
              "working leg straight down twenty feet by tape", "leg"));

  private static final Map<String, Conversation> BEFORE = new HashMap<>();

  /** A rig with one value unsaid is never good, unless the line says that value. */
  private static void unsaid(byte[] input) {
    List<String> parts = LEFT_OUT.keySet().stream().sorted().toList();
    String left = parts.get(Math.floorMod(Arrays.hashCode(input), parts.size()));
    Conversation now = BEFORE.computeIfAbsent(left, HostilePlaces::without);
    StringBuilder said = new StringBuilder();
    for (String line : utf8(input).lines().limit(10).toList()) {
      Meaning meaning = UNDERSTANDING.understand(line, now.asked());
      now = DIALOGUE.step(now, meaning).next();
      said.append(' ').append(line.toLowerCase(Locale.ROOT));
    }
    Turn check = DIALOGUE.step(now, Meaning.Command.CHECK);
    boolean good =
        check.replies().stream()
            .anyMatch(
                reply ->
                    reply instanceof Reply.Judged judged
                        && judged.verdict().outcome() == PathVerdict.Outcome.GOOD);
    if (good
        && Stream.of(LEFT_OUT.get(left).split("\\|", -1)).noneMatch(said.toString()::contains)) {
      throw new AssertionError("good without \"" + left + "\" after" + said);
    }
  }

  /** Without anything left out, or the rest would show nothing. */
  static PathVerdict.Outcome wholeRig() {
    return DIALOGUE.step(without("nothing of it"), Meaning.Command.CHECK).replies().stream()
        .filter(Reply.Judged.class::isInstance)
        .map(reply -> ((Reply.Judged) reply).verdict().outcome())
        .findFirst()
        .orElseThrow();
  }

  private static Conversation without(String left) {
    Conversation now = Conversation.begin();
    for (String line : GOOD) {
      String rest = line.replace(left.strip(), "").strip();
      if (!rest.isEmpty()) {
        now = DIALOGUE.step(now, UNDERSTANDING.understand(rest, now.asked())).next();
      }
    }
    return now;
  }

  // ---- files ----

  private static Hostile plans() {
    String plan = text(DEMO.resolve("plan.txt"));
    return Hostile.ofTexts(
        List.of(plan, String.join("\n", GOOD), text(DEMO.resolve("one-day.txt"))));
  }

  private void plan(byte[] input) throws IOException {
    Path file = write("x.txt", input);
    Plan plan;
    try {
      plan = PlanFiles.read(file.toString());
    } catch (IOException e) {
      isOneSentence(Fault.sentence(e));
      return;
    }
    Plan some = new Plan(plan.name(), plan.lines().stream().limit(60).toList());
    PlanVerdict verdict = PlanVerdict.of(some, Walk.through(some, UNDERSTANDING, DIALOGUE), JUDGE);
    PlanJson.of(verdict);
  }

  private static Hostile profiles() {
    List<List<Double>> rows = new ArrayList<>();
    for (int i = 0; i < 13; i++) {
      Double[] row = new Double[14];
      Arrays.fill(row, 0.25);
      rows.add(List.of(row));
    }
    String text =
        "rigspeak profile 1\nname juno\nmodel 0123abcd\nsentences 30\nspeech_db -22.5\n"
            + "background_db -61.0\n"
            + rows.stream()
                .map(row -> "map " + String.join(" ", row.stream().map(String::valueOf).toList()))
                .reduce("", (all, row) -> all + row + "\n")
            + "check 00000000\n";
    return Hostile.ofTexts(List.of(text));
  }

  private void profile(byte[] input) throws IOException {
    for (byte[] each : List.of(input, signed(input))) {
      Optional<Profile> profile = ProfileFiles.read(write("x.profile", each));
      profile.ifPresent(HostilePlaces::isFinite);
    }
  }

  private static void isFinite(Profile profile) {
    double sum = profile.levels().speech() + profile.levels().background();
    for (List<Double> row : profile.map().rows()) {
      sum += row.stream().mapToDouble(Math::abs).max().orElseThrow();
    }
    if (!Double.isFinite(sum)) {
      throw new AssertionError("a profile with a number that is none: " + profile);
    }
  }

  private static Hostile trainees() {
    return Hostile.ofFiles(
        Stream.of("juno", "wick")
            .map(n -> DEMO.resolve("drills").resolve(n + ".trainee"))
            .toList());
  }

  private void trainee(byte[] input) throws IOException {
    for (byte[] each :
        List.of(Arrays.copyOf(input, Math.min(input.length, 20_000)), signed(input))) {
      Path file = write("x.trainee", each);
      try {
        Progress progress = Progress.of(TraineeFiles.read(file));
        DrillReport report = new DrillReport(Map.of("x", progress), 1_800_000_000L);
        report.text();
        report.html();
        report.csv();
      } catch (TraineeFiles.Damaged e) {
        isOneSentence(Fault.sentence(e));
      }
    }
  }

  /** With a check sum that holds, so that what is in it is looked at. */
  private static byte[] signed(byte[] input) {
    String text = utf8(input);
    int end = text.lastIndexOf("check ");
    String whole = end < 0 ? text + "\n" : text.substring(0, end);
    CRC32 sum = new CRC32();
    sum.update(whole.getBytes(StandardCharsets.UTF_8));
    String check = String.format(Locale.ROOT, "check %08x\n", sum.getValue());
    return (whole + check).getBytes(StandardCharsets.UTF_8);
  }

  private static Hostile scripts() {
    List<String> lines =
        texts("drills/every-skill.txt").stream().filter(line -> !line.startsWith("#")).toList();
    return Hostile.ofTexts(lines);
  }

  private void script(byte[] input) throws IOException {
    byte[] some =
        String.join("\n", utf8(input).lines().limit(5).toList()).getBytes(StandardCharsets.UTF_8);
    try {
      new DrillScript(GRAMMAR, CATALOGUE).read(write("x.txt", some));
    } catch (IOException e) {
      isOneSentence(Fault.sentence(e));
    }
  }

  // ---- the journal ----

  private static final LocalDate DAY = LocalDate.of(2026, 6, 30);
  private static final String SEAL = ",\"sum\":\"";

  /** Of a talk in which nothing is judged, so that it is played again quickly. */
  private Hostile journals() {
    CrewFolder crew = new CrewFolder(folder.resolve("kept"), "oak");
    try {
      Path talk = folder.resolve("talk.txt");
      Files.writeString(
          talk, String.join("\n", GOOD) + "\nwhat is missing\nread back\nscrap that\n");
      Cli.run("type", "--crew", "oak", "--journal", crew.folder(), talk);
      return Hostile.ofFiles(List.of(crew.file(crew.days().get(0))));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** As it is, then with sums that hold, so that what is in it is looked at and played again. */
  private void journal(byte[] input) throws IOException {
    CrewFolder crew = new CrewFolder(folder.resolve("journal"), "oak");
    Files.createDirectories(crew.folder());
    for (byte[] each : List.of(input, sealed(input))) {
      Files.write(crew.file(DAY), each);
      try {
        List<Entry> entries = crew.entries(DAY);
        crew.lastConversation();
        Resumption.play(
            new Session(
                UNDERSTANDING,
                new Reckoning(UNDERSTANDING, DIALOGUE),
                Attention.alwaysOpen(),
                Scribe.none()),
            entries);
        crew.verify();
      } catch (BrokenJournal | Resumption.AnswersDiffer e) {
        isOneSentence(e.getMessage() + ".");
      }
    }
  }

  private static byte[] sealed(byte[] input) {
    StringBuilder sealed = new StringBuilder();
    String before = "0".repeat(64);
    for (String line : utf8(input).split("\n", -1)) {
      int end = line.lastIndexOf(SEAL);
      if (end >= 0) {
        before = sha256(before + line.substring(0, end));
        sealed.append(line, 0, end).append(SEAL).append(before).append("\"}\n");
      }
    }
    return sealed.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String sha256(String text) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  // ---- what a crew supplies ----

  private static final List<String> CREW = List.of("sources", "factors", "friction");

  private static Hostile tables() {
    String wood =
        """
        species,specific_gravity,bending_mpa,stiffness_mpa,compression_mpa,shear_mpa,source
        "Oak, white",0.6,57.2,8600,24.5,8.6,crew_rope
        """;
    List<String> tables = new ArrayList<>();
    CREW.forEach(name -> tables.add(text(DEMO.resolve("crew").resolve(name + ".csv"))));
    tables.add(wood);
    tables.add("from_deg,start_counts,factor,source\n0,yes,0.4,crew_rope\n120,no,0.9,crew_rope\n");
    tables.add("bend_over_rope,factor,source\n1,0.4,crew_rope\n20,0.9,crew_rope\n");
    return Hostile.ofTexts(tables);
  }

  /** It stands for each of the tables in turn, beside those that are as they should be. */
  private static void tables(byte[] input) {
    for (String name : List.of("sources", "factors", "friction", "wood", "choke", "bend")) {
      List<SuppliedTable> tables = new ArrayList<>();
      for (String own : CREW) {
        if (!own.equals(name)) {
          tables.add(table(own, text(DEMO.resolve("crew").resolve(own + ".csv"))));
        }
      }
      tables.add(table(name, utf8(input)));
      try {
        Catalogue.with(tables);
      } catch (CatalogueFault e) {
        isOneSentence(e.getMessage());
      }
    }
  }

  private static SuppliedTable table(String name, String text) {
    return new SuppliedTable(name, name + ".csv", text);
  }

  private static Hostile grammars() {
    return Hostile.ofTexts(List.of(text(OWN_GRAMMAR)));
  }

  private static void grammar(byte[] input) {
    try {
      Grammar grammar = Understandable.read("x.jsgf", utf8(input), GRAMMAR);
      Understanding own = new Understanding(grammar);
      for (String line : GOOD) {
        own.understand(line, Optional.empty());
      }
    } catch (GrammarFault e) {
      isOneSentence(e.getMessage());
    }
  }

  // ---- ----

  private Path write(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private static String utf8(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One line for a person, without anything of the program's inside. */
  static void isOneSentence(String sentence) {
    boolean one =
        sentence != null
            && sentence.endsWith(".")
            && sentence.length() < 2_000
            && sentence.chars().noneMatch(c -> Character.isISOControl(c))
            && !sentence.contains("Exception")
            && !sentence.contains("rigspeak itself");
    if (!one) {
      throw new AssertionError("no sentence: " + sentence);
    }
  }
}
