package io.github.holdpath.sim.scene.quantity;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds what a user may have meant. */
public final class NearestName {
  private static final int LONGEST = 60;

  private NearestName() {}

  /**
   * The known name with the fewest wrong, missing, needless or swapped letters, if it is near.
   *
   * @param name as written
   * @param known names
   */
  static Optional<String> of(String name, Collection<String> known) {
    if (name.length() > LONGEST) {
      return Optional.empty();
    }
    String best = "";
    int least = 1 + Math.max(1, Math.min(4, name.length() / 3));
    for (String candidate : known) {
      int d = distance(name.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
      if (d < least) {
        least = d;
        best = candidate;
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(best);
  }

  /** A clause {@code did you mean "x"? } or nothing. */
  public static String hint(String name, Collection<String> known) {
    return of(name, known).map(n -> "did you mean \"" + n + "\"? ").orElse("");
  }

  /** Letters to change, add, drop or swap with their neighbour. */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
