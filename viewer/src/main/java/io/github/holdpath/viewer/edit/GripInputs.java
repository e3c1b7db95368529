package io.github.holdpath.viewer.edit;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.quantity.Dimension;
import io.github.holdpath.sim.scene.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** Values of the grip, as its kind has them. */
final class GripInputs {
  private static final Input.Group GRIP = Input.Group.GRIP;

  /** Cups that differ are shown one by one up to this number. */
  private static final int MOST_SINGLE = 6;

  private static final List<String> HOLDERS = List.of("cups", "faces", "pads", "fingers");

  private final Draft draft;
  private final Scene scene;
  private final InputRow rows;

  GripInputs(Draft draft, Scene scene, InputRow rows) {
    this.draft = draft;
    this.scene = scene;
    this.rows = rows;
  }

  void add() {
    friction();
    supply();
    // A gripper's force, each jaw or finger by itself; soft fingers must not press beyond theirs.
    rows.given(GRIP, "grip/force", "Force of each jaw or finger", this::force);
    rows.given(GRIP, "grip/spin/speed", "Turns of the grip", Inputs::tenfold);
    layout("grip/cups", "Cup");
    layout("grip/faces", "Face");
    rows.given(GRIP, "grip/cups/pull", "Pull of each cup", Inputs::tenfold);
    rows.given(GRIP, "grip/faces/pull", "Pull of each face", Inputs::tenfold);
    curve();
    for (String holder : HOLDERS) {
      stiffness("grip/" + holder + "/stiffness");
    }
    stiffness("grip/stiffness");
    if (scene.give().isPresent()) {
      rows.add(
          GRIP,
          "grip/damping",
          0,
          "Damping of the swing",
          Scale.number(Scene.Give.USUAL_DAMPING),
          s -> Scale.linear(0, 0.3, 0.01));
    }
  }

  private void friction() {
    Optional<ContactPatch> patch =
        scene.grip().patches().stream().filter(p -> !p.ledge()).findFirst();
    String usual = patch.map(p -> Scale.number(p.friction())).orElse("");
    rows.add(
        GRIP,
        "grip/friction",
        0,
        "Friction",
        usual,
        s -> Scale.linear(0.02, Math.max(1, Math.min(3, 2 * s)), 0.01));
  }

  private void supply() {
    double air = scene.site().pressure();
    DoubleFunction<Scale> below =
        s -> {
          double most = 0.95 * air / si("grip/supply/vacuum", "grip/supply/absolutePressure", s);
          return Scale.fine(round(0.05 * most * s), round(most * s));
        };
    rows.given(GRIP, "grip/supply/vacuum", "Vacuum", below);
    rows.given(GRIP, "grip/supply/absolutePressure", "Pressure left in the cups", below);
  }

  /** Pa of a value in the unit that one of the fields has. */
  private double si(String one, String other, double value) {
    Quantity q =
        InputRow.quantity(draft.value(one).or(() -> draft.value(other)).orElse("1 Pa"))
            .orElseThrow();
    return new Quantity(List.of(value), q.unit()).toSi(Dimension.PRESSURE)[0];
  }

  private Scale force(double s) {
    double most =
        same("grip/maxForce", "grip/force")
            .filter(m -> m > s)
            .orElse(draft.value("grip/maxForce").isPresent() ? s : 10 * s);
    return Scale.log(s / 10, most);
  }

  /** A field's number, if it has the unit of another one. */
  private Optional<Double> same(String pointer, String like) {
    Optional<Quantity> is = InputRow.quantity(draft.value(pointer).orElse(""));
    Optional<Quantity> due = InputRow.quantity(draft.value(like).orElse(""));
    return is.isPresent() && due.isPresent() && is.get().unit().equals(due.get().unit())
        ? Optional.of(is.get().numbers().get(0))
        : Optional.empty();
  }

