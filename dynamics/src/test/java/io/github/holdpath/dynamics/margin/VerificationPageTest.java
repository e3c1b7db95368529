package io.github.holdpath.dynamics.margin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.holdpath.dynamics.OutsideCheck;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The page of the outside checks; {@code -DwriteVerification=true} writes it anew. */
class VerificationPageTest {
  private static final Path PAGE = Path.of("../docs/verification/README.md");

  /** Bounds of a difference: few, so that the last digits of a processor do not show. */
  private static final double[] BOUNDS = {1e-12, 1e-9, 1e-7, 1e-5, 1e-4, 1e-3, 1e-2, 1e-1};

  private static List<OutsideCheck> checks = List.of();

  @BeforeAll
  static void compute() {
    checks = VerificationChecks.all();
  }

  @Test
  void everyCheckIsWithinItsTolerance() {
    assertTrue(checks.size() > 70);
    for (OutsideCheck c : checks) {
      assertTrue(c.difference() <= c.tolerance(), c.toString());
    }
  }

  @Test
  void pageIsWhatTheCodeComputes() throws IOException {
    String page = page();
    if (Boolean.getBoolean("writeVerification")) {
      Files.createDirectories(PAGE.getParent());
      Files.writeString(PAGE, page);
    }
    assertEquals(page, Files.readString(PAGE), "write it anew with -DwriteVerification=true");
  }

  private static String page() {
    StringBuilder text =
        new StringBuilder(
            """
            # Verification

            Our numbers beside those of others, computed anew by each build: it fails where a difference passes its tolerance or this page is not what the code gives. Differences are relative and shown as a bound.

            What this shows: the code computes the mechanics of the [theory](../theory/README.md) as others compute it. What it does not show: that your part, your friction and your grip are as the model assumes. Only a test on the real thing does.

            *Derived* numbers come from formulas shown in the theory and were computed a second time by a program in another language, which shares no code with this one. A set has its count in place of numbers, and the largest of its differences. The objects on a tray were measured by their authors; the accelerations at which they went were not published, so the limits are those of the closed forms mu g and g b/(2 h). An engine steps a block through time until it moves, up to 0.4 % beyond its limit.
            """);
    String group = "";
    for (OutsideCheck c : checks) {
      if (!c.group().equals(group)) {
        group = c.group();
        text.append("\n## ").append(group).append("\n\n");
        text.append("| what | source | ours | theirs | difference | tolerance |\n");
        text.append("| --- | --- | --- | --- | --- | --- |\n");
      }
      text.append("| ").append(c.what()).append(" | ").append(c.source());
      text.append(" | ").append(number(c.ours(), c.digits()));
      text.append(" | ").append(number(c.theirs(), c.digits()));
      text.append(" | ").append(bound(c.difference()));
      text.append(" | ").append(plain(c.tolerance())).append(" |\n");
    }
    return text.toString();
  }

  private static String number(double value, int digits) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static String bound(double difference) {
    for (double b : BOUNDS) {
      if (difference < b) {
        return "below " + plain(b);
      }
    }
    return "above " + plain(BOUNDS[BOUNDS.length - 1]);
  }

  private static String plain(double value) {
    return Double.toString(value).replace(".0E", "e").replace("E", "e");
  }
}
