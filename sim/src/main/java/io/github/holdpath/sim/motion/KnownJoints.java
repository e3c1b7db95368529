package io.github.holdpath.sim.motion;

import java.util.Optional;

/**
 * A piece with the joints that make it.
 *
 * @param motion the same as a motion of the grip frame
 * @param alongPath as {@link JointedPiece#alongPath} has it
 * @param by the joints by time
 */
public record KnownJoints(MotionPiece motion, boolean alongPath, Joints by)
    implements JointedPiece {
  /** Joint values by time, as {@link JointedPiece#joints} has them. */
  @FunctionalInterface
  public interface Joints {
    /** Those at a time inside the piece, s. */
    void at(double time, double[] q, double[] qd, double[] qdd);
  }

  @Override
  public void joints(double time, double[] q, double[] qd, double[] qdd) {
    by.at(time, q, qd, qdd);
  }

  @Override
  public double from() {
    return motion.from();
  }

  @Override
  public double to() {
    return motion.to();
  }

  @Override
  public int segment() {
    return motion.segment();
  }

  @Override
  public void state(double time, double[] out) {
    motion.state(time, out);
  }

  @Override
  public double distance(double time) {
    return motion.distance(time);
  }

  @Override
  public boolean still() {
    return motion.still();
  }

  @Override
  public Optional<LawStretch> law() {
    return motion.law();
  }
}
