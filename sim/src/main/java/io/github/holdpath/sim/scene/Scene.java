package io.github.holdpath.sim.scene;

import io.github.holdpath.dynamics.grip.GripModel;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.motion.Motion;
import io.github.holdpath.sim.motion.MotionSource;
import io.github.holdpath.sim.motion.MoveLimits;
import io.github.holdpath.sim.robot.FlangePattern;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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
 * @param give how the part swings on its grip; empty where the grip's stiffness is not known
 * @param robot what moves the grip; empty where the grip moves as told
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
    List<InputNote> inputs,
    Optional<Give> give,
    Optional<RobotCell> robot) {
  /** The one version of the scene file's format that is known. */
  public static final String FORMAT = "holdpath-scene/1";

  /** Copies the list. */
  public Scene {
    inputs = List.copyOf(inputs);
  }

  /** The motion that is judged: where there is a robot, as that makes it. */
  public Motion moved() {
    return robot.map(r -> r.track().motion()).orElseGet(motion::motion);
  }

  /** A scene whose grip moves as told. */
  public Scene(
      String title,
      Site site,
      Part part,
      GripModel grip,
      double requiredSafety,
      Optional<Tool> tool,
      MoveLimits limits,
      MotionSource motion,
      List<InputNote> inputs,
      Optional<Give> give) {
    this(
        title,
        site,
        part,
        grip,
        requiredSafety,
        tool,
        limits,
        motion,
        inputs,
        give,
        Optional.empty());
  }

  /** A scene whose grip counts as rigid and moves as told. */
  public Scene(
      String title,
      Site site,
      Part part,
      GripModel grip,
      double requiredSafety,
      Optional<Tool> tool,
      MoveLimits limits,
      MotionSource motion,
      List<InputNote> inputs) {
    this(title, site, part, grip, requiredSafety, tool, limits, motion, inputs, Optional.empty());
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
   * @param flange bolt pattern of the mechanical interface; empty where it is not told
   */
  public record Tool(MassProperties body, Pose flangeToGrip, Optional<FlangePattern> flange) {}

  /**
   * How the part swings on its grip.
   *
   * @param damping ratio of every mode, dimensionless, 0 to 0.9
   * @param settle swing of the centre of mass within which the part counts as settled, m; empty
   *     where nobody asks
   */
  public record Give(double damping, OptionalDouble settle) {
    /** Damping ratio where none is stated: common practice, no source. */
    public static final double USUAL_DAMPING = 0.05;

    /** Refuses numbers out of range. */
    public Give {
      if (!(damping >= 0 && damping <= 0.9)) {
        throw new IllegalArgumentException("damping must be from 0 to 0.9, but was " + damping);
      }
      if (settle.isPresent() && !(settle.getAsDouble() > 0)) {
        throw new IllegalArgumentException("settle must be positive, but was " + settle);
      }
    }
  }

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
