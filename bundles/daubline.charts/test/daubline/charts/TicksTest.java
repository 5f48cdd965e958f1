package daubline.charts;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Round steps of axes: 1, 2 or 5 times a power of ten, as every handbook of drawing graphs asks. */
class TicksTest {

  @Test
  void stepsAreRoundAndAsFineAsTheRoomAllows() {
    Random random = new Random(11);
    for (int i = 0; i < 1000; i++) {
      double range = Math.exp(random.nextDouble(-20, 20));
      int most = random.nextInt(2, 12);
      double step = Ticks.step(range, most);
      double mantissa = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
      assertTrue(Math.min(Math.abs(mantissa - 1), Math.min(Math.abs(mantissa - 2), Math.abs(mantissa - 5))) < 1e-6, "step " + step);
      assertTrue(range / step <= most * (1 + 1e-9), range + " in steps of " + step + " is more than " + most);
      assertTrue(range / step > most / 2.5 * (1 - 1e-9), "a finer step than " + step + " has room in " + range + " for " + most);
    }
  }

  @Test
  void endsThatAreRoundCarryATick() {
    assertArrayEquals(new double[] {0, 50, 100, 150, 200, 250, 300}, Ticks.between(0, 300, 6), 1e-9);
    assertArrayEquals(new double[] {-0.2, -0.1, 0, 0.1}, Ticks.between(-0.25, 0.15, 4), 1e-9);
  }

  @Test
  void labelsHaveAsManyDecimalsAsTheStep() {
    assertEquals("−0.25", Ticks.label(-0.25, 0.05));
    assertEquals("0", Ticks.label(1e-17, 10));
    assertEquals("1200", Ticks.label(1200, 200));
  }
}
