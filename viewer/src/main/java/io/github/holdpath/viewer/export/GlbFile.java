package io.github.holdpath.viewer.export;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** The container of a binary glTF file (Khronos, glTF 2.0 Specification, section 4). */
final class GlbFile {
  private static final int MAGIC = 0x46546C67;
  private static final int VERSION = 2;
  private static final int JSON = 0x4E4F534A;
  private static final int BIN = 0x004E4942;
  private static final int HEADER = 12;
  private static final int CHUNK = 8;

  private GlbFile() {}

  /** Both chunks behind the header, each filled up to a multiple of four bytes. */
  static byte[] of(String json, byte[] numbers) {
    byte[] text = json.getBytes(StandardCharsets.UTF_8);
    int textLength = padded(text.length);
    int numbersLength = padded(numbers.length);
    int size = HEADER + CHUNK + textLength + CHUNK + numbersLength;
    ByteBuffer out = ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    out.putInt(MAGIC).putInt(VERSION).putInt(size);
    out.putInt(textLength).putInt(JSON).put(text);
    while (out.position() < HEADER + CHUNK + textLength) {
      out.put((byte) ' ');
    }
    out.putInt(numbersLength).putInt(BIN).put(numbers);
    return out.array();
  }

  private static int padded(int length) {
    return (length + 3) / 4 * 4;
  }
}
