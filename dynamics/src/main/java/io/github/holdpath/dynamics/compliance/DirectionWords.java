package io.github.holdpath.dynamics.compliance;

/** Puts six shares, of moving along and of turning about the axes, into words. */
final class DirectionWords {
  /** A share below this part of the whole is not worth a word. */
  private static final double WORTH_A_WORD = 0.2;

  private static final String[] WORDS = {
    "along x", "along y", "along z", "about x", "about y", "about z"
  };

  private DirectionWords() {}

  /** The two largest shares; one alone where the second is small. */
  static String of(double[] shares) {
    double sum = 0;
    int first = 0;
    for (int k = 0; k < 6; k++) {
      sum += shares[k];
      first = shares[k] > shares[first] ? k : first;
    }
    int second = first == 0 ? 1 : 0;
    for (int k = 0; k < 6; k++) {
      second = k != first && shares[k] > shares[second] ? k : second;
    }
    return shares[second] < WORTH_A_WORD * sum
        ? WORDS[first]
        : WORDS[first] + " and " + WORDS[second];
  }
}
