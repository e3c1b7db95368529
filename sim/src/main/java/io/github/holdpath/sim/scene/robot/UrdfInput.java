package io.github.holdpath.sim.scene.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.sim.motion.joint.JointStart;
import io.github.holdpath.sim.robot.Chain;
import io.github.holdpath.sim.robot.Joint;
import io.github.holdpath.sim.robot.JointKind;
import io.github.holdpath.sim.robot.JointLimits;
import io.github.holdpath.sim.robot.SerialArm;
import io.github.holdpath.sim.robot.UrdfChain;
import io.github.holdpath.sim.robot.UrdfException;
import io.github.holdpath.sim.robot.UrdfFault;
import io.github.holdpath.sim.robot.UrdfReader;
import io.github.holdpath.sim.robot.UrdfTree;
import io.github.holdpath.sim.scene.Beside;
import io.github.holdpath.sim.scene.field.Values;
import io.github.holdpath.sim.scene.json.Faults;
import io.github.holdpath.sim.scene.quantity.NearestName;
import io.github.holdpath.sim.scene.robot.RobotKinds.Built;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the arm that a scene names, and puts in what the scene says of its joints. */
final class UrdfInput {
  /** Largest URDF file that is read, bytes. */
  private static final int MOST = 20_000_000;

  /** Faults of the file that are shown. */
  private static final int SHOWN = 20;

  private static final String NO_TORQUES =
      "The links of the URDF file have no mass: torques of the joints are not looked at.";

  private static final String TORQUES =
      "Torques of the joints are those of links, tool and part alone: friction, motors and gears"
          + " are not in them, and may be the larger part.";

  private final Values v;
  private final Beside beside;
  private final Faults faults;

  UrdfInput(Values v, Beside beside, Faults faults) {
    this.v = v;
    this.beside = beside;
    this.faults = faults;
  }

  Optional<Built> build(Pose base, OptionalDouble payload) {
    Optional<String> file = v.text("file");
    if (file.isEmpty()) {
      return Optional.empty();
    }
    try {
      Optional<UrdfTree> read = tree(file.get());
      if (read.isEmpty()) {
        return Optional.empty();
      }
      UrdfTree tree = read.get();
      String root = v.text("baseLink").orElseGet(tree::root);
      Optional<String> tip = v.text("tipLink").or(() -> only(tree.tips(root), root));
      if (tip.isEmpty()) {
        faults.add(
            v.place("tipLink"),
            "is missing: the arm ends in several links; give the one whose frame is the flange, one"
                + " of "
                + String.join(", ", tree.tips(root).stream().limit(12).toList()));
        return Optional.empty();
      }
      return Optional.of(arm(tree.chain(root, tip.get()), base, payload));
    } catch (UrdfException e) {
      for (UrdfFault fault : e.faults().stream().limit(SHOWN).toList()) {
        faults.add(v.place("file"), fault.toLine());
      }
      return Optional.empty();
    }
  }

  private Optional<UrdfTree> tree(String file) throws UrdfException {
    Optional<Beside.Stamp> stamp = beside.stamp(file);
    Optional<UrdfTree> kept = stamp.flatMap(key -> beside.kept(UrdfTree.class, key));
    if (kept.isPresent()) {
      return kept;
    }
    Optional<String> text = text(file);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    UrdfTree tree = UrdfReader.read(file, text.get());
    stamp.ifPresent(key -> beside.keep(UrdfTree.class, key, tree));
    return Optional.of(tree);
  }

  /** The tip, where there is no choice; a first link that is not there has none, and is told. */
  private static Optional<String> only(List<String> tips, String root) {
    return switch (tips.size()) {
      case 0 -> Optional.of(root);
      case 1 -> Optional.of(tips.get(0));
      default -> Optional.empty();
    };
  }

  private Optional<String> text(String name) {
    try {
      Path path = beside.folder().resolve(name);
      if (!Files.isRegularFile(path)) {
        faults.add(v.place("file"), "no file \"" + name + "\" in the scene's folder");
        return Optional.empty();
      }
      try (InputStream in = Files.newInputStream(path)) {
        byte[] bytes = in.readNBytes(MOST + 1);
        if (bytes.length > MOST) {
          faults.add(v.place("file"), name + " is larger than 20 MB; give a URDF file of one arm");
          return Optional.empty();
        }
        return Optional.of(
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
      }
    } catch (CharacterCodingException e) {
      faults.add(v.place("file"), name + " is not UTF-8 text; save it with the encoding UTF-8");
    } catch (InvalidPathException e) {
      faults.add(v.place("file"), "cannot be the name of a file; for example \"arm.urdf\"");
    } catch (IOException e) {
      faults.add(v.place("file"), name + " cannot be read; look at who may read it");
    }
    return Optional.empty();
  }

  private Built arm(UrdfChain read, Pose base, OptionalDouble payload) {
    Map<String, Values> said = said(read.chain());
    List<Joint> joints = new ArrayList<>();
    for (Joint j : read.chain().joints()) {
      Values more = said.get(j.name());
      if (more == null) {
        joints.add(j);
      } else {
        JointLimits limits = RobotKinds.limits(more, j.limits(), faults);
        joints.add(
            new Joint(j.name(), j.kind(), j.origin(), j.axis(), limits, j.body(), j.mimic()));
      }
    }
    Chain chain = new Chain(joints, read.chain().flange());
    List<OptionalDouble> near =
        chain.drives().stream()
            .map(
                j ->
                    Optional.ofNullable(said.get(j.name()))
                        .map(s -> s.number("start"))
                        .orElse(OptionalDouble.empty()))
            .toList();
    List<String> notes = new ArrayList<>(read.notes());
    if (joints.stream().allMatch(j -> j.body().mass() == 0)) {
      // One sentence in place of one for each link.
      notes.removeIf(n -> n.contains("has no <inertial>"));
      notes.add(NO_TORQUES);
    } else {
      notes.add(TORQUES);
    }
    return new Built(new SerialArm(chain, base, payload), new JointStart(near), notes);
  }

  private Map<String, Values> said(Chain chain) {
    Map<String, Values> said = new HashMap<>();
    take("turningJoints", true, chain, said);
    take("slidingJoints", false, chain, said);
    return said;
  }

  private void take(String field, boolean turns, Chain chain, Map<String, Values> said) {
    List<String> known =
        chain.drives().stream().filter(j -> j.kind().turns() == turns).map(Joint::name).toList();
    for (Values entry : v.groups(field)) {
      Optional<String> name = entry.text("name");
      if (name.isPresent() && !known.contains(name.get())) {
        faults.add(
            entry.place("name"),
            "the arm has no such joint; "
                + NearestName.hint(name.get(), known)
                + "known here: "
                + String.join(", ", known));
      } else if (name.isPresent() && said.put(name.get(), entry) != null) {
        faults.add(entry.place("name"), "joint " + name.get() + " stands twice; keep one");
      } else if (name.isPresent() && endless(chain, name.get()) && entry.isThere("range")) {
        faults.add(
            entry.place("range"),
            "joint "
                + name.get()
                + " is "
                + "continuous in the file; take the range out, or make it revolute there");
      }
    }
  }

  private static boolean endless(Chain chain, String name) {
    return chain.drives().stream()
        .anyMatch(j -> j.name().equals(name) && j.kind() == JointKind.CONTINUOUS);
  }
}
