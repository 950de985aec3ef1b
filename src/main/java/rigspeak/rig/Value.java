package rigspeak.rig;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.quantity.Mass;
import rigspeak.quantity.UnitSystem;

/** What was said of a slot, in the units of the quantities and the words of the trade. */
public sealed interface Value {

  /**
   * What stands when this slot had {@code earlier} and is now said again, without the word that
   * corrects. As a rule the latest stands.
   */
  default Value after(Value earlier) {
    return this;
  }

  /** All-up mass of climber, harness, saw and gear, and the units it was said in. */
  record Weight(Mass mass, UnitSystem said) implements Value {}

  /** A distance or a diameter, and the units it was said in. */
  record Distance(Length length, UnitSystem said) implements Value {}

  /** An angle; of a limb's rise it is positive from union to tip. */
  record Turned(Angle angle) implements Value {}

  /** A minimum breaking strength as the label gives it. */
  record Rating(Force force, UnitSystem said) implements Value {}

  /**
   * Full turns of the sling around the limb.
   *
   * @param turns 1 to 6
   */
  record Wraps(int turns) implements Value {
    public Wraps {
      if (turns < 1 || turns > 6) {
        throw new IllegalArgumentException("no sling is wrapped " + turns + " times");
      }
    }
  }

  /**
   * How much of the limb's diameter is hollow.
   *
   * @param ofDiameter 0 (none) to less than 1
   */
  record Share(double ofDiameter) implements Value {
    public Share {
      if (!(ofDiameter >= 0 && ofDiameter < 1)) {
        throw new IllegalArgumentException("no cavity takes " + ofDiameter + " of a limb");
      }
    }
  }

  /** Where something points. */
  record Toward(Direction direction) implements Value {}

  /** A leg of the rope: where it goes from the sling, and how long it is if that was said. */
  record Leg(Direction direction, Optional<Distance> length) implements Value {}

  /**
   * The words of a species name; none at all if it is unknown. A name with fewer words means any
   * species that has them all.
   */
  record Species(Set<String> words) implements Value {
    public Species {
      words = Collections.unmodifiableSet(new TreeSet<>(words));
    }

    public static Species unknown() {
      return new Species(Set.of());
    }

    public boolean isUnknown() {
      return words.isEmpty();
    }
  }

  /** All that was said of the union. */
  record Union(Set<UnionCondition> conditions) implements Value {
    public Union {
      conditions = Collections.unmodifiableSet(EnumSet.copyOf(conditions));
    }

    public static Union of(UnionCondition first, UnionCondition... rest) {
      return new Union(EnumSet.of(first, rest));
    }

    /** Faults add up: a second fault does not take the first one back. */
    @Override
    public Value after(Value earlier) {
      if (!(earlier instanceof Union before) || before.equals(this)) {
        return this;
      }
      Set<UnionCondition> all = EnumSet.copyOf(before.conditions());
      all.addAll(conditions);
      return new Union(all);
    }

    /** Sound and faulty at once. A codominant union is a shape, not a fault. */
    public boolean isContradictory() {
      return has(UnionCondition.SOUND)
          && (has(UnionCondition.INCLUDED_BARK)
              || has(UnionCondition.CRACKED)
              || has(UnionCondition.DECAYED));
    }

    public boolean has(UnionCondition condition) {
      return conditions.contains(condition);
    }
  }

  /** How a union looks. */
  enum UnionCondition {
    /** Looked at, and neither a cavity, a crack, decay nor included bark was found. */
    SOUND,
    CODOMINANT,
    INCLUDED_BARK,
    CRACKED,
    DECAYED
  }

  /** Live or dead wood. */
  enum Wood implements Value {
    LIVE,
    DEAD
  }

  /** Where the hollow lies in the limb. */
  enum CavityShape implements Value {
    /** In the middle, with sound wood all round. */
    CENTERED,
    /** To one side, with some sound wood all round. */
    OFF_CENTER,
    /** Open to the outside. */
    OPEN
  }

  /** How the sling is hung on the limb. */
  enum Hitch implements Value {
    CHOKED,
    BASKET,
    /** Both ends through their own bight: it chokes, with a single turn. */
    GIRTH
  }

  /** What keeps the sling from sliding along the limb, other than friction. */
  enum Seat implements Value {
    FREE,
    STUB,
    UNION
  }

  /** The surface under the sling. */
  enum Bark implements Value {
    SMOOTH,
    ROUGH,
    WET
  }

  /** What the rope runs over at the support. */
  enum RunningOver implements Value {
    CARABINER,
    RING,
    PULLEY,
    BARK
  }

  /** How the connector lies under load. */
  enum ConnectorLies implements Value {
    /** Pulled along its long axis. */
    IN_LINE,
    /** Pulled across it, over the gate. */
    CROSS_LOADED,
    /** Bent over an edge of the limb. */
    OVER_EDGE
  }

  /** Whether the rope travels when the climber does. */
  enum RopeSystem implements Value {
    MOVING,
    STATIONARY
  }

  /** Where the rope ends. */
  enum Anchor implements Value {
    BASE,
    CANOPY
  }

  /** How many parts of a moving rope run through the support. */
  enum Captured implements Value {
    BOTH,
    SINGLE
  }
}
