package io.github.holdpath.viewer.state;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.viewer.mesh.LineData;
import io.github.holdpath.viewer.mesh.MeshData;

/**
 * One thing in a picture, at a pose in the world. Whoever draws keeps what it made of a mesh for as
 * long as the same object comes again, so a moving body costs no more than a new pose.
 */
public sealed interface Item {
  /** When it is drawn. */
  Layer layer();

  /** Of its own frame in the world. */
  Pose pose();

  /**
   * A body.
   *
   * @param mesh in its own frame, m
   * @param pose of that frame in the world
   * @param layer when it is drawn
   * @param tint colour by which the mesh's own is multiplied, {@code 0xRRGGBB}; white changes
   *     nothing
   * @param opacity from 0, nothing is seen, to 1
   * @param lit whether light falls on it; where not, each pixel is exactly its colour
   */
  record Body(MeshData mesh, Pose pose, Layer layer, int tint, double opacity, boolean lit)
      implements Item {
    /** Changes no colour. */
    public static final int WHITE = 0xFFFFFF;
  }

  /**
   * Lines one pixel wide.
   *
   * @param lines in their own frame, m
   * @param pose of that frame in the world
   * @param layer when they are drawn
   */
  record Lines(LineData lines, Pose pose, Layer layer) implements Item {}
}
