package io.github.holdpath.dynamics.contact;

/**
 * Shape of an evenly pressed contact patch, in patch axes (x and y in the contact, z into the
 * part), with the geometric constants of its limits (theory, table 2.1).
 *
 * <p>Limits on the tilting moments (mx, my) under a normal force N: a round shape holds while
 * {@code hypot(mx, my) <= N rho}; the others while {@code |mx|/kernX + |my|/kernY <= N} up to the
 * first opening, and {@code |mx| <= N edgeX, |my| <= N edgeY} up to tipping.
 */
public sealed interface PatchShape {
  /** Mean distance of the pressed area from its centre, m: torsion moment per friction force. */
  double torsionRadius();

  /**
   * The same shape in another size.
   *
   * @param factor on all its lengths, positive
   */
  PatchShape scaled(double factor);

  /** Cross term between torsion and friction force along x, dimensionless. */
  double crossX();

  /** Cross term between torsion and friction force along y, dimensionless. */
  default double crossY() {
    return crossX();
  }

  /** Pressed area, m^2; 0 for a line, whose pressure is not defined. */
  double area();

  /** Tilting stiffness about x per normal stiffness, m^2. */
  double tiltX();

  /** Tilting stiffness about y per normal stiffness, m^2. */
  default double tiltY() {
    return tiltX();
  }

  /** Torsion stiffness per shear stiffness, m^2. */
  double torsion();

  /** Whether tilting is limited by {@code hypot(mx, my)} alone. */
  boolean round();

  /** Whether the first opening breaks a seal, so that the kern is the failing limit. */
  default boolean sealed() {
    return false;
  }

  /**
   * Moment about x per normal force at which the patch begins to open, m; infinite if it cannot.
   */
  double kernX();

  /** Moment about y per normal force at which the patch begins to open, m. */
  default double kernY() {
    return kernX();
  }

  /** Moment about x per normal force at which the patch tips over its edge, m. */
  double edgeX();

  /** Moment about y per normal force at which the patch tips over its edge, m. */
  default double edgeY() {
    return edgeX();
  }

  /**
   * Use of the kern at which the patch tips: edge over kern for a round shape, and the same for the
   * others along one side.
   */
  default double tipPerKern() {
    return edgeY() / kernY();
  }

  /** Name used in texts: ring, disc, rectangle, line. */
  String label();

  /**
   * The lip of a suction cup.
   *
   * @param radius of the lip, m, positive
   */
  record Ring(double radius) implements PatchShape {
    /** Refuses a radius that is not positive. */
    public Ring {
      positive("radius", radius);
    }

    @Override
    public PatchShape scaled(double factor) {
      return new Ring(factor * radius);
    }

    @Override
    public double torsionRadius() {
      return radius;
    }

    @Override
    public double crossX() {
      return Math.PI * Math.PI / 8 - 1;
    }

    @Override
    public double area() {
      return Math.PI * radius * radius;
    }

    @Override
    public double tiltX() {
      return radius * radius / 2;
    }

    @Override
    public double torsion() {
      return radius * radius;
    }

    @Override
    public boolean round() {
      return true;
    }

    @Override
    public boolean sealed() {
      return true;
    }

    @Override
    public double kernX() {
      return radius / 2;
    }

    @Override
    public double edgeX() {
      return radius;
    }

    @Override
    public String label() {
      return "ring";
    }
  }

  /**
   * A round face.
   *
   * @param radius m, positive
   */
  record Disc(double radius) implements PatchShape {
    /** Refuses a radius that is not positive. */
    public Disc {
      positive("radius", radius);
    }

    @Override
    public PatchShape scaled(double factor) {
      return new Disc(factor * radius);
    }

    @Override
    public double torsionRadius() {
      return 2 * radius / 3;
    }

    @Override
    public double crossX() {
      return 0.149;
    }

    @Override
    public double area() {
      return Math.PI * radius * radius;
    }

    @Override
    public double tiltX() {
      return radius * radius / 4;
    }

