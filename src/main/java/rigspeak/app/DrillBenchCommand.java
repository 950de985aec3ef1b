package rigspeak.app;

import java.io.PrintWriter;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rigspeak.answer.DrillWords;
import rigspeak.catalogue.Catalogue;
import rigspeak.drill.Generator;
import rigspeak.drill.Level;
import rigspeak.drill.Line;
import rigspeak.drill.Question;
import rigspeak.drill.Skill;

/** How fast questions are made. */
@Command(
    name = "bench",
    mixinStandardHelpOptions = true,
    description = "How long so many questions take to be made, answered and put into words.")
final class DrillBenchCommand implements Callable<Integer> {
  @Option(
      names = "--questions",
      paramLabel = "N",
      defaultValue = "1000",
      description = "how many (1000)")
  private int questions;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    Skill[] skills = Skill.values();
    Map<Skill, Double> seconds = new EnumMap<>(Skill.class);
    long begun = System.nanoTime();
    Generator generator = new Generator(Catalogue.bundled());
    int words = 0;
    for (int i = 0; i < questions; i++) {
      Skill skill = skills[i % skills.length];
      long before = System.nanoTime();
      Question question = generator.question(skill, Level.of(1 + i / skills.length % 3), i);
      words += DrillWords.say(List.of(new Line.Ask(1 + i, question))).get(0).text().length();
      seconds.merge(skill, (System.nanoTime() - before) / 1e9, Double::sum);
    }
    seconds.forEach((skill, time) -> out.printf("%-28s %6.2f s%n", DrillWords.name(skill), time));
    out.printf(
        "%d questions, %d letters        %6.2f s%n",
        questions, words, (System.nanoTime() - begun) / 1e9);
    return 0;
  }
}
