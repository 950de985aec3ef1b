package rigspeak.rig;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What has been said of one support and of the climb it belongs to. Nothing is filled in here. */
public final class Rig {
  private static final Rig EMPTY = new Rig(new EnumMap<>(Slot.class));

  private final Map<Slot, Said> said;

  private Rig(EnumMap<Slot, Said> said) {
    this.said = Collections.unmodifiableMap(said);
  }

  public static Rig empty() {
    return EMPTY;
  }

  /** Everything said, in the order of the slots. */
  public Map<Slot, Said> said() {
    return said;
  }

  public Optional<Said> said(Slot slot) {
    return Optional.ofNullable(said.get(slot));
  }

  public boolean has(Slot slot) {
    return said.containsKey(slot);
  }

  /**
   * The value of a slot.
   *
   * @param type the slot's own value type
   */
  public <V extends Value> Optional<V> value(Slot slot, Class<V> type) {
    return said(slot).map(s -> type.cast(s.value()));
  }

  /**
   * This rig with a value put in or replaced.
   *
   * @throws IllegalArgumentException if the value is not of the slot's type
   */
  public Rig with(Slot slot, Said value) {
    if (!slot.valueType().isInstance(value.value())) {
      throw new IllegalArgumentException(slot + " cannot be " + value.value());
    }
    EnumMap<Slot, Said> more = copy();
    more.put(slot, value);
    return new Rig(more);
  }

  public Rig without(Slot slot) {
    EnumMap<Slot, Said> less = copy();
    less.remove(slot);
    return new Rig(less);
  }

  /** Only what belongs to the climb, for the next support to begin with. */
  public Rig climbOnly() {
    EnumMap<Slot, Said> climb = copy();
    climb.keySet().removeIf(slot -> slot.scope() != Slot.Scope.CLIMB);
    return new Rig(climb);
  }

  /** This support in the climb of another rig. */
  public Rig withClimbOf(Rig other) {
    EnumMap<Slot, Said> all = copy();
    all.keySet().removeIf(slot -> slot.scope() == Slot.Scope.CLIMB);
    all.putAll(other.climbOnly().said);
    return new Rig(all);
  }

  private EnumMap<Slot, Said> copy() {
    EnumMap<Slot, Said> copy = new EnumMap<>(Slot.class);
    copy.putAll(said);
    return copy;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Rig rig && said.equals(rig.said);
  }

  @Override
  public int hashCode() {
    return said.hashCode();
  }

  @Override
  public String toString() {
    return said.toString();
  }
}
