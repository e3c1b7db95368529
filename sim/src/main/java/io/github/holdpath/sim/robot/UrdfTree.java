package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.spatial.Pose;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The links and joints of a URDF file: one tree with one root. */
public final class UrdfTree {
  private static final int NAMED = 12;

  private final String file;
  private final Map<String, UrdfLink> links;
  private final List<UrdfJoint> joints;

  /** The joint that carries a link, by the link's name. */
  private final Map<String, UrdfJoint> carrier;

  private UrdfTree(
      String file,
      Map<String, UrdfLink> links,
      List<UrdfJoint> joints,
      Map<String, UrdfJoint> carrier) {
    this.file = file;
    this.links = links;
    this.joints = joints;
    this.carrier = carrier;
  }

  /** Checks that links and joints are one tree; adds to the faults found before. */
  static UrdfTree of(
      String file, List<UrdfLink> links, List<UrdfJoint> joints, List<UrdfFault> faults)
      throws UrdfException {
    Map<String, UrdfLink> byName = new LinkedHashMap<>();
    for (UrdfLink link : links) {
      if (byName.putIfAbsent(link.name(), link) != null && !link.name().isEmpty()) {
        faults.add(new UrdfFault(file, link.line(), link(link.name()) + " comes twice"));
      }
    }
    Map<String, UrdfJoint> carrier = new LinkedHashMap<>();
    Set<String> names = new HashSet<>();
    for (UrdfJoint joint : joints) {
      String what = "joint " + UrdfReader.shown(joint.name());
      if (!names.add(joint.name()) && !joint.name().isEmpty()) {
        faults.add(new UrdfFault(file, joint.line(), what + " comes twice"));
      }
      for (String end : List.of(joint.parent(), joint.child())) {
        if (!end.isEmpty() && !byName.containsKey(end)) {
          String message = what + " names " + link(end) + ", which the file lacks";
          faults.add(new UrdfFault(file, joint.line(), message + "; " + known(byName.keySet())));
        }
      }
      UrdfJoint first = carrier.putIfAbsent(joint.child(), joint);
      if (first != null && !joint.child().isEmpty()) {
        String message = link(joint.child()) + " is the child of two joints, ";
        message += UrdfReader.shown(first.name()) + " and " + UrdfReader.shown(joint.name());
        faults.add(new UrdfFault(file, joint.line(), message + "; a link hangs from one"));
      }
    }
    if (faults.isEmpty()) {
      // Broken names would make false alarms of these.
      findCycles(file, byName, carrier, faults);
      findRoots(file, byName, carrier, faults);
    }
    if (!faults.isEmpty()) {
      throw new UrdfException(faults);
    }
    return new UrdfTree(file, byName, List.copyOf(joints), carrier);
  }

  private static String link(String name) {
    return "link " + UrdfReader.shown(name);
  }

  private static String known(Collection<String> names) {
    List<String> shown = names.stream().limit(NAMED).map(UrdfReader::shown).toList();
    return "it has " + String.join(", ", shown) + (names.size() > NAMED ? " and more" : "");
  }

  private static void findCycles(
      String file,
      Map<String, UrdfLink> links,
      Map<String, UrdfJoint> carrier,
      List<UrdfFault> faults) {
    Set<String> done = new HashSet<>();
    for (String start : links.keySet()) {
      Set<String> way = new LinkedHashSet<>();
      String at = start;
      while (!done.contains(at) && way.add(at) && carrier.containsKey(at)) {
        at = carrier.get(at).parent();
      }
      if (!done.contains(at) && carrier.containsKey(at)) {
        List<String> ring = new ArrayList<>(way);
        ring = ring.subList(ring.indexOf(at), ring.size());
        List<String> shown = ring.stream().limit(NAMED).map(UrdfReader::shown).toList();
        String message = "links hang from each other in a ring: " + String.join(", ", shown);
        faults.add(
            new UrdfFault(file, carrier.get(at).line(), message + "; a chain needs a first link"));
      }
      done.addAll(way);
    }
  }

  private static void findRoots(
      String file,
      Map<String, UrdfLink> links,
      Map<String, UrdfJoint> carrier,
      List<UrdfFault> faults) {
    List<String> roots = links.keySet().stream().filter(n -> !carrier.containsKey(n)).toList();
    if (links.isEmpty()) {
      faults.add(new UrdfFault(file, 0, "has no <link>"));
    } else if (roots.size() > 1) {
      String message = "has " + roots.size() + " links that hang from no joint: ";
      List<String> shown = roots.stream().limit(NAMED).map(UrdfReader::shown).toList();
      message += String.join(", ", shown) + "; join them, only one can be the root";
      faults.add(new UrdfFault(file, 0, message));
    }
  }

