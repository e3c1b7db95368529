package io.github.holdpath.viewer.export;

import java.awt.Rectangle;
import java.io.ByteArrayOutputStream;
import java.util.zip.Deflater;

/** Rows of a PNG image, filtered and compressed. */
final class PngRows {
  private static final int BYTES = 3;
  private static final int NONE = 0;
  private static final int SUB = 1;
  private static final int UP = 2;

  private PngRows() {}

  /**
   * A part of an image as one stream. Each row has the filter with the least sum of differences,
   * the heuristic that the PNG specification suggests.
   *
   * @param pixels {@code 0xRRGGBB} of the whole image, row by row
   * @param width of the whole image
   * @param part to take
   */
  static byte[] packed(int[] pixels, int width, Rectangle part) {
    int length = BYTES * part.width;
    byte[] before = new byte[length];
    byte[] rows = new byte[(length + 1) * part.height];
    byte[] tried = new byte[length];
    for (int y = 0; y < part.height; y++) {
      byte[] row = row(pixels, (part.y + y) * width + part.x, part.width);
      long least = Long.MAX_VALUE;
      int at = y * (length + 1);
      for (int filter = NONE; filter <= UP; filter++) {
        long sum = filter(filter, row, before, tried);
        if (sum < least) {
          least = sum;
          rows[at] = (byte) filter;
          System.arraycopy(tried, 0, rows, at + 1, length);
        }
      }
      before = row;
    }
    return deflated(rows);
  }

  private static byte[] row(int[] pixels, int from, int count) {
    byte[] row = new byte[BYTES * count];
    for (int x = 0; x < count; x++) {
      int rgb = pixels[from + x];
      row[BYTES * x] = (byte) (rgb >> 16);
      row[BYTES * x + 1] = (byte) (rgb >> 8);
      row[BYTES * x + 2] = (byte) rgb;
    }
    return row;
  }

  /** Sum of the differences as signed bytes. */
  private static long filter(int filter, byte[] row, byte[] before, byte[] into) {
    long sum = 0;
    for (int i = 0; i < row.length; i++) {
      int guess =
          switch (filter) {
            case SUB -> i < BYTES ? 0 : row[i - BYTES];
            case UP -> before[i];
            default -> 0;
          };
      into[i] = (byte) (row[i] - guess);
      sum += Math.abs(into[i]);
    }
    return sum;
  }

  private static byte[] deflated(byte[] rows) {
    Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION);
    try {
      deflater.setInput(rows);
      deflater.finish();
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      byte[] piece = new byte[8192];
      while (!deflater.finished()) {
        out.write(piece, 0, deflater.deflate(piece));
      }
      return out.toByteArray();
    } finally {
      deflater.end();
    }
  }
}
