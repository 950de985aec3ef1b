package rigspeak.answer;

import static rigspeak.answer.Sentences.MOST_ITEMS;
import static rigspeak.answer.Sentences.list;
import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Reply;
import rigspeak.readback.Difference;
import rigspeak.readback.RadioReply;
import rigspeak.readback.TimeOfDay;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;

/**
 * Puts what is spoken on a radio into words: short, at most three items in a transmission, every
 * digit by itself, "over" at its end.
 */
public final class RadioAnswers {
  private static final String OVER = "Over.";
  private static final String AFFIRM = "Affirm or negative.";

  private final String role;
  private final SaidBack saidBack = new SaidBack(Detail.BRIEF);
  private final Cases<RadioReply, List<String>> words = cases();
  private final Cases<Difference, String> differences = differenceCases();

  /**
   * @param role what the one who reads back is called, in words that can be spoken
   */
  public RadioAnswers(String role) {
    this.role = role;
  }

  /** One text for each transmission, in their order. */
  public List<Utterance> transmissions(List<RadioReply> replies) {
    return replies.stream()
        .flatMap(reply -> words.make(reply).stream())
        .map(words -> Utterance.calm(text(Digits.singly(words), OVER)))
        .toList();
  }

  /** A difference in a sentence or two, for a text that is read. */
  public String difference(Difference difference) {
    return differences.make(difference);
  }

  private Cases<RadioReply, List<String>> cases() {
    return Cases.<RadioReply, List<String>>of(RadioReply.class)
        .on(RadioReply.AsPlanned.class, this::asPlanned)
        .on(RadioReply.Differ.class, differ -> List.of(differ(differ)))
        .on(RadioReply.NotSaidYet.class, not -> List.of(notSaidYet(not)))
        .on(RadioReply.SayThem.class, say -> List.of(sentence("say again", names(say.slots()))))
        .on(RadioReply.AllSaid.class, all -> List.of(allSaid(all)))
        .on(
            RadioReply.WhatIsWrong.class,
            wrong -> List.of("What is wrong. Say correction, and the value."))
        .on(
            RadioReply.RogerIsNoAnswer.class,
            roger -> List.of("Roger is no answer. Say affirm or negative."))
        .on(RadioReply.NothingAsked.class, nothing -> List.of("I asked nothing. Go on."))
        .on(
            RadioReply.OnlyReadBack.class,
            only -> List.of("This is a read back. Say each value by its name."))
        .on(RadioReply.Ended.class, ended -> List.of(ended(ended)))
        .on(RadioReply.NoLongerEnded.class, no -> List.of("What was confirmed no longer stands."))
        .on(RadioReply.Plain.class, plain -> plain(plain.reply()))
        .all();
  }

  private List<String> asPlanned(RadioReply.AsPlanned planned) {
    List<String> texts = inThrees(planned.items(), items -> saidBack.items(items));
    List<String> all = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      boolean last = i == texts.size() - 1;
      String left = planned.left() == 0 ? "" : sentence(Numbers.whole(planned.left()) + " to go");
      all.add(text(texts.get(i), "As planned.", last ? left : ""));
    }
    return all;
  }

  private String differ(RadioReply.Differ differ) {
    List<String> told =
        differ.items().stream()
            .map(each -> text(of(each.place(), differ.present(), each.slot()), difference(each)))
            .toList();
    return text(text(told), AFFIRM);
  }

  private Cases<Difference, String> differenceCases() {
    return Cases.<Difference, String>of(Difference.class)
        .on(
            Difference.Other.class,
            other ->
                text(
                    sentence("plan", saidBack.phrase(other.slot(), other.planned())),
                    sentence("heard", saidBack.phrase(other.slot(), other.said()))))
        .on(
            Difference.NotPlanned.class,
            not ->
                text(
                    sentence("heard", saidBack.phrase(not.slot(), not.said())), "Not in the plan."))
        .on(Difference.NotSaid.class, not -> sentence("not said", SlotWords.name(not.slot())))
        .all();
  }

  /** Names the support where the talk is about another one. */
  private static String of(Place place, Place present, Slot slot) {
    boolean here = place.equals(present) || slot.scope() == Slot.Scope.CLIMB;
    return here ? "" : sentence(Places.title(place));
  }

  private static String notSaidYet(RadioReply.NotSaidYet not) {
    List<String> names =
        not.first().stream()
            .map(
                each ->
                    of(each.place(), not.present(), each.slot()).isEmpty()
                        ? SlotWords.name(each.slot())
                        : SlotWords.name(each.slot()) + " of " + Places.name(each.place()))
            .toList();
    String more =
        not.howMany() > names.size()
            ? sentence(Numbers.whole(not.howMany() - names.size()) + " more")
            : "";
    return text(sentence("not said", list(names)), more);
  }

  private static String allSaid(RadioReply.AllSaid all) {
    if (all.other().isEmpty()) {
      return text(sentence("all " + Numbers.whole(all.items()) + " items as planned"), AFFIRM);
    }
    List<Slot> other = all.other().stream().map(Difference::slot).distinct().toList();
    String which =
        other.size() <= MOST_ITEMS ? names(other) : Numbers.whole(other.size()) + " items";
    return text(sentence("all said, but not as planned", which), AFFIRM);
  }

  private String ended(RadioReply.Ended ended) {
    String who = role + ", " + clock(ended.at());
    return switch (ended.outcome()) {
      case CONFIRMED -> sentence("confirmed", who);
      case DIFFERS ->
          text(sentence("not as planned", who), "Check it again before anyone loads it.");
      case OPEN -> sentence("not confirmed", who);
    };
  }

  /** As a radio log reads it: "one four zero five". */
  private static String clock(TimeOfDay time) {
    return Digits.figures("%02d%02d".formatted(time.hour(), time.minute()));
  }

  private List<String> plain(Reply reply) {
    if (reply instanceof Reply.AffirmDoubtful doubtful) {
      List<String> values = inThrees(doubtful.items(), saidBack::items);
      boolean numbers = values.stream().anyMatch(Digits::areIn);
      return lastWith(values, numbers ? "Affirm, or each digit." : AFFIRM);
    }
    if (reply instanceof Reply.Dropped dropped) {
      return lastWith(
          inThrees(dropped.slots(), slots -> sentence("dropped", names(slots))), "Say them again.");
    }
    return Answers.say(List.of(reply), Detail.BRIEF).stream().map(Utterance::text).toList();
  }

  private static List<String> lastWith(List<String> texts, String end) {
    List<String> all = new ArrayList<>(texts);
    all.set(all.size() - 1, text(all.get(all.size() - 1), end));
    return all;
  }

  private static <T> List<String> inThrees(List<T> items, Function<List<T>, String> words) {
    List<String> texts = new ArrayList<>();
    for (int from = 0; from < items.size(); from += MOST_ITEMS) {
      texts.add(words.apply(items.subList(from, Math.min(from + MOST_ITEMS, items.size()))));
    }
    return texts;
  }

  private static String names(List<Slot> slots) {
    return list(slots.stream().map(SlotWords::name).toList());
  }
}
