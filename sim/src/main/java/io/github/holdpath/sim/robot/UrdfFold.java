package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Makes one body of each moving link and of all that is fixed to it. */
final class UrdfFold {
  private final String file;
  private final Map<String, UrdfLink> links;
  private final Map<String, List<UrdfJoint>> carried = new HashMap<>();
  private final String tip;
  private final List<UrdfFault> faults;
  private final List<String> notes = new ArrayList<>();

  UrdfFold(
      String file,
      Map<String, UrdfLink> links,
      List<UrdfJoint> joints,
      String tip,
      List<UrdfFault> faults) {
    this.file = file;
    this.links = links;
    this.tip = tip;
    this.faults = faults;
    for (UrdfJoint joint : joints) {
      carried.computeIfAbsent(joint.parent(), name -> new ArrayList<>()).add(joint);
    }
  }

  List<String> notes() {
    return notes;
  }

  /**
   * The body of a link with those fixed to it, in its frame.
   *
   * @param link name
   * @param onwards joints of the chain after this link
   */
  LinkBody rigid(String link, List<UrdfJoint> onwards) {
    Set<String> chain = new HashSet<>();
    onwards.forEach(joint -> chain.add(joint.name()));
    LinkBody sum = LinkBody.NONE;
    boolean given = false;
    Deque<String> names = new ArrayDeque<>(List.of(link));
    Deque<Pose> poses = new ArrayDeque<>(List.of(Pose.IDENTITY));
    while (!names.isEmpty()) {
      UrdfLink at = Objects.requireNonNull(links.get(names.remove()));
      Pose pose = poses.remove();
      given |= at.inertial().isPresent();
      String fault = at.fault();
      if (fault.isEmpty()) {
        sum = sum.plus(at.body().seenFrom(pose));
      } else {
        String what = "link " + UrdfReader.shown(at.name()) + " ";
        faults.add(new UrdfFault(file, at.line(), what + fault));
      }
      for (UrdfJoint joint : carried.getOrDefault(at.name(), List.of())) {
        boolean ours = chain.contains(joint.name());
        if (joint.fixed() && (ours || !at.name().equals(tip))) {
          names.add(joint.child());
          poses.add(pose.times(joint.origin()));
        } else if (!ours) {
          notes.add(
              "What hangs from link "
                  + UrdfReader.shown(at.name())
                  + " by joint "
                  + UrdfReader.shown(joint.name())
                  + " is left out: its mass is not in the torques.");
        }
      }
    }
    if (!given) {
      notes.add(
          "Link "
              + UrdfReader.shown(link)
              + " has no <inertial>: it is taken without mass, and torques are too small.");
    }
    return sum;
  }
}
