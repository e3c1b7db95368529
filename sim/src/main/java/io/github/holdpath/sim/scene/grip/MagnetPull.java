package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.grip.PullCurve;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what a face pulls: as written for this job, or from the curve of a data sheet. */
final class MagnetPull {
  private static final double EQUAL = 1 + 1e-9;

  private final Values faces;
  private final double safety;
  private final GripContext context;
  private final Faults faults;

  /**
   * Begins.
   *
   * @param faces fields of all faces
   * @param safety factor that the data sheet's pull has in it, 1 for none
   */
  MagnetPull(Values faces, double safety, GripContext context) {
    this.faces = faces;
    this.safety = safety;
    this.context = context;
    this.faults = context.faults();
  }

  /**
   * Pull of each face, N, the safety taken out.
   *
   * @return empty after a fault
   */
  List<Double> of(List<PatchLayout.Spot> spots) {
    int before = faults.count();
    sheetIsInThePart();
    OptionalDouble curve = faces.isThere("curve") ? fromCurve() : OptionalDouble.empty();
    List<Double> pulls = new ArrayList<>();
    for (PatchLayout.Spot spot : spots) {
      Values holder = spot.holder("pull");
      if (holder.isThere("pull") && faces.isThere("curve")) {
        faults.add(holder.place("pull"), "the curve tells the pull already; keep pull or curve");
        break;
      }
      if (!holder.isThere("pull") && !faces.isThere("curve")) {
        faults.add(
            spot.own().place("pull"),
            "is missing: what one face pulls on this part, or the rows of its data sheet as curve;"
                + " for example \"240 N\"");
        break;
      }
      OptionalDouble pull = faces.isThere("curve") ? curve : holder.number("pull");
      pull.ifPresent(p -> pulls.add(p * safety));
    }
    if (faults.count() > before || pulls.size() < spots.size()) {
      return List.of();
    }
    note(spots);
    return pulls;
  }

  private void note(List<PatchLayout.Spot> spots) {
    SafetyNote.add(context.notes(), faces, "pull", safety);
    spots.stream()
        .map(PatchLayout.Spot::own)
        .filter(own -> own != faces)
        .forEach(own -> SafetyNote.add(context.notes(), own, "pull", safety));
    for (String name : List.of("gap", "thickness")) {
      context.notes().add(faces, name, Scene.Origin.NOT_STATED);
    }
  }

  private OptionalDouble fromCurve() {
    int before = faults.count();
    require("gap", "between face and part in this job", "0.1 mm");
    require("thickness", "of the part's wall under the faces", "1.5 mm");
    List<Values> written = faces.groups("curve");
    List<PullCurve.Row> rows = new ArrayList<>();
    for (Values row : written) {
      OptionalDouble gap = row.number("gap");
      OptionalDouble thickness = row.number("thickness");
      OptionalDouble pull = row.number("pull");
      if (gap.isPresent() && thickness.isPresent() && pull.isPresent()) {
        rows.add(new PullCurve.Row(gap.getAsDouble(), thickness.getAsDouble(), pull.getAsDouble()));
      }
    }
    OptionalDouble gap = faces.number("gap");
    OptionalDouble thickness = faces.number("thickness");
    if (faults.count() > before
        || rows.isEmpty()
        || rows.size() < written.size()
        || gap.isEmpty()
        || thickness.isEmpty()) {
      return OptionalDouble.empty();
    }
    Optional<PullCurve.Contradiction> wrong = PullCurve.contradiction(rows);
    if (wrong.isPresent()) {
      faults.add(written.get(wrong.get().higher()).place(), contradiction(rows, wrong.get()));
      return OptionalDouble.empty();
    }
    return read(new PullCurve(rows), gap.getAsDouble(), thickness.getAsDouble());
  }

  private void require(String name, String help, String example) {
    if (!faces.isThere(name)) {
      faults.add(
          faces.place(name),
          "is missing: the curve needs it, " + help + "; for example \"" + example + "\"");
    }
  }

  private static String contradiction(List<PullCurve.Row> rows, PullCurve.Contradiction c) {
    PullCurve.Row a = rows.get(c.higher());
    PullCurve.Row b = rows.get(c.lower());
    return a.gap() == b.gap() && a.thickness() == b.thickness()
        ? "has the gap and the thickness of row " + c.lower() + "; keep one of the two"
        : "pulls "
            + (float) a.pull()
            + " N, more than the "
            + (float) b.pull()
            + " N of row "
            + c.lower()
            + ", though its gap is no smaller and its sheet no thicker; look at the data sheet and"
            + " put the rows right";
  }

  private OptionalDouble read(PullCurve curve, double gap, double thickness) {
    if (thickness * EQUAL < curve.leastThickness()) {
      faults.add(
          faces.place("thickness"),
          "the sheet is thinner than all rows of the curve, which begin at "
              + milli(curve.leastThickness())
              + "; give a row for it, or take the pull that you measure as pull");
      return OptionalDouble.empty();
    }
    double sheet = Math.max(thickness, curve.leastThickness());
    double most = curve.mostGap(sheet);
    if (gap > most * EQUAL) {
      faults.add(
          faces.place("gap"),
          "the gap is wider than the rows of the curve for this thickness, which end at "
              + milli(most)
              + "; give a row for it, or take the pull that you measure as pull");
      return OptionalDouble.empty();
    }
    double pull = curve.pull(Math.min(gap, most), sheet);
    String text = (float) pull + " N for each face at this gap and thickness";
    if (safety != 1) {
      text +=
          ", " + (float) (pull * safety) + " N without the safety of " + (float) safety + " in it";
    }
    context.notes().add(faces, "curve", text, Scene.Origin.NOT_STATED);
    return OptionalDouble.of(pull);
  }

  /** A wall cannot be thicker than the part. */
  private void sheetIsInThePart() {
    OptionalDouble thickness = faces.number("thickness");
    if (thickness.isEmpty() || context.shape().isEmpty()) {
      return;
    }
    PartShape shape = context.shape().get();
    double most = shape.extent().z();
    if (thickness.getAsDouble() > most * EQUAL) {
      faults.add(
          faces.place("thickness"),
          "the part's "
              + shape.label()
              + " is "
              + milli(most)
              + " along z, less than this; give the thickness of the one sheet that is carried");
    }
  }

  private static String milli(double metres) {
    return (float) (1000 * metres) + " mm";
  }
}
