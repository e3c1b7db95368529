package io.github.holdpath.viewer.desk;

import io.github.holdpath.sim.study.HoldStudy;
import io.github.holdpath.viewer.edit.Job;
import io.github.holdpath.viewer.state.Orbit;
import io.github.holdpath.viewer.state.Show;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRootPane;
import javax.swing.KeyStroke;

/** All that can be done in the window: the one list from which menus, keys and their page come. */
final class Acts {
  private static final double SAMPLE = HoldStudy.STEP;
  private static final double PULL = 0.05;

  private final List<Act> all = new ArrayList<>();
  private final Map<String, Act> byName = new LinkedHashMap<>();

  Acts(Desk desk, Player player, Cameras cameras, Looks looks) {
    file(desk);
    change(desk);
    time(desk, player);
    speed(player);
    camera(cameras);
    show(desk);
    window(desk, cameras, looks);
  }

  private void show(Desk desk) {
    show(desk, "Robot", "R", Show::robot, Show::withRobot);
    show(desk, "Tool", "G", Show::tool, Show::withTool);
    show(desk, "Part", "P", Show::part, Show::withPart);
    show(desk, "Forces on the part", "F", Show::forces, Show::withForces);
    show(desk, "Contacts by their own margin", "U", Show::contacts, Show::withContacts);
    show(desk, "Names and mark", "B", Show::labels, Show::withLabels);
    show(desk, "As it was first, thin beside it", "A", Show::asItWas, Show::withAsItWas);
    show(desk, "Drop: how the part flies on (illustration)", "D", Show::drop, Show::withDrop);
  }

  private void show(
      Desk desk,
      String name,
      String key,
      Predicate<Show> is,
      BiFunction<Show, Boolean, Show> with) {
    add(
        "Show",
        name,
        key,
        () -> {
          desk.shows(with.apply(desk.shows(), !is.test(desk.shows())));
          desk.refreshActs();
        },
        () -> is.test(desk.shows()));
  }

  private void file(Desk desk) {
    add("File", "Open a scene ...", "ctrl O", () -> desk.files().openScene());
    add("File", "Another scene beside it ...", "ctrl B", () -> desk.files().openBeside());
    add("File", "Read the file again", "ctrl R", () -> desk.files().reload());
    add("File", "Save as a new scene ...", "ctrl S", () -> desk.files().saveAs());
    for (Exports.Kind kind : Exports.Kind.values()) {
      String key = List.of("ctrl P", "ctrl M", "ctrl D").get(kind.ordinal());
      add("File", kind.title() + " ...", key, () -> desk.files().export(kind));
    }
    add("File", "Close", "ctrl W, ctrl Q", () -> desk.files().closeAfterAsking());
  }

  private void change(Desk desk) {
    add("Change", "Take back", "ctrl Z", () -> desk.session().job().ifPresent(Job::undo));
    add(
        "Change",
        "Take again",
        "ctrl Y, ctrl shift Z",
        () -> desk.session().job().ifPresent(Job::redo));
  }

  private void time(Desk desk, Player player) {
    add("Time", "Play or pause", "SPACE", player::playOrPause);
    add("Time", "One sample on", "RIGHT", () -> player.step(SAMPLE));
    add("Time", "One sample back", "LEFT", () -> player.step(-SAMPLE));
    add("Time", "Ten samples on", "shift RIGHT", () -> player.step(10 * SAMPLE));
    add("Time", "Ten samples back", "shift LEFT", () -> player.step(-10 * SAMPLE));
    add("Time", "To the next end of a move", "PAGE_DOWN", () -> player.toNext(true));
    add("Time", "To the end of a move before", "PAGE_UP", () -> player.toNext(false));
    add("Time", "To the start", "HOME", () -> player.seek(0));
    add("Time", "To the end", "END", () -> player.seek(player.clock().duration()));
    add("Time", "To the tightest instant", "W", desk::toWorst);
  }

  private void speed(Player player) {
    add(
        "Time",
        "Faster",
        "PLUS, EQUALS, ADD, shift EQUALS",
        () -> {
          player.clock().changeSpeed(true);
          player.tell();
        });
    add(
        "Time",
        "Slower",
        "MINUS, SUBTRACT",
        () -> {
          player.clock().changeSpeed(false);
          player.tell();
        });
    add(
        "Time",
        "Again and again",
        "L",
        () -> player.clock().loop(!player.clock().loop()),
        player.clock()::loop);
  }

