package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;

class RandomStreamTest {

  /** First values of SplitMix64 from state 1234567, published in many test suites of the generator (from memory). */
  @Test
  void splitMixReference() {
    RandomStream stream = new RandomStream(1234567L);
    assertEquals(6457827717110365317L, stream.bits());
    assertEquals(3203168211198807973L, stream.bits());
  }

  @Test
  void namesMakeTheKey() {
    assertEquals(RandomStream.key(5, "a", "b"), RandomStream.key(5, "a", "b"));
    assertNotEquals(RandomStream.key(5, "a", "b"), RandomStream.key(5, "ab"));
    assertNotEquals(RandomStream.key(5, "a"), RandomStream.key(6, "a"));
  }

  @Test
  void normalMoments() {
    double[] z = new RandomStream(RandomStream.key(3, "normal")).normals(400_000);
    double mean = 0;
    double square = 0;
    double fourth = 0;
    for (double v : z) {
      mean += v / z.length;
      square += v * v / z.length;
      fourth += v * v * v * v / z.length;
    }
    assertEquals(0, mean, 5 / Math.sqrt(z.length));
    assertEquals(1, square, 5 * Math.sqrt(2.0 / z.length));
    assertEquals(3, fourth, 5 * Math.sqrt(96.0 / z.length));
  }

  @Test
  void gammaMean() {
    RandomStream stream = new RandomStream(RandomStream.key(3, "gamma"));
    for (double shape : new double[] {0.3, 1, 4.5}) {
      double mean = 0;
      for (int i = 0; i < 200_000; i++) {
        mean += stream.gamma(shape) / 200_000;
      }
      assertEquals(shape, mean, 5 * Math.sqrt(shape / 200_000));
    }
  }

  @Test
  void dirichletKeepsZeroAtZero() {
    double[] w = new RandomStream(9).dirichlet(new double[] {1, 0, 2});
    assertEquals(0, w[1]);
    assertEquals(1, w[0] + w[2], 1e-12);
    assertArrayEquals(w, new RandomStream(9).dirichlet(new double[] {1, 0, 2}));
  }

  /** Against the library, and one stream taken singly, in bulk and after an odd start. */
  @Test
  void turnsAndBulk() {
    RandomStream r = new RandomStream(RandomStream.key(6, "turns"));
    double[] pair = new double[2];
    for (int i = 0; i < 100_000; i++) {
      double u = i == 0 ? 0x1.0p-54 : i == 1 ? 1 - 0x1.0p-53 : r.uniform();
      double turn = i < 9 ? i / 8.0 : r.uniform();
      assertEquals(StrictMath.log(u), Elementary.log(u), 4e-16 * Math.abs(StrictMath.log(u)));
      Elementary.normals(u, turn, pair, 0);
      double radius = Math.sqrt(-2 * StrictMath.log(u));
      assertEquals(radius * StrictMath.cos(2 * Math.PI * turn), pair[0], 1e-14);
      assertEquals(radius * StrictMath.sin(2 * Math.PI * turn), pair[1], 1e-14);
    }
    for (int start = 0; start < 3; start++) {
      RandomStream one = new RandomStream(41);
      RandomStream many = new RandomStream(41);
      for (int i = 0; i < start; i++) {
        assertEquals(one.normal(), many.normal());
      }
      for (double z : many.normals(7)) {
        assertEquals(one.normal(), z);
      }
      assertEquals(one.normal(), many.normal());
    }
  }
}
