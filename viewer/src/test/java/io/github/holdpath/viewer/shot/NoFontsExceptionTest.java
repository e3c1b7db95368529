package io.github.holdpath.viewer.shot;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class NoFontsExceptionTest {
  @Test
  void namesWhatToInstallHoweverJavaFails() {
    List<Throwable> ways =
        List.of(
            new InternalError("Fontconfig head is null, check your fonts or fonts configuration"),
            new UnsatisfiedLinkError("libfreetype.so.6: cannot open shared object file"),
            new NoClassDefFoundError("Could not initialize class of the font manager"),
            new NullPointerException());
    for (Throwable way : ways) {
      NoFontsException e =
          assertThrows(
              NoFontsException.class,
              () ->
                  NoFontsException.unless(
                      () -> {
                        if (way instanceof Error error) {
                          throw error;
                        }
                        throw (RuntimeException) way;
                      }));
      assertTrue(String.valueOf(e.getMessage()).contains("apt-get install fontconfig"));
    }
  }

  @Test
  void isQuietWhereALetterCanBeWritten() {
    assertDoesNotThrow(() -> NoFontsException.unless(() -> {}));
  }
}