    @Override
    public double torsion() {
      return radius * radius / 2;
    }

    @Override
    public boolean round() {
      return true;
    }

    @Override
    public double kernX() {
      return radius / 4;
    }

    @Override
    public double edgeX() {
      return radius;
    }

    @Override
    public String label() {
      return "disc";
    }
  }

  /**
   * A rectangular face.
   *
   * @param a side along patch x, m, positive
   * @param b side along patch y, m, positive
   */
  record Rectangle(double a, double b) implements PatchShape {
    /** Refuses sides that are not positive. */
    public Rectangle {
      positive("a", a);
      positive("b", b);
    }

    @Override
    public PatchShape scaled(double factor) {
      return new Rectangle(factor * a, factor * b);
    }

    @Override
    public double torsionRadius() {
      return (Math.hypot(a, b) / 3
              + a * a / (6 * b) * asinh(b / a)
              + b * b / (6 * a) * asinh(a / b))
          / 2;
    }

    @Override
    public double crossX() {
      return a >= b ? crossAlong() : crossAcross();
    }

    @Override
    public double crossY() {
      return a >= b ? crossAcross() : crossAlong();
    }

    private double crossAlong() {
      double k = Math.max(a, b) / Math.min(a, b);
      double d = Math.max(0, 3 - k);
      return 0.039 * d * d;
    }

    private double crossAcross() {
      double k = Math.max(a, b) / Math.min(a, b);
      return Math.max(crossAlong(), 0.5 - 8 / (11 * (1 + k)));
    }

    /** Keeps its digits at small x, as of a thin strip. */
    private static double asinh(double x) {
      return Math.log1p(x + x * x / (1 + Math.sqrt(x * x + 1)));
    }

    @Override
    public double area() {
      return a * b;
    }

    @Override
    public double tiltX() {
      return b * b / 12;
    }

    @Override
    public double tiltY() {
      return a * a / 12;
    }

    @Override
    public double torsion() {
      return (a * a + b * b) / 12;
    }

    @Override
    public boolean round() {
      return false;
    }

    @Override
    public double kernX() {
      return b / 6;
    }

    @Override
    public double kernY() {
      return a / 6;
    }

    @Override
    public double edgeX() {
      return b / 2;
    }

    @Override
    public double edgeY() {
      return a / 2;
    }

    @Override
    public String label() {
      return "rectangle";
    }
  }

  /**
   * A line of contact, as of a bar in flat jaws. It turns freely about itself.
   *
   * @param length along patch x, m, positive
   */
  record Line(double length) implements PatchShape {
    /** Refuses a length that is not positive. */
    public Line {
      positive("length", length);
    }

    @Override
    public PatchShape scaled(double factor) {
      return new Line(factor * length);
    }

    @Override
    public double torsionRadius() {
      return length / 4;
    }

    @Override
    public double crossX() {
      return 0;
    }

    @Override
    public double crossY() {
      return 0.5;
    }

    @Override
    public double area() {
      return 0;
    }

    @Override
    public double tiltX() {
      return 0;
    }

    @Override
    public double tiltY() {
      return length * length / 12;
    }

    @Override
    public double torsion() {
      return length * length / 12;
    }

    @Override
    public boolean round() {
      return false;
    }

    @Override
    public double kernX() {
      return Double.POSITIVE_INFINITY;
    }

    @Override
    public double kernY() {
      return length / 6;
    }

    @Override
    public double edgeX() {
      return Double.POSITIVE_INFINITY;
    }

    @Override
    public double edgeY() {
      return length / 2;
    }

    @Override
    public String label() {
      return "line";
    }
  }

  private static void positive(String name, double value) {
    // Beyond these bounds squares and ratios of sizes leave the range of a double.
    if (!(value >= 1e-9 && value <= 1000)) {
      throw new IllegalArgumentException(
          name + " must be positive, from 1e-9 to 1000 m, but was " + value);
    }
  }
}
