package rigspeak.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** A test that says nothing must not pass for one that does. */
class SpokenTest {
  @Test
  void aLineThatSaysNothingIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Spoken.rig("limb as thick as my arm"));
    assertThrows(IllegalArgumentException.class, () -> Spoken.rig("check redirect"));
    assertThrows(IllegalArgumentException.class, () -> Spoken.rig("rope angle 60"));
  }

  @Test
  void theStoutRigSaysEverySlotOnceAtMost() {
    assertEquals(20, Spoken.rig(Spoken.STOUT).said().size());
  }
}
