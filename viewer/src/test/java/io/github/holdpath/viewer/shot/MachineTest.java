package io.github.holdpath.viewer.shot;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MachineTest {
  @ParameterizedTest
  @CsvSource({"Linux,LINUX", "Windows 11,WINDOWS", "Mac OS X,MAC", "FreeBSD,LINUX"})
  void isKnownByItsName(String name, Machine machine) {
    assertEquals(machine, Machine.of(name));
  }

  @Test
  void whatIsMissingIsToldWithWhatToDo() {
    String message =
        new NoGraphicsException("EGL is not installed", new IllegalStateException()).getMessage();
    assertEquals(
        "no graphics library can draw here (EGL is not installed); " + Machine.HERE.advice,
        message);
  }
}
