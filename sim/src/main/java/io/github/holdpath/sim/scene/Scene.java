package io.github.holdpath.sim.scene;

import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.MotionSource;
import io.github.holdpath.sim.motion.MoveLimits;
import java.util.List;
import java.util.Optional;

/**
 * One job: a part, a grip, a route and what must be shown. Everything in SI.
 *
 * @param title of the scene
 * @param site surroundings
 * @param part what is carried
 * @param grip what carries it
 * @param requiredSafety S, factor that the first slip must keep, at least 1
 * @param tool carried by the flange besides the part
 * @param limits of the scene; infinite where none is given
 * @param motion route or recording
 * @param inputs values whose origin the result must name, in the order of the file
 */
public record Scene(
    String title,
    Site site,
    Part part,
    GripModel grip,
    double requiredSafety,
    Optional<Tool> tool,
    MoveLimits limits,
    MotionSource motion,
    List<InputNote> inputs) {
  /** The one version of the scene file's format that is known. */
  public static final String FORMAT = "holdpath-scene/1";

  /** Copies the list. */
  public Scene {
    inputs = List.copyOf(inputs);
  }

  /**
   * Surroundings.
   *
   * @param altitude geometric, m
   * @param temperature K
   * @param gravity world axes, m/s^2
   * @param pressure of the local atmosphere, Pa
   * @param airDensity kg/m^3
   */
  public record Site(
      double altitude, double temperature, Vec3 gravity, double pressure, double airDensity) {}

  /**
   * What is carried.
   *
   * @param name of the part
   * @param body mass properties in the grip frame
   * @param air what the air adds
   * @param shape for plausibility and pictures
   * @param shapeCentre of the shape in the grip frame, m
   * @param material in words, may be empty
   */
  public record Part(
      String name,
      MassProperties body,
      AirLoad air,
      Optional<PartShape> shape,
      Vec3 shapeCentre,
      String material) {}

  /**
   * The tool.
   *
   * @param body mass properties in the flange frame F
   * @param flangeToGrip {@code X_FT}
   * @param flange designation of the mechanical interface, may be empty
   */
  public record Tool(MassProperties body, Pose flangeToGrip, String flange) {}

  /**
   * A value whose origin matters to who reads the result.
   *
   * @param pointer place in the scene file, as {@code grip/friction}
   * @param text the value as written, as {@code 0.5} or {@code 35 kPa}
   * @param origin where it comes from
   */
  public record InputNote(String pointer, String text, Origin origin) {}

  /** Where an input comes from. */
  public enum Origin {
    /** Measured on the real thing. */
    MEASURED("measured"),
    /** From a data sheet. */
    DATA_SHEET("data sheet"),
    /** Estimated for this job. */
    ESTIMATED("estimated"),
    /** Assumed: nobody has looked. */
    ASSUMED("assumed"),
    /** The file does not say. */
    NOT_STATED("origin not stated");

    private final String label;

    Origin(String label) {
      this.label = label;
    }

    /** Name in scene files and texts. */
    public String label() {
      return label;
    }
  }
}
