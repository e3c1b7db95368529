package io.github.holdpath.viewer.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.viewer.Demo;
import io.github.holdpath.viewer.edit.Job;
import io.github.holdpath.viewer.edit.JobState;
import io.github.holdpath.viewer.edit.Judge;
import io.github.holdpath.viewer.state.Shown;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.ComponentEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Parts of the window without a window; every touch on the thread of the widgets. */
class PanelsTest {
  /** Reached only where something hangs, ms. */
  private static final long HANGS = 60_000;

  private Job job;
  private InputsPanel panel;
  private final ThenAndNow strip = new ThenAndNow();
  private volatile @Nullable JobState told;

  @BeforeEach
  void open() throws Exception {
    job = Job.open(Demo.file("cover"), Judge.byStudy(), SwingUtilities::invokeLater);
    InputsPanel[] made = new InputsPanel[1];
    SwingUtilities.invokeAndWait(
        () -> {
          made[0] = InputsPanel.of(job);
          job.listen(strip::show);
          job.listen(state -> told = state);
        });
    panel = made[0];
    settled();
  }

  @AfterEach
  void close() {
    job.close();
  }

  private void settled() throws Exception {
    long end = System.currentTimeMillis() + HANGS;
    while (!settled(told)) {
      assertTrue(System.currentTimeMillis() < end, "hangs");
      Thread.sleep(5);
    }
    SwingUtilities.invokeAndWait(() -> {});
  }

  /** Whether what the panels were told last is how the job stands for good. */
  private boolean settled(@Nullable JobState last) {
    return last != null
        && last.draft() == job.state().draft()
        && (last.phase() == JobState.Phase.JUDGED || last.phase() == JobState.Phase.FAULTY)
        && (last.first().isPresent() || !last.faults().isEmpty());
  }

  private void touch(Runnable what) throws Exception {
    SwingUtilities.invokeAndWait(what);
    settled();
  }

  private InputLine line(String pointer) {
    return panel.line(pointer + "#0");
  }

  @Test
  void aSliderStepChangesTheDraftAndTheField() throws Exception {
    InputLine speed = line("limits/speed");
    String before = speed.field.getText();
    touch(() -> speed.slider.setValue(speed.slider.getValue() - 1));
    assertFalse(speed.field.getText().equals(before));
    assertEquals(Optional.of(speed.field.getText()), job.state().draft().value("limits/speed"));
    assertTrue(panel.undo().isEnabled());
    touch(() -> panel.undo().actionPerformed(null));
    assertEquals(before, line("limits/speed").field.getText());
  }

  @Test
  void aDragIsOneStepBack() throws Exception {
    InputLine speed = line("limits/speed");
    String before = speed.field.getText();
    touch(
        () -> {
          speed.slider.setValueIsAdjusting(true);
          for (int i = 0; i < 10; i++) {
            speed.slider.setValue(speed.slider.getValue() - 1);
          }
          speed.slider.setValueIsAdjusting(false);
        });
    touch(() -> panel.undo().actionPerformed(null));
    assertEquals(before, speed.field.getText());
    assertFalse(panel.undo().isEnabled());
  }

  @Test
  void aFieldTakesAnyUnitOfItsKind() throws Exception {
    InputLine speed = line("limits/speed");
    touch(
        () -> {
          speed.field.setText("900 mm/s");
          speed.typed();
        });
    assertEquals(Optional.of("900 mm/s"), job.state().draft().value("limits/speed"));
    assertFalse(speed.message.isVisible());
  }

  @Test
  void aFieldWithBadTextSaysWhyAndTheValueStays() throws Exception {
    InputLine speed = line("limits/speed");
    var usual = speed.field.getBorder();
    touch(
        () -> {
          speed.field.setText("fast");
          speed.typed();
        });
    assertEquals(Optional.of("2 m/s"), job.state().draft().value("limits/speed"));
    assertTrue(speed.message.isVisible());
    assertTrue(speed.message.getText().contains("does not begin with a number"));
    assertFalse(usual.equals(speed.field.getBorder()));
  }

  @Test
  void resetGoesBackToTheFile() throws Exception {
    InputLine mass = line("part/mass");
    assertFalse(mass.reset.isEnabled());
    touch(() -> mass.slider.setValue(3));
    assertTrue(mass.reset.isEnabled());
    touch(mass.reset::doClick);
    assertEquals(Optional.of("2.4 kg"), job.state().draft().value("part/mass"));
    assertFalse(job.state().unsaved());
  }

