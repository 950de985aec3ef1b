package rigspeak.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.rig.Measure;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Source;
import rigspeak.rig.Strength;
import rigspeak.rig.Value;

/** What each check's capacity rests on. */
final class Capacities {
  private Capacities() {}

  static List<Source> sources(CheckKind kind, ResolvedRig rig) {
    List<Source> sources = new ArrayList<>();
    switch (kind) {
      case LIMB_AT_UNION -> {
        add(sources, rig.wood().bending());
        add(sources, rig.wood().compression());
        addUnion(sources, rig);
      }
      case LIMB_AT_SLING, LIMB_BETWEEN, STEM_BETWEEN -> {
        add(sources, rig.wood().bending());
        add(sources, rig.wood().compression());
      }
      case SHEAR_AT_UNION -> {
        add(sources, rig.wood().shear());
        addUnion(sources, rig);
      }
      case SHEAR_AT_SLING -> add(sources, rig.wood().shear());
      case COLUMN -> {
        add(sources, rig.wood().stiffness());
        sources.add(rig.wood().design().source());
      }
      case SHELL -> {
        sources.add(rig.hollow().limit().source());
        sources.add(rig.hollow().widening().source());
        if (rig.hollow().shape() == Value.CavityShape.OFF_CENTER) {
          sources.add(rig.hollow().shift().source());
        }
      }
      case SLING -> {
        add(sources, rig.gear().sling());
        sources.add(
            rig.has(Measure.BASKET_ANGLE)
                ? rig.measures().get(Measure.BASKET_ANGLE).source()
                : rig.gear().choke().source());
        sources.add(rig.gear().bend().source());
      }
      case CONNECTOR -> add(sources, rig.gear().connector());
      case ROPE -> add(sources, rig.gear().rope());
      case SLIP -> sources.add(rig.measures().get(Measure.BARK_FRICTION).source());
    }
    return sources.stream().distinct().toList();
  }

  private static void addUnion(List<Source> sources, ResolvedRig rig) {
    sources.add(rig.union().fullRatio().source());
    sources.add(rig.union().codominantFactor().source());
    sources.add(rig.union().condition().source());
    sources.add(rig.union().across().source());
  }

  private static void add(List<Source> sources, Strength strength) {
    sources.addAll(strength.sources());
  }

  private static void add(List<Source> sources, Optional<Strength> strength) {
    strength.ifPresent(s -> add(sources, s));
  }
}