  /** Sizes and distances; cups or faces that would overlap are out of the sliders' reach. */
  private void layout(String holder, String word) {
    rows.given(GRIP, holder + "/diameter", word + " diameter", s -> size(holder, s));
    both(holder + "/size", word + " length", word + " width", s -> size(holder, s));
    for (int i = 0; i < MOST_SINGLE; i++) {
      String one = holder + "/list/" + i;
      if (draft.value(holder + "/list/" + MOST_SINGLE).isEmpty()) {
        String name = draft.value(one + "/name").orElse(word + " " + (i + 1));
        rows.given(GRIP, one + "/diameter", name + ": diameter", GripInputs::fourfold);
        rows.given(GRIP, one + "/pull", name + ": pull", Inputs::tenfold);
      }
    }
    both(holder + "/spacing", "Spacing along x", "Spacing along y", s -> spacing(holder, s));
    rows.given(GRIP, holder + "/ring/diameter", "Diameter of the ring", GripInputs::twofold);
  }

  private void both(String pointer, String first, String second, DoubleFunction<Scale> scale) {
    if (draft.value(pointer).isPresent()) {
      rows.add(GRIP, pointer, 0, first, "", scale);
      rows.add(GRIP, pointer, 1, second, "", scale);
    }
  }

  private Scale size(String holder, double s) {
    double most = 4 * s;
    Optional<Quantity> spacing = InputRow.quantity(draft.value(holder + "/spacing").orElse(""));
    Optional<Quantity> own =
        InputRow.quantity(
            draft.value(holder + "/diameter").or(() -> draft.value(holder + "/size")).orElse(""));
    if (spacing.isPresent() && own.isPresent() && own.get().unit().equals(spacing.get().unit())) {
      double apart = spacing.get().numbers().stream().mapToDouble(v -> v).min().orElse(most);
      most = Math.max(s, Math.min(most, apart));
    }
    return Scale.fine(round(s / 4), most);
  }

  private Scale spacing(String holder, double s) {
    double least = s / 4;
    Optional<Double> wide =
        same(holder + "/diameter", holder + "/spacing")
            .or(
                () ->
                    InputRow.quantity(draft.value(holder + "/size").orElse(""))
                        .map(q -> q.numbers().stream().mapToDouble(v -> v).max().orElse(0)));
    least = Math.min(s, Math.max(least, wide.orElse(0.0)));
    return Scale.fine(least, 2 * s);
  }

  /** The gap at which the rows of a data sheet are read: within the rows. */
  private void curve() {
    if (draft.value("grip/faces/curve").isPresent()) {
      rows.given(GRIP, "grip/faces/gap", "Gap under the faces", this::gap);
    }
  }

  private Scale gap(double s) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; ; i++) {
      String row = "grip/faces/curve/" + i + "/gap";
      if (draft.value(row).isEmpty()) {
        break;
      }
      Optional<Double> value = same(row, "grip/faces/gap");
      least = Math.min(least, value.orElse(s));
      most = Math.max(most, value.orElse(s));
    }
    return most > least ? Scale.fine(least, most) : fourfold(s);
  }

  private void stiffness(String pointer) {
    if (draft.value(pointer).isEmpty()) {
      return;
    }
    rows.given(GRIP, pointer + "/normal", "Stiffness along the normal", Inputs::tenfold);
    Optional<Quantity> normal = InputRow.quantity(draft.value(pointer + "/normal").orElse(""));
    String usual =
        normal
            .map(q -> Scale.number(round(q.numbers().get(0) * 2 / 3)) + " " + q.unit())
            .orElse("");
    rows.add(GRIP, pointer + "/shear", 0, "Stiffness across", usual, Inputs::tenfold);
  }

  private static Scale fourfold(double s) {
    return Scale.fine(round(s / 4), round(4 * s));
  }

  private static Scale twofold(double s) {
    return Scale.fine(round(s / 2), round(2 * s));
  }

  /** To three digits. */
  private static double round(double value) {
    return value == 0 ? 0 : new BigDecimal(value).round(new MathContext(3)).doubleValue();
  }
}
