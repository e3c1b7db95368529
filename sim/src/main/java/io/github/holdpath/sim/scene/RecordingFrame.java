package io.github.holdpath.sim.scene;

/** Frame whose poses a recording holds. */
public enum RecordingFrame {
  /** The grip frame T itself. */
  GRIP,
  /** The flange F: {@code X_WT = X_WF X_FT}. */
  FLANGE
}
