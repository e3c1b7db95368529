package io.github.holdpath.sim.motion.joint;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class JointSamplesTest {
  /** What a sum of a few roundings leaves of values up to 200. */
  private static final double ALGEBRA = 1e-10;

  /** One joint that goes evenly, 1 rad/s, in samples 1 ms apart. */
  private static JointWalk.Samples even(double from, int count) {
    double[] times = new double[count];
    double[][] q = new double[count][];
    for (int i = 0; i < count; i++) {
      times[i] = from + 1e-3 * i;
      q[i] = new double[] {times[i]};
    }
    return new JointWalk.Samples(times, q, q, q);
  }

  @Test
  void goesInProportionBetweenSamples() {
    JointSamples samples = new JointSamples();
    samples.add(even(0, 11));
    samples.add(even(0.01, 3));
    assertTrue(samples.whole());
    assertArrayEquals(new double[] {0}, samples.at(0, 0), ALGEBRA);
    assertArrayEquals(new double[] {0.00377}, samples.at(0, 0.377), ALGEBRA);
    assertArrayEquals(new double[] {0.01}, samples.at(0, 1), ALGEBRA);
    assertArrayEquals(new double[] {0.011}, samples.at(1, 0.5), ALGEBRA);
  }

  @Test
  void aPieceOfOneInstantHasItsOnlyValues() {
    JointSamples samples = new JointSamples();
    samples.add(even(0.3, 1));
    assertArrayEquals(new double[] {0.3}, samples.at(0, 0), 0);
    assertArrayEquals(new double[] {0.3}, samples.at(0, 1), 0);
  }

  @Test
  void showsAVeryLongMotionFromFewerSamples() {
    JointSamples samples = new JointSamples();
    samples.add(even(0, 70_003));
    samples.add(even(70.002, 70_003));
    assertFalse(samples.whole());
    for (double share = 0; share <= 1; share += 0.01) {
      assertEquals(share * 70.002, samples.at(0, share)[0], ALGEBRA);
      assertEquals((1 + share) * 70.002, samples.at(1, share)[0], ALGEBRA);
    }
  }
}
