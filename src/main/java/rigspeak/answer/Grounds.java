package rigspeak.answer;

import static rigspeak.answer.Sentences.list;
import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rigspeak.answer.Amounts.Round;
import rigspeak.quantity.Length;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Estimate;
import rigspeak.rig.Measure;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Slot;
import rigspeak.rig.Source;
import rigspeak.rig.Value;
import rigspeak.verdict.CheckKind;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Verdict;

/** What the numbers of a verdict rest on. */
final class Grounds {
  private final Form form;

  Grounds(Form form) {
    this.form = form;
  }

  /** Wherever a number of a crew's own table was used, it is said with the verdict. */
  static String supplied(PathVerdict verdict) {
    return suppliedSources(verdict).isEmpty() ? "" : "Reckoned with your crew's own figures.";
  }

  /** What the crew supplied of the numbers of a verdict. */
  static Set<Source> suppliedSources(PathVerdict verdict) {
    Set<Source> supplied = new LinkedHashSet<>();
    for (Verdict each : verdict.supports().values()) {
      if (each instanceof Verdict.Judged judged) {
        judged.rig().sources().stream()
            .filter(source -> source.provenance() == Source.Provenance.SUPPLIED)
            .forEach(supplied::add);
      }
    }
    return supplied;
  }

  String of(Verdict.Judged judged) {
    return text(union(judged), assumptions(judged.rig()));
  }

  /** Where a union takes strength away, nobody has tested how much on limbs of this size. */
  private static String union(Verdict.Judged judged) {
    CheckKind kind = judged.governing().kind();
    boolean atUnion = kind == CheckKind.LIMB_AT_UNION || kind == CheckKind.SHEAR_AT_UNION;
    return atUnion && mayWeaken(judged.rig())
        ? "Figures for such a union come from small, young wood."
        : "";
  }

  private static boolean mayWeaken(ResolvedRig rig) {
    Estimate limb =
        rig.measures().getOrDefault(Measure.THICK_END, rig.measures().get(Measure.LIMB_DIAMETER));
    Estimate stem = rig.measures().get(Measure.STEM_DIAMETER);
    return rig.union().factor(limb.high() / stem.low()) < 1;
  }

  private String assumptions(ResolvedRig rig) {
    List<String> taken = new ArrayList<>();
    Value.Species species =
        rig.said().value(Slot.SPECIES, Value.Species.class).orElse(Value.Species.unknown());
    if (species.isUnknown()) {
      taken.add("the weakest wood");
    } else if (rig.wood().species().isEmpty()) {
      taken.add("the weakest " + SpeciesName.of(species));
    }
    rig.assumptions().forEach(each -> taken.add(assumption(each.slot(), rig)));
    if (taken.isEmpty()) {
      return "";
    }
    int first = Math.min(Sentences.MOST_ITEMS, taken.size());
    List<String> rest = taken.subList(first, taken.size());
    return text(
        sentence(form.or("not said, so I took ", "I took ") + list(taken.subList(0, first))),
        rest.isEmpty() ? "" : sentence("also " + list(rest)));
  }

  private static String assumption(Slot slot, ResolvedRig rig) {
    return switch (slot) {
      case BARK -> "wet bark";
      case SEAT -> "a sling that hangs free";
      case SLING_RATING -> "the least sling rating";
      case SLING_THICKNESS -> "a sling " + thickness(rig) + " thick";
      case CHOKE_ANGLE -> "choke angle " + degrees(rig, Measure.CHOKE_ANGLE);
      case BASKET_ANGLE -> "basket angle " + degrees(rig, Measure.BASKET_ANGLE);
      case CONNECTOR_LIES -> "a connector in line";
      case LIMB_LENGTH -> "a limb without weight";
      case SLACK -> "no slack";
      default -> "the worst that is usual for " + SlotWords.name(slot);
    };
  }

  private static String thickness(ResolvedRig rig) {
    Length length = Length.ofMetres(rig.measures().get(Measure.SLING_THICKNESS).nominal());
    return Amounts.diameter(length, UnitSystem.METRIC, Round.UP);
  }

  private static String degrees(ResolvedRig rig, Measure angle) {
    return Amounts.degrees(Math.rint(Math.toDegrees(rig.measures().get(angle).nominal())));
  }

  /** What a limit rests on beside what was said: "by published figures and textbook formulas". */
  static String provenance(List<Source> sources) {
    List<String> kinds =
        sources.stream()
            .map(Source::provenance)
            .filter(kind -> kind != Source.Provenance.SAID)
            .distinct()
            .sorted()
            .map(Grounds::provenance)
            .toList();
    return kinds.isEmpty() ? "" : "by " + list(kinds);
  }

  private static String provenance(Source.Provenance provenance) {
    return switch (provenance) {
      case PUBLISHED -> "published figures";
      case COMPUTED -> "formulas";
      case COMMON_PRACTICE -> "common practice";
      case MEMORY -> "memory";
      case JUDGEMENT -> "judgment";
      case SUPPLIED -> "your crew's own figures";
      case SAID -> throw new IllegalArgumentException("who said it knows");
    };
  }
}
