package io.github.holdpath.viewer.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.spatial.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class OrbitTest {
  private static final View.Area AREA = new View.Area(100, 40, 700, 560);
  private static final List<Vec3> BOX =
      List.of(new Vec3(1, 2, 0), new Vec3(3, 2, 0), new Vec3(1, 5, 1), new Vec3(3, 5, 1));

  /** Pixels; algebra. */
  private static final double EXACT = 1e-6;

  /** Pixels; the fit is an iteration. */
  private static final double PIXEL = 0.5;

  private static View.Spot spot(Orbit orbit, Vec3 p) {
    return orbit.view(BOX, 800, 600).project(p);
  }

  @Test
  void itsTargetIsInTheMiddle() {
    Orbit orbit = new Orbit(new Vec3(1, 2, 3), 0.7, 0.4, 5);
    View.Spot s = spot(orbit, orbit.target());
    assertEquals(400, s.x(), EXACT);
    assertEquals(300, s.y(), EXACT);
    assertEquals(5, s.depth(), 1e-12);
  }

  @Test
  void isThatOfTheViewItWasMadeFrom() {
    View view = View.fitted(BOX, AREA, 800, 600);
    Orbit orbit = Orbit.of(view, BOX);
    for (Vec3 p : BOX) {
      assertEquals(view.project(p).x(), spot(orbit, p).x(), EXACT);
      assertEquals(view.project(p).y(), spot(orbit, p).y(), EXACT);
    }
  }

  @Test
  void fromTheFrontXGoesRightAndFromTheSideY() {
    Orbit front = Orbit.fitted(Orbit.Preset.FRONT, BOX, AREA, 800, 600);
    assertTrue(spot(front, new Vec3(3, 2, 0)).x() > spot(front, new Vec3(1, 2, 0)).x() + 20);
    assertTrue(spot(front, new Vec3(1, 5, 0)).depth() > spot(front, new Vec3(1, 2, 0)).depth());
    Orbit side = Orbit.fitted(Orbit.Preset.SIDE, BOX, AREA, 800, 600);
    assertTrue(spot(side, new Vec3(1, 5, 0)).x() > spot(side, new Vec3(1, 2, 0)).x() + 20);
    Orbit top = Orbit.fitted(Orbit.Preset.TOP, BOX, AREA, 800, 600);
    assertTrue(spot(top, new Vec3(3, 2, 0)).x() > spot(top, new Vec3(1, 2, 0)).x() + 20);
    assertTrue(spot(top, new Vec3(1, 5, 0)).y() < spot(top, new Vec3(1, 2, 0)).y() - 20);
  }

  @ParameterizedTest
  @EnumSource(Orbit.Preset.class)
  void everyPresetShowsAll(Orbit.Preset preset) {
    Orbit orbit = Orbit.fitted(preset, BOX, AREA, 800, 600);
    for (Vec3 p : BOX) {
      View.Spot s = spot(orbit, p);
      assertTrue(s.x() > AREA.left() - PIXEL && s.x() < AREA.right() + PIXEL, preset + " " + s);
      assertTrue(s.y() > AREA.top() - PIXEL && s.y() < AREA.bottom() + PIXEL, preset + " " + s);
    }
  }

  @Test
  void lookingAlongAMoveItsEndIsBehindItsStart() {
    Orbit orbit = Orbit.along(new Vec3(0, 3, 0), BOX, AREA, 800, 600);
    assertTrue(spot(orbit, new Vec3(1, 5, 0)).depth() > spot(orbit, new Vec3(1, 2, 0)).depth() + 2);
  }

  @Test
  void aPullShiftsWhatIsAtTheTargetByAsMuch() {
    Orbit orbit = new Orbit(new Vec3(2, 3, 0.5), 0.7, 0.4, 5);
    Vec3 before = orbit.target();
    View.Spot s = spot(orbit.panned(0.1, -0.05), before);
    assertEquals(400 + 60, s.x(), EXACT);
    assertEquals(300 - 30, s.y(), EXACT);
  }

  @Test
  void aPullToTheRightTurnsTheNearSideToTheRight() {
    Orbit orbit = new Orbit(Vec3.ZERO, 0, 0.3, 5).turned(0.02, 0);
    assertTrue(spot(orbit, new Vec3(0.5, 0, 0)).x() > 400);
  }

  @Test
  void twiceAsNearIsTwiceAsLarge() {
    Orbit far = new Orbit(Vec3.ZERO, 0, 0, 8);
    double before = spot(far, new Vec3(0, 1, 0)).x() - 400;
    assertEquals(2 * before, spot(far.zoomed(2), new Vec3(0, 1, 0)).x() - 400, EXACT);
  }

  @Test
  void neverLooksStraightDownNorFromNowhere() {
    Orbit orbit = new Orbit(Vec3.ZERO, 0, 0, 1).turned(0, 50);
    assertEquals(Orbit.STEEPEST, orbit.elevation(), 0);
    assertTrue(orbit.zoomed(1e12).distance() > 0);
    assertThrows(IllegalArgumentException.class, () -> new Orbit(Vec3.ZERO, Double.NaN, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Orbit(Vec3.ZERO, 0, 0, 0));
  }

  @Test
  void nothingIsCutOffBehind() {
    View view = new Orbit(Vec3.ZERO, 0, 0, 1).view(List.of(new Vec3(-40, 0, 0)), 800, 600);
    assertEquals(41, view.depth(), 1e-12);
  }
}
