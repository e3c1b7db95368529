package io.github.holdpath.viewer.shot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assumptions.abort;

import io.github.holdpath.viewer.Demo;
import io.github.holdpath.viewer.state.Stage;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The second way to draw, where EGL is missing. Skipped where OSMesa is, unless demanded. */
class InMemoryTest {
  @Test
  void drawsTheSamePictureAsEglBeforeAndAfterIt() throws NoGraphicsException, IOException {
    Stage stage = Stage.of(Demo.judged("shaft"));
    try {
      byte[] surfaceless = drawn(Surfaceless::open, stage);
      byte[] inMemory = drawn(InMemory::open, stage);
      assertArrayEquals(surfaceless, inMemory);
      assertArrayEquals(surfaceless, drawn(Surfaceless::open, stage));
    } catch (NoGraphicsException e) {
      if (Boolean.getBoolean("holdpath.demandPictures")) {
        throw e;
      }
      abort("one of both libraries is missing: " + e.getMessage());
    }
  }

  private static byte[] drawn(Studio.Opening opening, Stage stage)
      throws NoGraphicsException, IOException {
    try (Studio studio = Studio.on(opening)) {
      return Picture.png(Picture.of(studio, stage, 640, 400));
    }
  }
}
