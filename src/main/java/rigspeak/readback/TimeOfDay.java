package rigspeak.readback;

/**
 * When something was said, as a radio log has it.
 *
 * @param hour 0 to 23, of the place's own clock
 * @param minute 0 to 59
 */
public record TimeOfDay(int hour, int minute) {
  public TimeOfDay {
    if (!(hour >= 0 && hour < 24 && minute >= 0 && minute < 60)) {
      throw new IllegalArgumentException("no clock shows " + hour + ":" + minute);
    }
  }
}
