package rigspeak.rig;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What has been said of one support and of the climb it belongs to. Nothing is filled in here. A
 * value that was called wrong is withdrawn: its slot is empty and must be said again before
 * anything can be judged, even where it could have been left unsaid.
 */
public final class Rig {
  private static final Rig EMPTY = new Rig(new EnumMap<>(Slot.class), EnumSet.noneOf(Slot.class));

  private final Map<Slot, Said> said;
  private final Set<Slot> withdrawn;

  private Rig(EnumMap<Slot, Said> said, EnumSet<Slot> withdrawn) {
    this.said = Collections.unmodifiableMap(said);
    this.withdrawn = Collections.unmodifiableSet(withdrawn);
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

  /** Slots whose value was called wrong and has not been said again. */
  public Set<Slot> withdrawn() {
    return withdrawn;
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
    EnumMap<Slot, Said> more = copyOfSaid();
    more.put(slot, value);
    EnumSet<Slot> fewer = copyOfWithdrawn();
    fewer.remove(slot);
    return new Rig(more, fewer);
  }

  /** As if nothing had ever been said of this slot. */
  public Rig without(Slot slot) {
    EnumMap<Slot, Said> less = copyOfSaid();
    less.remove(slot);
    EnumSet<Slot> fewer = copyOfWithdrawn();
    fewer.remove(slot);
    return new Rig(less, fewer);
  }

  /** What was said of this slot is wrong. */
  public Rig withdrawing(Slot slot) {
    EnumMap<Slot, Said> less = copyOfSaid();
    less.remove(slot);
    EnumSet<Slot> more = copyOfWithdrawn();
    more.add(slot);
    return new Rig(less, more);
  }

  /** Only what belongs to the climb, for the next support to begin with. */
  public Rig climbOnly() {
    return empty().withClimbOf(this);
  }

  /** This support in the climb of another rig. */
  public Rig withClimbOf(Rig other) {
    EnumMap<Slot, Said> all = copyOfSaid();
    EnumSet<Slot> wrong = copyOfWithdrawn();
    for (Slot slot : Slot.values()) {
      if (slot.scope() == Slot.Scope.CLIMB) {
        all.remove(slot);
        wrong.remove(slot);
        other.said(slot).ifPresent(value -> all.put(slot, value));
        if (other.withdrawn.contains(slot)) {
          wrong.add(slot);
        }
      }
    }
    return new Rig(all, wrong);
  }

  private EnumMap<Slot, Said> copyOfSaid() {
    EnumMap<Slot, Said> copy = new EnumMap<>(Slot.class);
    copy.putAll(said);
    return copy;
  }

  private EnumSet<Slot> copyOfWithdrawn() {
    EnumSet<Slot> copy = EnumSet.noneOf(Slot.class);
    copy.addAll(withdrawn);
    return copy;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Rig rig && said.equals(rig.said) && withdrawn.equals(rig.withdrawn);
  }

  @Override
  public int hashCode() {
    return 31 * said.hashCode() + withdrawn.hashCode();
  }

  @Override
  public String toString() {
    return withdrawn.isEmpty() ? said.toString() : said + ", withdrawn " + withdrawn;
  }
}
