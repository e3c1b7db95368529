package io.github.holdpath.sim.scene.grip;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.scene.PartShape;
import io.github.holdpath.sim.scene.Scene;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.quantity.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Cells of an area pad: many small cups in one plate. A cell that lies off the part, or across its
 * edge, is left out, as its valve closes or it draws air.
 */
final class PadLayout {
  private static final double ON_PART = 1e-6;
  private static final int OUTLINE_POINTS = 24;

  private final Values cups;
  private final Values pad;
  private final GripContext context;
  private final Faults faults;
  private int idle;

  PadLayout(Values cups, Values pad, GripContext context) {
    this.cups = cups;
    this.pad = pad;
    this.context = context;
    this.faults = context.faults();
  }

  /** How many cells of the last {@link #spots} lie off the part. */
  int idle() {
    return idle;
  }

  /** The cells on the part, named {@code cell i,j} as a grid is; empty after a fault. */
  List<PatchLayout.Spot> spots() {
    int before = faults.count();
    Optional<Amount> size = size();
    OptionalDouble diameter = cups.number("diameter");
    for (String field : List.of("spacing", "size")) {
      if (cups.isThere(field)) {
        faults.add(
            cups.place(field), "belongs to single cups; take it out, as the pad has its own");
      }
    }
    if (!cups.isThere("diameter")) {
      faults.add(
          cups.place("diameter"),
          "is missing: effective diameter of each cell of the pad; for example \"50 mm\"");
    }
    if (size.isEmpty() || diameter.isEmpty() || faults.count() > before) {
      return List.of();
    }
    double d = diameter.getAsDouble();
    double a = size.get().first();
    double b = size.get().values().size() > 1 ? size.get().get(1) : a;
    Optional<Grid> grid = grid(a, b, d);
    return grid.isEmpty() ? List.of() : onPart(cells(grid.get(), a, b, d), d);
  }

  /** Rows and the distance between them along x and y. */
  private record Grid(int nx, int ny, double dx, double dy) {}

  private Optional<Amount> size() {
    Optional<Amount> size = pad.amount("size");
    Optional<String> shape = pad.text("shape");
    if (size.isPresent() && shape.isPresent()) {
      int due = shape.get().equals(SuctionSpec.ROUND) ? 1 : 2;
      if (size.get().values().size() != due) {
        faults.add(
            pad.place("size"),
            due == 1
                ? "a round pad needs its diameter alone; for example \"300 mm\""
                : "this pad needs its two sides; for example \"600 400 mm\"");
        return Optional.empty();
      }
    }
    return shape.isPresent() ? size : Optional.empty();
  }

  private Optional<Grid> grid(double a, double b, double d) {
    double[] n = pad.numbers("cells");
    Optional<Amount> spacing = pad.amount("spacing");
    Grid grid;
    if (n != null) {
      grid = new Grid((int) n[0], (int) n[1], a / n[0], b / n[1]);
    } else if (spacing.isPresent()) {
      double dx = spacing.get().get(0);
      double dy = spacing.get().get(1);
      grid = new Grid(count(a, d, dx), count(b, d, dy), dx, dy);
    } else {
      return Optional.empty();
    }
    if (grid.nx < 1 || grid.ny < 1 || (long) grid.nx * grid.ny > GripFields.MOST_PATCHES) {
      faults.add(
          pad.place(n != null ? "cells" : "spacing"),
          grid.nx < 1 || grid.ny < 1
              ? "not one cell fits into the pad; look at cups/diameter and the pad's size"
              : "there would be "
                  + (long) grid.nx * grid.ny
                  + " cells, but at most "
                  + GripFields.MOST_PATCHES
                  + " can be judged; take fewer, larger cells with the same open area");
      return Optional.empty();
    }
    return Optional.of(grid);
  }

  /** Cells that fit in a row; the small part keeps a row that fits exactly. */
  private static int count(double side, double d, double spacing) {
    return d > side ? 0 : (int) Math.min(1e6, Math.floor((side - d) / spacing + 1e-9) + 1);
  }

  private List<PatchLayout.Spot> cells(Grid g, double a, double b, double d) {
    boolean rectangular = pad.text("shape").equals(Optional.of(SuctionSpec.RECTANGULAR));
    List<PatchLayout.Spot> cells = new ArrayList<>();
    for (int i = 0; i < g.nx; i++) {
      for (int j = 0; j < g.ny; j++) {
        Vec3 at = new Vec3((i - (g.nx - 1) / 2.0) * g.dx, (j - (g.ny - 1) / 2.0) * g.dy, 0);
        // A lip inside the ellipse whose half axes are less by the lip's radius is inside the pad.
        double u = at.x() / Math.max(1e-12, (a - d) / 2);
        double v = at.y() / Math.max(1e-12, (b - d) / 2);
        if (rectangular || u * u + v * v <= 1 + 1e-9) {
          cells.add(new PatchLayout.Spot("cell " + (i + 1) + "," + (j + 1), at, cups, cups));
        }
      }
    }
    if (cells.isEmpty()) {
      faults.add(pad.place("size"), "not one cell fits into the pad; take a larger pad");
    }
    return cells;
  }

  private List<PatchLayout.Spot> onPart(List<PatchLayout.Spot> cells, double d) {
    if (context.shape().isEmpty()) {
      context
          .notes()
          .add(
              cups,
              "pad",
              cells.size() + " cells, all taken as on the part, whose shape is not given",
              Scene.Origin.ASSUMED);
      return cells;
    }
    PartShape shape = context.shape().get();
    Vec3 middle =
        context
            .part()
            .flatMap(p -> p.vector("shapeAt"))
            .orElse(new Vec3(0, 0, shape.extent().z() / 2));
    List<PatchLayout.Spot> on =
        cells.stream().filter(c -> isOn(shape, c.at().minus(middle), d / 2)).toList();
    idle = cells.size() - on.size();
    if (on.isEmpty() && !cells.isEmpty()) {
      faults.add(
          pad.place("size"),
          "not one cell of the pad lies on the part; look at part/shapeAt and the part's size");
    }
    return on;
  }

  private static boolean isOn(PartShape shape, Vec3 at, double radius) {
    for (int k = 0; k < OUTLINE_POINTS; k++) {
      double angle = 2 * Math.PI * k / OUTLINE_POINTS;
      Vec3 edge = at.plus(new Vec3(radius * Math.cos(angle), radius * Math.sin(angle), 0));
      if (shape.outside(edge, new Vec3(0, 0, 1)) > ON_PART) {
        return false;
      }
    }
    return true;
  }
}
