package io.github.holdpath.viewer.shot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assumptions.abort;

import io.github.holdpath.viewer.Demo;
import io.github.holdpath.viewer.state.Stage;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/**
 * The other ways to draw, where EGL is missing. Skipped where OSMesa is, or a display for a window,
 * unless demanded.
 */
class OffscreenTest {
  @Test
  void inMemoryDrawsTheSamePictureAsEglBeforeAndAfterIt() throws Exception {
    compare(InMemory::open);
  }

  @Test
  void aHiddenWindowDrawsTheSamePictureAsEglBeforeAndAfterIt() throws Exception {
    compare(HiddenWindow::open);
  }

  private static void compare(Studio.Opening other) throws NoGraphicsException, IOException {
    Stage stage = Stage.of(Demo.judged("shaft"));
    try {
      byte[] surfaceless = drawn(Surfaceless::open, stage);
      byte[] otherwise = drawn(other, stage);
      assertArrayEquals(surfaceless, otherwise);
      assertArrayEquals(surfaceless, drawn(Surfaceless::open, stage));
    } catch (NoGraphicsException e) {
      if (Boolean.getBoolean("holdpath.demandPictures")) {
        throw e;
      }
      abort("one of both ways is missing: " + e.getMessage());
    }
  }

  private static byte[] drawn(Studio.Opening opening, Stage stage)
      throws NoGraphicsException, IOException {
    try (Studio studio = Studio.on(opening)) {
      return Picture.png(Picture.of(studio, stage, 640, 400));
    }
  }
}
