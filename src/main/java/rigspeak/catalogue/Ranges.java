package rigspeak.catalogue;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** What values are plausible in each slot. */
final class Ranges {
  private final Map<Slot, Range> bySlot = new EnumMap<>(Slot.class);

  Ranges() {
    for (CSVRecord row : Table.rows("ranges")) {
      Slot slot = Slot.of(row.get("slot")).orElseThrow();
      Range.Unit unit = Range.Unit.valueOf(row.get("unit").toUpperCase(Locale.ROOT));
      bySlot.put(slot, new Range(Table.number(row, "low"), Table.number(row, "high"), unit));
    }
  }

  Optional<Conflict.OutOfRange> offence(Slot slot, Value value) {
    Range range = bySlot.get(slot);
    return number(value)
        .filter(number -> range != null && !range.contains(number.value()))
        .map(number -> new Conflict.OutOfRange(slot, number.value(), number.said(), range));
  }

  /**
   * @param value in the unit of its slot's range
   * @param said the units it was said in
   */
  private record Amount(double value, UnitSystem said) {}

  private static Optional<Amount> number(Value value) {
    if (value instanceof Value.Weight weight) {
      return Optional.of(new Amount(weight.mass().kilograms(), weight.said()));
    }
    if (value instanceof Value.Distance distance) {
      return Optional.of(new Amount(distance.length().metres(), distance.said()));
    }
    if (value instanceof Value.Turned turned) {
      return Optional.of(new Amount(turned.angle().degrees(), UnitSystem.METRIC));
    }
    if (value instanceof Value.Rating rating) {
      return Optional.of(new Amount(rating.force().newtons(), rating.said()));
    }
    if (value instanceof Value.Leg leg) {
      return leg.length().flatMap(Ranges::number);
    }
    return Optional.empty();
  }
}
