package io.github.holdpath.viewer.shot;

/** Java finds no font to write words with: one sentence that says what to install. */
public final class NoFontsException extends Exception {
  private static final long serialVersionUID = 1L;

  NoFontsException(Throwable cause) {
    super(
        "no font can be used here, so the picture would have no words; install some, on Debian"
            + " and Ubuntu: apt-get install fontconfig libfreetype6 fonts-dejavu-core",
        cause);
  }

  /**
   * Tries to use a font. Without fonts Java fails in ways of its own, which differ by version and
   * by what is missing, so anything that this throws is taken for that.
   *
   * @param letter what needs one letter and nothing else
   */
  static void unless(Runnable letter) throws NoFontsException {
    try {
      letter.run();
    } catch (RuntimeException | LinkageError | InternalError e) {
      throw new NoFontsException(e);
    }
  }
}
