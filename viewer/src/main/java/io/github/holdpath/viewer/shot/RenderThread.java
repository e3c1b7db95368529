package io.github.holdpath.viewer.shot;

import io.github.holdpath.sim.study.Playback;
import io.github.holdpath.viewer.overlay.Overlay;
import io.github.holdpath.viewer.state.Show;
import io.github.holdpath.viewer.state.Stage;
import io.github.holdpath.viewer.state.View;
import java.awt.image.BufferedImage;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * A thread that owns the rendering core and draws what was asked for last. Each asker has one place
 * in the queue: a newer wish takes the place of one that was not begun.
 */
public final class RenderThread implements AutoCloseable {
  /** Images kept for use again: those of two askers in two sizes. */
  private static final int SPARE = 4;

  private final Map<Object, Wish> wishes = new LinkedHashMap<>();
  private final Deque<BufferedImage> spare = new ArrayDeque<>();
  private final CompletableFuture<Boolean> opened = new CompletableFuture<>();
  private final Thread thread = new Thread(this::run, "holdpath drawing");
  private boolean ends;

  private RenderThread() {}

  /**
   * What to draw.
   *
   * @param stage the scene
   * @param time s
   * @param show what is shown besides the path
   * @param view from where, and the size of the image
   * @param samples of a pixel, {@link Studio#QUICK} or {@link Studio#SMOOTH}
   * @param em size of the words, pixels
   * @param ready takes the image and how long it took, ns, on this thread
   */
  public record Wish(
      Stage stage,
      double time,
      Show show,
      View view,
      int samples,
      double em,
      BiConsumer<BufferedImage, Long> ready) {}

  /**
   * Starts the thread and waits until it can draw.
   *
   * @throws NoGraphicsException if nothing on this machine can draw
   */
  public static RenderThread start() throws NoGraphicsException {
    RenderThread made = new RenderThread();
    made.thread.setDaemon(true);
    made.thread.start();
    try {
      made.opened.get();
      return made;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof NoGraphicsException none) {
        throw none;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      made.end();
      throw new IllegalStateException("interrupted while the drawing core was opened", e);
    }
  }

  /**
   * Asks for an image; returns at once.
   *
   * @param asker whose earlier wish this one replaces
   * @param wish what to draw
   */
  public synchronized void ask(Object asker, Wish wish) {
    wishes.put(asker, wish);
    notifyAll();
  }

  /** Gives an image back that is no longer looked at. */
  public synchronized void giveBack(BufferedImage image) {
    if (spare.size() < SPARE) {
      spare.addLast(image);
    }
  }

  private void run() {
    try (Studio studio = Studio.open()) {
      opened.complete(true);
      for (Wish wish = next(); wish != null; wish = next()) {
        serve(studio, wish);
      }
    } catch (NoGraphicsException | RuntimeException e) {
      opened.completeExceptionally(e);
      if (e instanceof RuntimeException bug) {
        throw bug;
      }
    }
  }

  private void serve(Studio studio, Wish wish) {
    long begin = System.nanoTime();
    BufferedImage image = image(wish.view().width(), wish.view().height());
    Stage stage = wish.stage();
    Playback.Instant now = stage.playback().at(wish.time());
    studio.draw(stage.at(now, wish.show(), wish.view()), wish.view(), wish.samples(), image);
    Overlay.drawMarks(image, stage, now, wish.show(), wish.view(), wish.em());
    wish.ready().accept(image, System.nanoTime() - begin);
  }

  private synchronized @Nullable Wish next() {
    while (wishes.isEmpty() && !ends) {
      try {
        wait();
      } catch (InterruptedException e) {
        ends = true;
      }
    }
    if (ends) {
      return null;
    }
    Object asker = wishes.keySet().iterator().next();
    return wishes.remove(asker);
  }

  private synchronized BufferedImage image(int width, int height) {
    while (!spare.isEmpty()) {
      BufferedImage known = spare.removeFirst();
      if (known.getWidth() == width && known.getHeight() == height) {
        return known;
      }
    }
    return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
  }

  private synchronized void end() {
    ends = true;
    notifyAll();
  }

  /** Ends the thread, after the image that it is at, and waits for that. */
  @Override
  public void close() {
    end();
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
