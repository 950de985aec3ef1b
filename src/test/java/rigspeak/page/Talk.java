package rigspeak.page;

import java.util.ArrayList;
import java.util.List;
import rigspeak.answer.Answers;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Dialogue;
import rigspeak.dialogue.Turn;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Understanding;
import rigspeak.readback.Differences;
import rigspeak.rig.RopePath;
import rigspeak.verdict.Judge;

/** Somebody who says something, and a page that follows. */
public final class Talk {
  /** One redirect below a main point, both said whole. */
  public static final String PLAN =
      """
      all up two hundred ten pounds species northern red oak stationary rope canopy anchor
      go to the main point
      live wood limb twelve inches by tape limb upright at the union seated at the union
      stem twenty inches by tape union sound sling choked three wraps bark rough over ring
      go to redirect one
      live wood limb ten inches by tape limb rises two zero by tape
      out one foot by tape
      stem one four inches by tape union sound
      sling choked three wraps seated on a stub bark rough over ring
      anchor leg up one zero toward the stem fifteen feet by tape
      working leg straight down twenty feet by tape
      stem clear of swing by twelve feet
      """;

  private static final Understanding UNDERSTANDING = new Understanding(Grammar.bundled());
  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final Dialogue DIALOGUE = new Dialogue(CATALOGUE, new Judge(CATALOGUE));

  private final Feed feed;
  private final Boards boards;
  private final List<Board.Entry> journal = new ArrayList<>();
  private Conversation now = Conversation.begin();
  private long version;

  public Talk(Feed feed) {
    this(feed, false);
  }

  public Talk(Feed feed, boolean mayType) {
    this.feed = feed;
    this.boards = new Boards(CATALOGUE, "redirect over the path", plan(), mayType);
  }

  private static RopePath plan() {
    Conversation talk = Conversation.begin();
    for (String line : PLAN.lines().toList()) {
      talk = DIALOGUE.step(talk, UNDERSTANDING.understand(line, talk.asked())).next();
    }
    return Differences.asSaid(talk.rope());
  }

  /** Shows the page of a talk in which nothing has been said. */
  public void begin() {
    publish(System.currentTimeMillis());
  }

  public void say(String words) {
    long at = System.currentTimeMillis();
    Turn turn = DIALOGUE.step(now, UNDERSTANDING.understand(words, now.asked()));
    now = turn.next();
    List<Board.Answer> answers =
        Answers.say(turn.replies(), now.manner().detail()).stream()
            .map(answer -> new Board.Answer(answer.text(), answer.danger()))
            .toList();
    journal.add(new Board.Entry("14:05:00", words, answers));
    publish(at);
  }

  private void publish(long at) {
    version++;
    feed.publish(units -> boards.of(now, journal, units, version, at));
  }

  public Conversation conversation() {
    return now;
  }
}
