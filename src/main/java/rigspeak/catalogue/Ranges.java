package rigspeak.catalogue;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
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
        .filter(number -> range != null && !range.contains(number))
        .map(number -> new Conflict.OutOfRange(slot, number, range));
  }

  private static Optional<Double> number(Value value) {
    if (value instanceof Value.Weight weight) {
      return Optional.of(weight.mass().kilograms());
    }
    if (value instanceof Value.Distance distance) {
      return Optional.of(distance.length().metres());
    }
    if (value instanceof Value.Turned turned) {
      return Optional.of(turned.angle().degrees());
    }
    if (value instanceof Value.Rating rating) {
      return Optional.of(rating.force().newtons());
    }
    if (value instanceof Value.Leg leg) {
      return leg.length().map(length -> length.length().metres());
    }
    return Optional.empty();
  }
}
