package io.github.holdpath.dynamics.margin;

import io.github.holdpath.dynamics.OutsideCheck;
import io.github.holdpath.dynamics.Reference;
import io.github.holdpath.dynamics.compliance.SwingChecks;
import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.contact.PatchShape;
import io.github.holdpath.dynamics.contact.PatchStiffness;
import io.github.holdpath.dynamics.grip.Cup;
import io.github.holdpath.dynamics.grip.Drive;
import io.github.holdpath.dynamics.grip.Mechanism;
import io.github.holdpath.dynamics.grip.SuctionGrip;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.load.AirLoad;
import io.github.holdpath.dynamics.load.LoadCases;
import io.github.holdpath.dynamics.load.LoadModel;
import io.github.holdpath.dynamics.load.RequiredWrench;
import io.github.holdpath.dynamics.spatial.MotionState;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import tools.jackson.databind.JsonNode;

/** Register of the outside checks that the verification page shows, computed anew each time. */
final class VerificationChecks {
  static final String PRACTICE = "common practice, no source";
  static final String DERIVED = "derived in the theory page, computed by a second program";
  static final String SECOND = "independent program in another language";

  private static final double G = HandbookValidationTest.G;
  private static final double INF = Double.POSITIVE_INFINITY;

  /** Half the last of six printed digits. */
  private static final double SIX = 5e-6;

  private static final PatchShape SQUARE = new PatchShape.Rectangle(0.02, 0.02);

  private final List<OutsideCheck> all = new ArrayList<>();

  static List<OutsideCheck> all() {
    VerificationChecks checks = new VerificationChecks();
    checks.handbook();
    checks.friction();
    checks.pressure();
    checks.mechanisms();
    checks.fourCups();
    checks.referenceSets();
    checks.tray();
    checks.engines();
    checks.all.addAll(SwingChecks.all());
    return checks.all;
  }

  private void add(String group, String what, String source, double ours, double theirs) {
    double size = Math.max(Math.abs(theirs), 1e-300);
    double difference = theirs == 0 ? Math.abs(ours) : Math.abs(ours - theirs) / size;
    all.add(new OutsideCheck(group, what, source, ours, theirs, difference, SIX, 6));
  }

  private static double first(HoldModel hold, Wrench load) {
    return hold.firstSlip(load).factor();
  }