  private void camera(Cameras cameras) {
    add("Camera", "From a corner", "1, NUMPAD1", () -> cameras.preset(Orbit.Preset.CORNER));
    add("Camera", "From the front", "2, NUMPAD2", () -> cameras.preset(Orbit.Preset.FRONT));
    add("Camera", "From the side", "3, NUMPAD3", () -> cameras.preset(Orbit.Preset.SIDE));
    add("Camera", "From above", "4, NUMPAD4", () -> cameras.preset(Orbit.Preset.TOP));
    add("Camera", "Along the tightest move", "5, NUMPAD5", cameras::alongWorst);
    add("Camera", "All in sight", "0, NUMPAD0", cameras::fit);
    add("Camera", "Turn left", "ctrl LEFT", () -> cameras.move(o -> o.turned(PULL, 0)));
    add("Camera", "Turn right", "ctrl RIGHT", () -> cameras.move(o -> o.turned(-PULL, 0)));
    add("Camera", "Turn up", "ctrl UP", () -> cameras.move(o -> o.turned(0, PULL)));
    add("Camera", "Turn down", "ctrl DOWN", () -> cameras.move(o -> o.turned(0, -PULL)));
    add("Camera", "Shift left", "ctrl shift LEFT", () -> cameras.move(o -> o.panned(PULL, 0)));
    add("Camera", "Shift right", "ctrl shift RIGHT", () -> cameras.move(o -> o.panned(-PULL, 0)));
    add("Camera", "Shift up", "ctrl shift UP", () -> cameras.move(o -> o.panned(0, PULL)));
    add("Camera", "Shift down", "ctrl shift DOWN", () -> cameras.move(o -> o.panned(0, -PULL)));
    add("Camera", "Nearer", "N", () -> cameras.move(o -> o.zoomed(1.12)));
    add("Camera", "Farther", "M", () -> cameras.move(o -> o.zoomed(1 / 1.12)));
  }

  private void window(Desk desk, Cameras cameras, Looks looks) {
    add("Compare", "Beside the job as it was first", "C", desk::compareWithFirst, desk::comparing);
    add("Compare", "One camera for both", "K", cameras::changeLink, cameras::linked);
    add("Window", "Inputs at the left", "I", desk::changeLeft, desk::leftIsShown);
    add("Window", "Sum at the right", "E", desk::changeRight, desk::rightIsShown);
    add(
        "Window",
        "Dark theme",
        "T",
        () -> {
          looks.changeTheme();
          desk.redress();
        },
        looks::dark);
    text(desk, looks, "Larger text", "ctrl PLUS, ctrl EQUALS, ctrl ADD, ctrl shift EQUALS", 1);
    text(desk, looks, "Smaller text", "ctrl MINUS, ctrl SUBTRACT", -1);
    text(desk, looks, "Usual text size", "ctrl 0, ctrl NUMPAD0", 0);
    add("Help", "Keys", "F1", () -> KeysPage.show(desk.frame(), all));
  }

  private void text(Desk desk, Looks looks, String name, String keys, int steps) {
    add(
        "Window",
        name,
        keys,
        () -> {
          looks.changeSize(steps);
          desk.redress();
        });
  }

  private void add(String menu, String name, String keys, Runnable work) {
    put(new Act(menu, name, keys, work, Optional.empty()));
  }

  private void add(String menu, String name, String keys, Runnable work, BooleanSupplier on) {
    put(new Act(menu, name, keys, work, Optional.of(on)));
  }

  private void put(Act act) {
    all.add(act);
    byName.put(act.name(), act);
  }

  /** Every act, in the order of the menus. */
  List<Act> all() {
    return List.copyOf(all);
  }

  /** An act by its name in the menu. */
  Act named(String name) {
    Act act = byName.get(name);
    if (act == null) {
      throw new IllegalArgumentException("no act " + name);
    }
    return act;
  }

  JMenuBar menuBar() {
    JMenuBar bar = new JMenuBar();
    Map<String, JMenu> menus = new LinkedHashMap<>();
    for (Act act : all) {
      JMenu menu = menus.computeIfAbsent(act.menu(), title -> new JMenu(title));
      JMenuItem item = act.isSwitch() ? new JCheckBoxMenuItem(act) : new JMenuItem(act);
      item.setToolTipText(null);
      menu.add(item);
    }
    for (JMenu menu : menus.values()) {
      menu.setMnemonic(menu.getText().charAt(0));
      bar.add(menu);
    }
    return bar;
  }

  /** Keeps a part of the window from taking keys that stand in the list. */
  void free(JComponent part) {
    for (Act act : all) {
      for (KeyStroke stroke : act.strokes()) {
        part.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(stroke, "none");
      }
    }
  }

  /** Binds the further keys; the first of each is the menu's. */
  void bind(JRootPane root) {
    for (Act act : all) {
      for (KeyStroke stroke : act.strokes().subList(1, act.strokes().size())) {
        root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(stroke, act.name());
      }
      root.getActionMap().put(act.name(), act);
    }
  }
}
