package io.github.holdpath.viewer.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class HistoryTest {
  @Test
  void undoAndRedoGoThroughTheSteps() {
    History<String> h = History.of("a").then("b").then("c");
    assertEquals("b", h.undo().now());
    assertEquals("a", h.undo().undo().undo().now());
    assertEquals("c", h.undo().undo().redo().redo().redo().now());
    assertFalse(h.canRedo());
    assertFalse(h.undo().undo().canUndo());
  }

  @Test
  void aNewStepForgetsThoseTakenBack() {
    History<String> h = History.of("a").then("b").undo().then("c");
    assertEquals("c", h.now());
    assertFalse(h.canRedo());
    assertEquals("a", h.undo().now());
  }

  @Test
  void anotherLastStepKeepsTheWayBack() {
    History<String> h = History.of("a").then("b").instead("c");
    assertEquals("c", h.now());
    assertEquals("a", h.undo().now());
  }

  @Test
  void keepsTheNewestStepsOnly() {
    History<Integer> h = History.of(0);
    for (int i = 1; i <= 3 * History.MOST; i++) {
      h = h.then(i);
    }
    assertEquals(History.MOST, h.steps().size());
    assertEquals(3 * History.MOST, h.now());
    assertTrue(h.canUndo());
  }
}
