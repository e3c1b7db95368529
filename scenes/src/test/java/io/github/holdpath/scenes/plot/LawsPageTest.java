package io.github.holdpath.scenes.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pictures and tables of the page that compares the laws are what the code computes. Remake them
 * with {@code mvn -pl scenes -am test -Dtest=LawsPageTest -Dsurefire.failIfNoSpecifiedTests=false
 * -DwritePictures=true}.
 */
class LawsPageTest {
  private static final Path PICTURES = Path.of("../docs/pictures");
  private static final Path PAGE = Path.of("../docs/theory/laws.md");
  private static final boolean WRITE = Boolean.getBoolean("writePictures");

  /** Something that the code makes for the page, and its name there. */
  record Made(String name, Supplier<String> code) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Made> pictures() {
    return List.of(
        new Made("laws-times", LawPictures::times),
        new Made("laws-position", LawPictures::position),
        new Made("laws-speed", LawPictures::speed),
        new Made("laws-acceleration", LawPictures::acceleration),
        new Made("laws-jerk", LawPictures::jerk),
        new Made("laws-peaks", LawPictures::peaks),
        new Made("laws-swing", LawPictures::swing),
        new Made("corner-path", CornerPictures::path),
        new Made("corner-curvature", CornerPictures::curvature),
        new Made("corner-speed", CornerPictures::speed));
  }

  static List<Made> tables() {
    return List.of(
        new Made("times", LawTables::times),
        new Made("peaks", LawTables::peaks),
        new Made("factors", LawTables::factors),
        new Made("swing", LawTables::swing),
        new Made("corner", LawTables::corner));
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void thePictureIsWhatTheCodeDraws(Made picture) throws IOException {
    Path file = PICTURES.resolve(picture.name + ".svg");
    String drawn = picture.code.get();
    if (WRITE) {
      Files.writeString(file, drawn);
    }
    assertEquals(drawn, Files.readString(file), "remake the picture with -DwritePictures=true");
    assertTrue(
        Files.readString(PAGE).contains("(../pictures/" + picture.name + ".svg)"), picture.name);
  }

  @ParameterizedTest
  @MethodSource("tables")
  void theTableIsWhatTheCodeComputes(Made table) throws IOException {
    String page = Files.readString(PAGE);
    String head = "<!-- table " + table.name + ", written by LawsPageTest -->\n";
    int begin = page.indexOf(head);
    int end = page.indexOf("<!-- end -->", begin);
    assertTrue(begin >= 0 && end > begin, "no place for the table " + table.name);
    String made = page.substring(0, begin) + head + table.code.get() + page.substring(end);
    if (WRITE) {
      Files.writeString(PAGE, made);
    }
    assertEquals(made, Files.readString(PAGE), "write the table anew with -DwritePictures=true");
  }
}