  /** Name of the one link that hangs from no joint. */
  public String root() {
    return links.keySet().stream().filter(n -> !carrier.containsKey(n)).findFirst().orElseThrow();
  }

  /**
   * Names of the links from which no other hangs, in the order of the file.
   *
   * @param from name of a link; only those that hang from it count
   */
  public List<String> tips(String from) {
    Set<String> parents = new HashSet<>();
    joints.forEach(j -> parents.add(j.parent()));
    return links.keySet().stream().filter(n -> !parents.contains(n) && hangs(n, from)).toList();
  }

  private boolean hangs(String link, String from) {
    String at = link;
    while (!at.equals(from)) {
      UrdfJoint joint = carrier.get(at);
      if (joint == null) {
        return false;
      }
      at = joint.parent();
    }
    return true;
  }

  /**
   * The chain from one link to another. Links that are fixed to the chain before the tip are part
   * of its links; what hangs from the tip itself is payload and left out.
   *
   * @param root name of the link that stands still; its frame is the base
   * @param tip name of the link whose frame is the flange
   * @throws UrdfException with every fault that keeps these joints and links from being a chain
   */
  public UrdfChain chain(String root, String tip) throws UrdfException {
    List<UrdfJoint> way = way(root, tip);
    List<UrdfFault> faults = new ArrayList<>();
    Set<String> driven = new HashSet<>();
    for (UrdfJoint joint : way) {
      if (!joint.fixed() && joint.mimic().isEmpty()) {
        driven.add(joint.name());
      }
    }
    for (UrdfJoint joint : way) {
      String fault = joint.fault();
      Optional<Mimic> mimic = joint.fixed() ? Optional.empty() : joint.mimic();
      if (fault.isEmpty() && mimic.isPresent() && !driven.contains(mimic.get().leader())) {
        fault = "mimics " + UrdfReader.shown(mimic.get().leader());
        fault += ", which is no joint with a drive of its own between root and tip";
      }
      if (!fault.isEmpty()) {
        String what = "joint " + UrdfReader.shown(joint.name()) + " ";
        faults.add(new UrdfFault(file, joint.line(), what + fault));
      }
    }
    if (driven.isEmpty() && faults.isEmpty()) {
      String message = "no joint moves between " + link(root) + " and " + link(tip);
      faults.add(new UrdfFault(file, 0, message));
    }
    UrdfFold fold = new UrdfFold(file, links, joints, tip, faults);
    List<Joint> chain = new ArrayList<>();
    Pose since = Pose.IDENTITY;
    for (int i = 0; i < way.size(); i++) {
      UrdfJoint joint = way.get(i);
      since = since.times(joint.origin());
      if (!joint.fixed()) {
        LinkBody body = fold.rigid(joint.child(), way.subList(i + 1, way.size()));
        if (faults.isEmpty()) {
          chain.add(
              new Joint(
                  joint.name(),
                  joint.kind(),
                  since,
                  joint.axis(),
                  joint.limits(),
                  body,
                  joint.mimic()));
        }
        since = Pose.IDENTITY;
      }
    }
    if (!faults.isEmpty()) {
      throw new UrdfException(faults);
    }
    return new UrdfChain(new Chain(chain, since), fold.notes());
  }

  private List<UrdfJoint> way(String root, String tip) throws UrdfException {
    for (String name : List.of(root, tip)) {
      if (!links.containsKey(name)) {
        String message = "has no " + link(name) + "; " + known(links.keySet());
        throw new UrdfException(List.of(new UrdfFault(file, 0, message)));
      }
    }
    List<UrdfJoint> way = new ArrayList<>();
    String at = tip;
    while (!at.equals(root)) {
      UrdfJoint joint = carrier.get(at);
      if (joint == null) {
        String message = link(tip) + " does not hang from " + link(root) + " but from " + link(at);
        throw new UrdfException(List.of(new UrdfFault(file, 0, message)));
      }
      way.add(joint);
      at = joint.parent();
    }
    Collections.reverse(way);
    return way;
  }
}
