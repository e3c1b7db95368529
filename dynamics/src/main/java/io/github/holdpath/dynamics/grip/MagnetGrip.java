package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import java.util.ArrayList;
import java.util.List;

/**
 * Magnets in the plane z = 0 of the grip frame, with form-fit ledges if there are any. A face
 * presses as hard as it pulls; it has no lip, so that it fails by slipping or by tipping over its
 * edge.
 *
 * @param faces those that pull, at least one
 * @param type how the magnets are switched
 * @param ledges form fit, may be empty
 * @param friction mu between face and part, dimensionless
 * @param maxPressure permitted mean pressure on the part, Pa, infinite if none is given
 */
public record MagnetGrip(
    List<MagnetFace> faces,
    MagnetType type,
    List<Ledge> ledges,
    double friction,
    double maxPressure)
    implements GripModel {
  /** Copies the lists; refuses a grip without faces. */
  public MagnetGrip {
    faces = List.copyOf(faces);
    ledges = List.copyOf(ledges);
    if (faces.isEmpty()) {
      throw new IllegalArgumentException("a magnet grip needs at least one face");
    }
  }

  @Override
  public String kind() {
    return "magnet";
  }

  @Override
  public List<ContactPatch> patches() {
    List<ContactPatch> patches = new ArrayList<>();
    for (MagnetFace face : faces) {
      patches.add(
          new ContactPatch(
              face.name(),
              new Pose(face.position(), Quaternion.IDENTITY),
              face.shape(),
              friction,
              face.pull(),
              face.pull(),
              face.stiffness(),
              maxPressure,
              Double.POSITIVE_INFINITY,
              false));
    }
    for (Ledge ledge : ledges) {
      patches.add(ledge.patch(friction, maxPressure, Double.POSITIVE_INFINITY));
    }
    return List.copyOf(patches);
  }

  @Override
  public List<DesignInput> designInputs() {
    return List.of(
        DesignInput.force("pull of the faces"),
        DesignInput.size("face size at this pull"),
        DesignInput.spacing("spacing of the faces"),
        DesignInput.friction());
  }

  @Override
  public List<Drive> drives() {
    return List.of();
  }
}