  private static ContactPatch pad(PatchShape shape, Vec3 at, Vec3 into, double mu, double n0) {
    Vec3 along = Math.abs(into.x()) < 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 0, 1);
    return pad(shape, new Pose(at, Quaternion.ofAxes(into, along)), mu, n0, 1);
  }

  private static ContactPatch pad(PatchShape s, Pose at, double mu, double n0, double stiff) {
    PatchStiffness stiffness = PatchStiffness.ofNormal(1e4 * stiff);
    return new ContactPatch("pad", at, s, mu, n0, 0, stiffness, INF, INF, false);
  }

  private void handbook() {
    String group = "Handbook formulas";
    HoldModel jaws =
        HoldModel.of(HandbookValidationTest.jaws(100, 0.2, Mechanism.SYNCHRONISED, SQUARE));
    Wrench lift = new Wrench(new Vec3(0, 0, G + 5), Vec3.ZERO);
    add(group, "two flat jaws, force of each, N", PRACTICE, 100 / first(jaws, lift), 37.0166);
    add(group, "the same jaws at 100 N, factor", PRACTICE, first(jaws, lift), 2.70149);
    double flank = 1 / (2 * Math.sqrt(0.5));
    List<ContactPatch> vee = new ArrayList<>();
    List<ContactPatch> three = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double a = Math.PI / 4 + i * Math.PI / 2;
      Vec3 into = new Vec3(0, -Math.cos(a), -Math.sin(a));
      vee.add(pad(new PatchShape.Line(0.05), into.times(-0.02), into, 0.15, flank));
    }
    for (int i = 0; i < 3; i++) {
      double a = i * 2 * Math.PI / 3;
      Vec3 into = new Vec3(-Math.cos(a), -Math.sin(a), 0);
      three.add(pad(SQUARE, into.times(-0.03), into, 0.15, 1));
    }
    double pull = 2 * (G + 3);
    double bar =
        1 / first(new HoldModel(vee, List.of()), new Wrench(new Vec3(pull, 0, 0), Vec3.ZERO));
    add(group, "round bar in two V jaws of 90 degrees, along the bar, N", PRACTICE, bar, 60.3711);
    double centric =
        1 / first(new HoldModel(three, List.of()), new Wrench(new Vec3(0, 0, pull), Vec3.ZERO));
    add(group, "three centric jaws, N", PRACTICE, centric, 56.9184);
    suction(group, "cups hung, lifted, N", HandbookValidationTest.HUNG, new Vec3(0, 0, 4), 27.6133);
    suction(
        group, "cups hung, sideways, N", HandbookValidationTest.HUNG, new Vec3(4, 0, 0), 35.6133);
    suction(group, "cups upright, N", HandbookValidationTest.LEVEL, new Vec3(0, 0, 4), 55.2266);
    HoldModel small = HoldModel.of(HandbookValidationTest.cup(0.0125, 22, 0.3));
    double weight = 0.551 * G;
    double[] both = new double[12];
    both[2] = -weight;
    both[6] = 0.551;
    double k = new SpeedHeadroom(small, 1, small.workspace()).of(both);
    String pham = "closed form; inputs as in the scripts to Pham, Pham 2019";
    add(group, "one cup, sideways limit, m/s^2", pham, k * k, 9.03623);
    turnedPlate(group);
    double mu = 0.5;
    double phi = Math.atan(1 / mu);
    HoldModel unit = HoldModel.of(HandbookValidationTest.cup(0.05, 1, mu));
    Wrench worst = new Wrench(new Vec3(Math.sin(phi), 0, -Math.cos(phi)), Vec3.ZERO);
    add(group, "one cup, worst direction, pull per m a", DERIVED, 1 / first(unit, worst), 2.23607);
  }

  private void suction(String group, String what, Quaternion pose, Vec3 acc, double theirs) {
    HoldModel hold = HoldModel.of(HandbookValidationTest.cup(0.05, 1, 0.5));
    Wrench load = HandbookValidationTest.load(2, Vec3.ZERO, pose, acc).total();
    add(group, what, PRACTICE, 1 / first(hold, load), theirs);
  }

  private void turnedPlate(String group) {
    HoldModel hold =
        HoldModel.of(
            HandbookValidationTest.jaws(
                100, 0.3, Mechanism.SYNCHRONISED, new PatchShape.Rectangle(0.03, 0.03)));
    double[] angles = {0, 45, Math.toDegrees(Math.atan(1 / 0.3)), 90};
    double[] factors = {20.3943, 6.65583, 5.86027, 6.11830};
    for (int i = 0; i < 4; i++) {
      double phi = Math.toRadians(angles[i]);
      Wrench w = new Wrench(new Vec3(G * Math.sin(phi), G * Math.cos(phi), 0), Vec3.ZERO);
      String what = String.format("plate turned between pads by %.0f degrees", angles[i]);
      add(group, what, DERIVED, first(hold, w), factors[i]);
    }
  }

  private void friction() {
    String group = "Friction of a patch that turns and slides";
    String surface = "limit surface: Goyal, Ruina, Papadopoulos 1991";
    PatchShape ring = new PatchShape.Ring(1);
    double reach = 1 / Math.sqrt(2 + 2 * ring.crossX());
    add(group, "ring, force alike torsion, part of mu N", surface, reach, 2 / Math.PI);
    add(group, "torsion radius, square of side 1", DERIVED, radius(1, 1), 0.382598);
    add(group, "torsion radius, 30 x 15 mm, mm", DERIVED, 1e3 * radius(0.03, 0.015), 8.89850);
    add(group, "torsion radius, 40 x 10 mm, mm", DERIVED, 1e3 * radius(0.04, 0.01), 10.6078);
    double above = 0;
    double below = 0;
    double formula = 0;
    int count = 0;
    for (JsonNode row : Reference.rows("limit-surface.json", "rows").toList()) {
      double ours = reach(row);
      double exact = row.get("radius").doubleValue();
      above = Math.max(above, ours / exact - 1);
      below = Math.max(below, 1 - ours / exact);
      formula = Math.max(formula, Math.abs(ours - row.get("inner").doubleValue()) / exact);
      count++;
    }
    set(group, "points of the exact limit: the formula itself", SECOND, count, formula, 1e-7);
    set(group, "the same: by how much the formula is above", SECOND, count, above, 2e-4);
    set(group, "the same: by how much it stays below", SECOND, count, below, 0.088);
    HoldModel pads =
        HoldModel.of(
            HandbookValidationTest.jaws(
                200, 0.3, Mechanism.SYNCHRONISED, new PatchShape.Rectangle(0.03, 0.015)));
    double f = G + 3;
    Vec3 moment = new Vec3(0, 0.05 * f, 0);
    double along = first(pads, new Wrench(new Vec3(f, 0, 0), moment));
    double across = first(pads, new Wrench(new Vec3(0, 0, f), moment));
    add(group, "overhang of 50 mm, along the pads' long side", DERIVED, along, 1.63087);
    add(group, "overhang of 50 mm, across it", DERIVED, across, 1.57338);
  }

  private static double radius(double a, double b) {
    return new PatchShape.Rectangle(a, b).torsionRadius();
  }

  private static double reach(JsonNode row) {
    double a = row.get("a").doubleValue();
    PatchShape s =
        switch (row.get("shape").stringValue()) {
          case "ring" -> new PatchShape.Ring(a);
          case "disc" -> new PatchShape.Disc(a);
          case "line" -> new PatchShape.Line(a);
          default -> new PatchShape.Rectangle(a, row.get("b").doubleValue());
        };
    double way = Math.toRadians(row.get("forceDirDeg").doubleValue());
    double torsion = Math.toRadians(row.get("torsionDeg").doubleValue());
    Pose at = Pose.IDENTITY;
    ContactPatch patch =
        new ContactPatch("p", at, s, 1, 1, 1, PatchStiffness.ALIKE, INF, INF, false);
    double f = Math.cos(torsion);
    Vec3 force = new Vec3(f * Math.cos(way), f * Math.sin(way), 0);
    Vec3 moment = new Vec3(0, 0, Math.sin(torsion) * s.torsionRadius());
    return first(new HoldModel(List.of(patch), List.of()), new Wrench(force, moment));
  }

  private void pressure() {
    String group = "Pressure that a moment shifts";
    double n = 75.3982;
    PatchShape lip = new PatchShape.Ring(0.02);
    add(group, "lip of 20 mm radius peels, N m", DERIVED, n * lip.kernX(), 0.753982);
    add(group, "the same tips off, N m", DERIVED, n * lip.edgeX(), 1.50796);
    SuctionGrip cup = HandbookValidationTest.cup(0.02, n, 0.5);
    Wrench load =
        HandbookValidationTest.load(
                1, new Vec3(0, 0, 0.03), HandbookValidationTest.HUNG, new Vec3(6, 0, 0))
            .total();
    double peel = first(HoldModel.of(cup), load);
    add(group, "cup with the load 30 mm below, first slip", DERIVED, peel, 2.71152);
    add(group, "the same, last hold", DERIVED, WholeGrip.of(cup).factor(load, 1).factor(), 3.45758);
    String textbook = "textbook statics";
    PatchShape face = new PatchShape.Rectangle(0.03, 0.015);
    add(group, "face of 30 mm opens, mm", textbook, 1e3 * face.kernY(), 5);
    add(group, "face of 30 mm tips, mm", textbook, 1e3 * face.edgeY(), 15);
    add(group, "disc of 20 mm opens, mm", textbook, 1e3 * new PatchShape.Disc(0.02).kernX(), 5);
  }

  private void mechanisms() {
    String group = "Shares and mechanisms";
    double mindlin = PatchStiffness.SHEAR_PER_NORMAL;
    add(group, "shear to normal stiffness at nu = 1/2", "Mindlin 1949", mindlin, 0.666666667);
    pads(group, "one drive, pads alike", "common", 1, 1, 1.36364, 2.5);
    pads(group, "one drive, stiffness 1:4", "common", 1, 4, 1.30546, 2.5);
    pads(group, "one drive, stiffness 4:1", "common", 4, 1, 1.42724, 2.5);
    pads(group, "a drive each", "separate", 1, 1, 0, 0);
    pads(group, "locking, pads alike", "locking", 1, 1, 1.36364, 2.5);
    pads(group, "locking, stiffness 1:4", "locking", 1, 4, 0.994023, 1.5625);
    pads(group, "locking, stiffness 4:1", "locking", 4, 1, 2.17083, 6.25);
  }

  /** Pads at y = -20 and +20 mm, 100 N, mu 0.3; 80 N along the closing axis and 20 N across. */
  private void pads(String group, String what, String how, int k1, int k2, double h1, double h2) {
    List<Vec3> closing = List.of(new Vec3(0, 1, 0), new Vec3(0, -1, 0));
    List<ContactPatch> patches = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      Pose at =
          new Pose(
              closing.get(i).times(-0.02), Quaternion.ofAxes(closing.get(i), new Vec3(1, 0, 0)));
      patches.add(pad(SQUARE, at, 0.3, 100, i == 0 ? k1 : k2));
    }
    List<Drive> both = List.of(new Drive(List.of(0, 1), closing));
    List<Drive> each =
        List.of(
            new Drive(List.of(0), closing.subList(0, 1)),
            new Drive(List.of(1), closing.subList(1, 2)));
    List<Drive> drives =
        how.equals("common") ? both : how.equals("separate") ? each : List.<Drive>of();
    Wrench load = new Wrench(new Vec3(20, 80, 0), Vec3.ZERO);
    double first = first(new HoldModel(patches, drives), load);
    List<Drive> closures = how.equals("locking") ? both : List.of();
    double whole = new WholeGrip(patches, drives, closures).factor(load, 1).factor();
    add(group, what + ", first slip", DERIVED, first, h1);
    add(group, what + ", last hold", DERIVED, whole, h2);
  }

  private void fourCups() {
    String group = "Four cups under an offset load";
    List<Cup> cups = new ArrayList<>();
    for (double x : new double[] {-0.1, 0.1}) {
      for (double y : new double[] {-0.08, 0.08}) {
        cups.add(new Cup("cup", new Vec3(x, y, 0), 0.04, 75.3982, PatchStiffness.ALIKE));
      }
    }
    SuctionGrip grip = new SuctionGrip(cups, List.of(), 0.5, INF);
    RequiredWrench load =
        new LoadModel(
                new MassProperties(
                    6, new Vec3(0.04, 0.02, 0.06), new Inertia(0.02, 0.03, 0.04, 0, 0, 0)),
                new Vec3(0, 0, -G),
                AirLoad.NONE)
            .required(
                new MotionState(
                    new Pose(Vec3.ZERO, HandbookValidationTest.HUNG),
                    Vec3.ZERO,
                    Vec3.ZERO,
                    new Vec3(5, 0, 2),
                    new Vec3(0, 0, 4)));
    HoldModel hold = HoldModel.of(grip);
    add(group, "first slip", DERIVED, first(hold, load.total()), 1.48482);
    add(group, "careful", DERIVED, hold.careful(load.total()).factor(), 1.47901);
    WholeGrip sealed = new WholeGrip(grip.patches(), List.of(), List.of(), ConePatch.Limits.SEALED);
    add(group, "last hold, lips closed", DERIVED, sealed.factor(load.total(), 1).factor(), 2.17944);
    double whole = WholeGrip.of(grip).factor(load.total(), 1).factor();
    add(group, "last hold", DERIVED, whole, 2.22154);
    add(group, "speed headroom", DERIVED, headroom(hold, load, 1), 1.38595);
    HoldModel one = HoldModel.of(HandbookValidationTest.cup(0.02, 75.3982, 0.5));
    RequiredWrench sideways =
        HandbookValidationTest.load(2, Vec3.ZERO, HandbookValidationTest.HUNG, new Vec3(4, 0, 0));
    add(group, "one cup, speed headroom", DERIVED, headroom(one, sideways, 1), 1.86723);
    double two = headroom(one, sideways, 2);
    add(group, "the same at S = 2, squared", DERIVED, two * two, 1.13036);
  }

  private static double headroom(HoldModel hold, RequiredWrench load, double safety) {
    double[] both = new double[12];
    System.arraycopy(load.gravity().toArray(), 0, both, 0, 6);
    System.arraycopy(load.motion().toArray(), 0, both, 6, 6);
    return new SpeedHeadroom(hold, safety, hold.workspace()).of(both);
  }

  private void set(
      String group, String what, String source, int count, double difference, double tolerance) {
    all.add(new OutsideCheck(group, what, source, count, count, difference, tolerance, 6));
  }

  private void referenceSets() {
    String group = "Sets of reference numbers (largest difference)";
    column(group, "first slip", "H1", 1e-9, c -> first(c.hold(), c.load().total()));
    column(group, "opening", "open", 1e-8, c -> c.hold().opening(c.load().total()));
    column(group, "careful", "H1e", 1e-8, c -> c.hold().careful(c.load().total()).factor());
    column(group, "speed headroom squared, S = 1", "lambdaIn", 1e-6, c -> squared(c, 1));
    column(group, "speed headroom squared, S = 1.5", "lambdaIn15", 1e-6, c -> squared(c, 1.5));
    column(group, "last hold", "H2", 1e-6, c -> whole(c, ConePatch.Limits.PLAIN));
    column(
        group, "last hold, lips closed", "H2sealed", 1e-6, c -> whole(c, ConePatch.Limits.SEALED));
    column(
        group, "last hold, no cross terms", "H2outer", 1e-6, c -> whole(c, ConePatch.Limits.OUTER));
    double worst = 0;
    int count = 0;
    for (JsonNode c : LoadCases.all().toList()) {
      double[] w =
          LoadCases.model(c, LoadCases.air(c)).required(LoadCases.state(c)).total().toArray();
      double[] expected = Reference.numbers(c.get("expect").get("w"));
      double size = 0;
      double difference = 0;
      for (int k = 0; k < 6; k++) {
        size = Math.max(size, Math.abs(expected[k]));
        difference = Math.max(difference, Math.abs(w[k] - expected[k]));
      }
      worst = Math.max(worst, difference / size);
      count++;
    }
    String newton = SECOND + "; Lynch, Park, Modern Robotics, 2017, chapter 8";
    set(group, "required wrenches", newton, count, worst, 1e-9);
  }

  private static double squared(ReferenceCases.Case c, double safety) {
    double k = headroom(c.hold(), c.load(), safety);
    return k * k;
  }

  private static double whole(ReferenceCases.Case c, ConePatch.Limits limits) {
    double scale = Math.max(first(c.hold(), c.load().total()), 1e-3);
    return new WholeGrip(c.patches(), c.drives(), c.closures(), limits)
        .factor(c.load().total(), scale)
        .factor();
  }

  private void column(
      String group,
      String what,
      String key,
      double tolerance,
      ToDoubleFunction<ReferenceCases.Case> ours) {
    double worst = 0;
    int count = 0;
    for (ReferenceCases.Case c : ReferenceCases.all()) {
      if (c.expected().has(key)) {
        double expected = c.expected().get(key).asDouble();
        double difference = Math.abs(ours.applyAsDouble(c) - expected) / Math.max(1, expected);
        worst = Math.max(worst, difference);
        count++;
      }
    }
    set(group, "patch sets: " + what, SECOND, count, worst, tolerance);
  }

  private void tray() {
    String group = "Measured objects on a tray";
    String source = "inputs measured by Heins, Schoellig 2023 and 2025; limits by closed form";
    for (TrayCases.Standing s : TrayCases.objects()) {
      Vec3 way = s.base().edgeY() <= s.base().edgeX() ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
      double slip = s.row().get("slipLimit").doubleValue();
      double tip = s.row().get("tipLimit").doubleValue();
      double theirs = Math.min(slip, tip);
      double ours = s.limit(way);
      String what = s.name() + ", mu " + s.mu() + ": " + s.mode(way).label() + ", m/s^2";
      double difference = Math.abs(ours - theirs) / theirs;
      all.add(new OutsideCheck(group, what, source, ours, theirs, difference, 5e-4, 4));
    }
  }

  private void engines() {
    String group = "Rigid body engines";
    for (EngineCases.Case c : EngineCases.all()) {
      String engine = c.name().endsWith("plane engine") ? "dyn4j 5.0.2" : "ode4j 0.5.3";
      String what = c.name().substring(0, c.name().lastIndexOf(',')) + ", N or m/s^2";
      double theirs = c.theirs();
      double difference = Math.abs(c.ours() - theirs) / c.ours();
      all.add(new OutsideCheck(group, what, engine, c.ours(), theirs, difference, 0.01, 3));
    }
  }
}
