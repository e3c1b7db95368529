package io.github.holdpath.sim.scene.read;

import io.github.holdpath.sim.scene.Fault;
import io.github.holdpath.sim.scene.SceneException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * The text of a scene file, read whole.
 *
 * @param name as the user named it
 * @param text without byte-order mark
 * @param sha256 of its bytes, in hexadecimal digits
 */
record SceneFile(String name, String text, String sha256) {
  /** Largest scene file that is read, bytes. */
  static final long MOST = 20_000_000;

  /**
   * Reads a file after a look at its size.
   *
   * @throws SceneException with one fault, if it cannot be read or is not text
   */
  static SceneFile read(Path path) throws SceneException {
    String name = path.toString();
    byte[] bytes = bytes(path, name);
    for (byte b : bytes) {
      if (b == 0) {
        throw fault(name, "this is a binary file, not text; give a scene file, which is JSON");
      }
    }
    return new SceneFile(name, decode(name, bytes), digest(bytes));
  }

  private static byte[] bytes(Path path, String name) throws SceneException {
    try {
      if (Files.isDirectory(path)) {
        throw fault(name, "this is a folder; give the scene file inside it");
      }
      if (Files.exists(path) && Files.size(path) > MOST) {
        throw tooLarge(name);
      }
      try (InputStream in = Files.newInputStream(path)) {
        byte[] bytes = in.readNBytes((int) MOST + 1);
        if (bytes.length > MOST) {
          throw tooLarge(name);
        }
        return bytes;
      }
    } catch (NoSuchFileException e) {
      throw fault(name, "there is no such file; look at its name and folder");
    } catch (IOException e) {
      throw fault(name, "the file cannot be read; look at who may read it and at the disk");
    }
  }

  private static SceneException tooLarge(String name) {
    return fault(
        name,
        "the file is larger than 20 MB; a scene is a few kB, a recording stands in its own"
            + " CSV file");
  }

  private static String decode(String name, byte[] bytes) throws SceneException {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw fault(name, "the file is not UTF-8 text; save it again with the encoding UTF-8");
    }
  }

  private static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private static SceneException fault(String name, String message) {
    return new SceneException(List.of(new Fault(name, 0, 0, "", message)));
  }
}
