package io.github.holdpath.viewer.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The file read back by a reader of its own, after the PNG specification, third edition. */
class ApngTest {
  private static final int WIDTH = 31;
  private static final int HEIGHT = 17;

  record Chunk(String type, byte[] data) {
    ByteBuffer buffer() {
      return ByteBuffer.wrap(data);
    }
  }

  /** All chunks, their checks proven. */
  static List<Chunk> chunks(byte[] file) {
    ByteBuffer in = ByteBuffer.wrap(file);
    assertEquals(0x89504E470D0A1A0AL, in.getLong());
    List<Chunk> all = new ArrayList<>();
    while (in.hasRemaining()) {
      byte[] data = new byte[in.getInt()];
      byte[] type = new byte[4];
      in.get(type).get(data);
      CRC32 check = new CRC32();
      check.update(type);
      check.update(data);
      assertEquals((int) check.getValue(), in.getInt());
      all.add(new Chunk(new String(type, StandardCharsets.US_ASCII), data));
    }
    return all;
  }

  /** Frames as a player would show them. */
  static List<BufferedImage> played(byte[] file) throws IOException {
    List<Chunk> all = chunks(file);
    List<BufferedImage> frames = new ArrayList<>();
    ByteBuffer header = all.get(0).buffer();
    BufferedImage shown =
        new BufferedImage(header.getInt(), header.getInt(), BufferedImage.TYPE_INT_RGB);
    int[] place = new int[4];
    for (Chunk chunk : all) {
      ByteBuffer in = chunk.buffer();
      if (chunk.type.equals("fcTL")) {
        in.getInt();
        for (int i = 0; i < 4; i++) {
          place[i] = in.getInt();
        }
      } else if (chunk.type.equals("IDAT") || chunk.type.equals("fdAT")) {
        int skip = chunk.type.equals("fdAT") ? 4 : 0;
        BufferedImage part = still(place[0], place[1], chunk.data, skip);
        BufferedImage next = new BufferedImage(shown.getWidth(), shown.getHeight(), 1);
        shown.copyData(next.getRaster());
        next.getGraphics().drawImage(part, place[2], place[3], null);
        frames.add(next);
        shown = next;
      }
    }
    return frames;
  }

  /** One frame as a PNG file of its own, read by Java. */
  private static BufferedImage still(int width, int height, byte[] data, int skip)
      throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(ByteBuffer.allocate(8).putLong(0x89504E470D0A1A0AL).array());
    ByteBuffer header = ByteBuffer.allocate(13).putInt(width).putInt(height);
    put(out, "IHDR", header.put((byte) 8).put((byte) 2).array(), 0);
    put(out, "IDAT", data, skip);
    put(out, "IEND", new byte[0], 0);
    return ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
  }

  private static void put(ByteArrayOutputStream out, String type, byte[] data, int skip) {
    int length = data.length - skip;
    ByteBuffer chunk = ByteBuffer.allocate(12 + length).putInt(length);
    chunk.put(type.getBytes(StandardCharsets.US_ASCII)).put(data, skip, length);
    CRC32 check = new CRC32();
    check.update(chunk.array(), 4, 4 + length);
    out.writeBytes(chunk.putInt((int) check.getValue()).array());
  }

  private static BufferedImage noise(Random random) {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        image.setRGB(x, y, random.nextInt(0x1000000));
      }
    }
    return image;
  }

  private static List<BufferedImage> frames() {
    Random random = new Random(4711);
    BufferedImage first = noise(random);
    BufferedImage second = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    first.copyData(second.getRaster());
    second.setRGB(5, 3, 0x123456);
    second.setRGB(9, 7, 0x654321);
    return List.of(first, second, second, noise(random));
  }

  private static byte[] file() {
    Apng file = new Apng(WIDTH, HEIGHT);
    for (BufferedImage frame : frames()) {
      file.add(frame, 40);
    }
    return file.bytes();
  }

  @Test
  void chunksComeInOrderWithCountedSequence() {
    List<Chunk> all = chunks(file());
    assertEquals(
        List.of(
            "IHDR", "acTL", "fcTL", "IDAT", "fcTL", "fdAT", "fcTL", "fdAT", "fcTL", "fdAT", "IEND"),
        all.stream().map(Chunk::type).toList());
    assertEquals(4, all.get(1).buffer().getInt());
    assertEquals(0, all.get(1).buffer().getInt(4), "plays without end");
    int next = 0;
    for (Chunk chunk : all) {
      if (chunk.type.equals("fcTL") || chunk.type.equals("fdAT")) {
        assertEquals(next++, chunk.buffer().getInt());
      }
    }
    assertEquals(7, next);
  }

  @Test
  void playsEveryPixelOfEveryFrame() throws IOException {
    List<BufferedImage> made = frames();
    List<BufferedImage> seen = played(file());
    assertEquals(made.size(), seen.size());
    for (int i = 0; i < made.size(); i++) {
      for (int y = 0; y < HEIGHT; y++) {
        for (int x = 0; x < WIDTH; x++) {
          assertEquals(made.get(i).getRGB(x, y), seen.get(i).getRGB(x, y));
        }
      }
    }
  }

  @Test
  void holdsOnlyTheRectangleThatChanged() {
    ByteBuffer second = chunks(file()).get(4).buffer();
    second.getInt();
    int[] part = {second.getInt(), second.getInt(), second.getInt(), second.getInt()};
    assertEquals(List.of(5, 5, 5, 3), java.util.Arrays.stream(part).boxed().toList());
  }

  @Test
  void firstFrameIsAPictureToAnyReader() throws IOException {
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(file()));
    assertEquals(frames().get(0).getRGB(30, 16), read.getRGB(30, 16));
    assertEquals(WIDTH, read.getWidth());
  }

  @Test
  void refusesOtherSizesDelaysAndNoFrames() {
    Apng file = new Apng(WIDTH, HEIGHT + 1);
    assertTrue(
        String.valueOf(
                assertThrows(
                        IllegalArgumentException.class, () -> file.add(noise(new Random(1)), 40))
                    .getMessage())
            .contains("31 x 18"));
    Apng other = new Apng(WIDTH, HEIGHT);
    assertThrows(IllegalArgumentException.class, () -> other.add(noise(new Random(1)), 0));
    assertThrows(IllegalArgumentException.class, () -> other.add(noise(new Random(1)), 65536));
    assertThrows(IllegalStateException.class, other::bytes);
    assertThrows(IllegalArgumentException.class, () -> new Apng(0, 1));
  }
}
