package io.github.holdpath.sim.scene.recording;

/** Frame whose poses a recording holds. */
enum RecordingFrame {
  /** The grip frame T itself. */
  GRIP,
  /** The flange F: {@code X_WT = X_WF X_FT}. */
  FLANGE,
  /** None: joint values, from which the flange follows, and from that the grip. */
  JOINTS
}