  @Test
  void theLawIsChosenAndJerkAppears() throws Exception {
    touch(() -> line("law").choice.setSelectedItem("s-curve"));
    assertEquals(Optional.of("s-curve"), job.state().draft().value("law"));
    assertTrue(line("limits/jerk").slider.getMaximum() > 0);
  }

  @Test
  void everyPartHasANameForThoseWhoDoNotSee() {
    InputLine speed = line("limits/speed");
    assertEquals("Speed, slider", speed.slider.getAccessibleContext().getAccessibleName());
    assertEquals("Speed", speed.field.getAccessibleContext().getAccessibleName());
    assertNotNull(speed.reset.getAccessibleContext().getAccessibleName());
  }

  @Test
  void theStripTellsThenAndNow() throws Exception {
    touch(() -> line("grip/friction").slider.setValue(0));
    String[] lines = strip.text().split("\n", -1);
    assertTrue(lines[0].startsWith("As it was | "), lines[0]);
    assertTrue(lines[1].startsWith("Now | does not hold | "), lines[1]);
  }

  @Test
  void faultsOfAnotherSceneStayUntilTheyAreClosed() {
    FaultsPanel faults = new FaultsPanel();
    faults.showOf(Path.of("b.json"), List.of(new Fault("b.json", 3, 5, "part/mass", "is missing")));
    faults.show(job.state());
    assertTrue(faults.isVisible(), "the scene that is shown has none");
    assertTrue(faults.head().startsWith("1 fault in b.json"), faults.head());
    faults.closeOther();
    assertFalse(faults.isVisible());
  }

  @Test
  void aNarrowPanelPutsTheSliderBelowItsLabel() throws Exception {
    InputLine speed = line("limits/speed");
    for (int width : new int[] {900, 200, 900}) {
      SwingUtilities.invokeAndWait(
          () -> {
            panel.setSize(width, 500);
            panel.dispatchEvent(new ComponentEvent(panel, ComponentEvent.COMPONENT_RESIZED));
            layOut(panel);
          });
      boolean below = speed.slider.getY() >= speed.label.getY() + speed.label.getHeight();
      assertEquals(width == 200, below, width + " pixels");
    }
  }

  private static void layOut(Container in) {
    in.doLayout();
    for (Component c : in.getComponents()) {
      if (c instanceof Container inner) {
        layOut(inner);
      }
    }
  }

  @Test
  void aVerdictBreaksIntoLinesWhereItIsNarrow() {
    VerdictStrip verdict = new VerdictStrip();
    verdict.show(Shown.of("cover", Demo.judged("cover")), false);
    verdict.setSize(1200, 200);
    int wide = verdict.getPreferredSize().height;
    verdict.setSize(180, 200);
    verdict.invalidate();
    assertTrue(verdict.getPreferredSize().height > 1.4 * wide, "all of it can be read");
    assertTrue(verdict.text().contains("least factor 1.42, required 2, margin 0.71"));
  }

  @Test
  void stripsBesideEachOtherAreOfOneHeight() {
    VerdictStrip swings = new VerdictStrip();
    VerdictStrip rigid = new VerdictStrip();
    swings.show(Shown.of("cover", Demo.judged("cover")), true);
    rigid.show(Shown.of("shaft", Demo.judged("shaft")), true);
    swings.setSize(900, 200);
    rigid.setSize(900, 200);
    int lower = rigid.getPreferredSize().height;
    assertTrue(lower < swings.getPreferredSize().height, "one has a line for its swing");
    rigid.levelWith(Optional.of(swings));
    swings.levelWith(Optional.of(rigid));
    assertEquals(swings.getPreferredSize().height, rigid.getPreferredSize().height);
    assertTrue(rigid.getPreferredSize().height > lower);
  }

  @Test
  void faultsAreListedWithTheirPlaces() {
    FaultsPanel faults = new FaultsPanel();
    assertFalse(faults.isVisible());
    faults.show(
        List.of(
            new Fault("a.json", 3, 5, "part/mass", "is missing"),
            new Fault("a.json", 0, 0, "", "is no scene")),
        true);
    assertTrue(faults.isVisible());
    assertEquals(
        "line 3, column 5, part/mass\nis missing\n\nwhole file\nis no scene", faults.text());
  }
}
