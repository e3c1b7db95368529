package io.github.holdpath.viewer.shot;

import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.viewer.export.Apng;
import io.github.holdpath.viewer.state.Show;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One cycle as frames at even steps of time. Played, the frames take as long as the cycle, or
 * longer where it is slow motion.
 *
 * @param cycle length of the motion, s
 * @param slow seconds of the motion in a second of playing, above 0, at most 1
 * @param rate frames in a second of playing, 1/s
 */
public record Animation(double cycle, double slow, double rate) {
  /** More frames than this are refused. */
  public static final int MOST_FRAMES = 3000;

  /** Instants that the view is fitted to. */
  private static final int FITTED = 24;

  /** Refuses what is no time, speed or rate. */
  public Animation {
    if (!(cycle >= 0) || !(slow > 0 && slow <= 1) || !(rate > 0)) {
      throw new IllegalArgumentException(
          "cycle, slow and rate must be positive, but are " + cycle + ", " + slow + ", " + rate);
    }
  }

  /** Number of frames, at least 1. */
  public int frames() {
    return (int) Math.max(1, Math.min(Integer.MAX_VALUE, Math.round(cycle / slow * rate)));
  }

  /** Instant of a frame, counted from 0, s. */
  public double time(int frame) {
    return cycle * frame / frames();
  }

  /** How long a frame is seen, ms: rounded so that no rounding adds up. */
  public int delay(int frame) {
    double each = 1000 * cycle / slow / frames();
    long until = Math.round(each * (frame + 1));
    return (int) Math.max(1, Math.min(Apng.LONGEST_DELAY, until - Math.round(each * frame)));
  }

  /** The file: draws all frames. */
  public byte[] apng(Studio studio, List<Take> takes, Show show, int width, int height)
      throws NoFontsException {
    return apng(studio, takes, show, Optional.empty(), width, height);
  }

  /** The same, seen along a direction: unit vector from the camera, world axes. */
  public byte[] apng(
      Studio studio, List<Take> takes, Show show, Optional<Vec3> along, int width, int height)
      throws NoFontsException {
    List<Double> fitted = new ArrayList<>();
    for (int i = 0; i <= FITTED; i++) {
      fitted.add(cycle * i / FITTED);
    }
    Picture picture = new Picture(studio, takes, show, fitted, along, width, height);
    Apng file = new Apng(width, height);
    for (int i = 0; i < frames(); i++) {
      BufferedImage image = picture.at(OptionalDouble.of(time(i)));
      file.add(image, delay(i));
    }
    return file.bytes();
  }
}
