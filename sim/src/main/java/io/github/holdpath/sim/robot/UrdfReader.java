package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Quaternion;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.sim.robot.UrdfJoint.Limit;
import io.github.holdpath.sim.robot.UrdfLink.Inertial;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * Reads the links and joints of a URDF file; shapes, meshes, transmissions and what simulators add
 * are passed over. Document types are refused and nothing outside the text is opened, so a hostile
 * file can neither read others nor blow up.
 *
 * @see "URDF: wiki.ros.org/urdf/XML (from memory)"
 */
public final class UrdfReader {
  /** Room for an arm with all its meshes named; a file beyond is none. */
  private static final int LONGEST = 20_000_000;

  /** Beyond every robot, and safe to multiply and add. */
  private static final double LARGEST = 1e30;

  private static final int LONGEST_NUMBER = 60;
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?");
  private static final Pattern SPACE = Pattern.compile("\\s+");

  private final String file;
  private final XMLStreamReader xml;
  private final List<UrdfFault> faults = new ArrayList<>();
  private final List<UrdfLink> links = new ArrayList<>();
  private final List<UrdfJoint> joints = new ArrayList<>();

  private UrdfReader(String file, XMLStreamReader xml) {
    this.file = file;
    this.xml = xml;
  }

  /**
   * Reads a file's text.
   *
   * @param file as the user named it, for messages; it is not opened
   * @param text all of it
   * @throws UrdfException with every fault
   */
  public static UrdfTree read(String file, String text) throws UrdfException {
    if (text.length() > LONGEST) {
      throw one(file, 0, "is longer than " + LONGEST + " characters, too long for a robot");
    }
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    // Prefixes stay part of the name: simulators' own are passed over, declared or not.
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
    try {
      // Some editors put a byte order mark first, which is none of the XML.
      String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
      return new UrdfReader(file, factory.createXMLStreamReader(new StringReader(plain))).read();
    } catch (XMLStreamException e) {
      int line = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
      throw one(file, Math.max(0, line), "is not well-formed XML: " + reason(e));
    }
  }

  /** The parser's words without its place, which stands in front already. */
  private static String reason(XMLStreamException e) {
    String message = String.valueOf(e.getMessage());
    String mark = "Message: ";
    int at = message.indexOf(mark);
    return (at < 0 ? message : message.substring(at + mark.length())).replace('\n', ' ').strip();
  }

  private static UrdfException one(String file, int line, String message) {
    return new UrdfException(List.of(new UrdfFault(file, line, message)));
  }

  private UrdfTree read() throws XMLStreamException, UrdfException {
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.DTD) {
        throw one(file, line(), "has a <!DOCTYPE>, which is not read; take it out");
      }
      if (event == XMLStreamConstants.START_ELEMENT) {
        if (!"robot".equals(name())) {
          throw one(file, line(), "begins with <" + name() + ">, but URDF begins with <robot>");
        }
        robot();
      }
    }
    return UrdfTree.of(file, links, joints, faults);
  }

  private void robot() throws XMLStreamException, UrdfException {
    while (child()) {
      if ("link".equals(name())) {
        link();
      } else if ("joint".equals(name())) {
        joint();
      } else {
        skip();
      }
    }
  }

  private void link() throws XMLStreamException, UrdfException {
    int line = line();
    String name = text("name");
    Optional<Inertial> inertial = Optional.empty();
    while (child()) {
      if ("inertial".equals(name())) {
        inertial = Optional.of(inertial());
      } else {
        skip();
      }
    }
    links.add(new UrdfLink(name, line, inertial));
  }

  private Inertial inertial() throws XMLStreamException, UrdfException {
    int line = line();
    Pose origin = Pose.IDENTITY;
    Optional<Double> mass = Optional.empty();
    Optional<Inertia> inertia = Optional.empty();
    while (child()) {
      switch (name()) {
        case "origin" -> origin = origin();
        case "mass" -> mass = Optional.of(number("value"));
        case "inertia" ->
            inertia =
                Optional.of(
                    new Inertia(
                        number("ixx"),
                        number("iyy"),
                        number("izz"),
                        number("ixy"),
                        number("ixz"),
                        number("iyz")));
        default -> {
          // Nothing else belongs here; what it holds is passed over below.
        }
      }
      skip();
    }
    if (mass.isEmpty() || inertia.isEmpty()) {
      fault(line, "<inertial> needs <mass value=> and <inertia ixx= iyy= izz= ixy= ixz= iyz=>");
    }
    return new Inertial(mass.orElse(0.0), origin, inertia.orElse(Inertia.POINT));
  }

  private void joint() throws XMLStreamException, UrdfException {
    int line = line();
    String name = text("name");
    String type = text("type");
    if (!type.isEmpty() && !UrdfJoint.TYPES.contains(type)) {
      fault(
          line,
          "joint "
              + shown(name)
              + ": type "
              + shown(type)
              + " is not known; URDF has revolute, continuous, prismatic, fixed, floating, planar");
    }
    String parent = "";
    String child = "";
    Pose origin = Pose.IDENTITY;
    Vec3 axis = new Vec3(1, 0, 0); // what URDF says where no axis is given
    Optional<Limit> limit = Optional.empty();
    Optional<Mimic> mimic = Optional.empty();
    while (child()) {
      switch (name()) {
        case "parent" -> parent = text("link");
        case "child" -> child = text("link");
        case "origin" -> origin = origin();
        case "axis" -> axis = vector("xyz", axis);
        case "limit" -> limit = Optional.of(limit(type));
        case "mimic" -> mimic = mimic();
        default -> {
          // Damping, calibration and the like: nothing that a chain needs.
        }
      }
      skip();
    }
    if (parent.isEmpty() || child.isEmpty()) {
      fault(line, "joint " + shown(name) + " needs <parent link=> and <child link=>");
    }
    joints.add(new UrdfJoint(name, line, type, parent, child, origin, axis, limit, mimic));
  }

  private Limit limit(String type) {
    // URDF: lower and upper are 0 where not given, and mean nothing on an endless joint.
    boolean endless = "continuous".equals(type);
    return new Limit(
        endless ? 0 : number("lower", 0),
        endless ? 0 : number("upper", 0),
        number("velocity"),
        number("effort"));
  }

  private Optional<Mimic> mimic() {
    String leader = text("joint");
    double multiplier = number("multiplier", 1);
    double offset = number("offset", 0);
    if (multiplier == 0) {
      fault(line(), "<mimic> multiplier must not be 0: such a joint is fixed");
      return Optional.empty();
    }
    return Optional.of(new Mimic(leader, multiplier, offset));
  }

  private Pose origin() {
    Vec3 p = vector("xyz", Vec3.ZERO);
    Vec3 rpy = vector("rpy", Vec3.ZERO);
    return new Pose(p, Quaternion.ofRpy(rpy.x(), rpy.y(), rpy.z()));
  }

  private String text(String attribute) {
    String value = xml.getAttributeValue(null, attribute);
    if (value == null || value.isBlank()) {
      fault(line(), "<" + name() + "> needs " + attribute + "=");
      return "";
    }
    return value;
  }

  private double number(String attribute) {
    String value = xml.getAttributeValue(null, attribute);
    if (value == null) {
      fault(line(), "<" + name() + "> needs " + attribute + "=");
      return 0;
    }
    return parsed(attribute, value.strip(), 0);
  }

  private double number(String attribute, double otherwise) {
    String value = xml.getAttributeValue(null, attribute);
    return value == null ? otherwise : parsed(attribute, value.strip(), otherwise);
  }

  private Vec3 vector(String attribute, Vec3 otherwise) {
    @Nullable String value = xml.getAttributeValue(null, attribute);
    if (value == null) {
      return otherwise;
    }
    String[] parts = SPACE.split(value.strip(), 5);
    if (parts.length != 3) {
      fault(
          line(),
          "<" + name() + "> " + attribute + " must be three numbers, but is " + shown(value));
      return otherwise;
    }
    return new Vec3(
        parsed(attribute, parts[0], 0),
        parsed(attribute, parts[1], 0),
        parsed(attribute, parts[2], 0));
  }

  private double parsed(String attribute, String value, double otherwise) {
    if (value.length() <= LONGEST_NUMBER && NUMBER.matcher(value).matches()) {
      double number = Double.parseDouble(value);
      if (Math.abs(number) <= LARGEST) {
        return number;
      }
    }
    String xacro = value.contains("${") ? "; ${...} is xacro, expand it first" : "";
    fault(
        line(),
        "<"
            + name()
            + "> "
            + attribute
            + " must be a number up to 1e30, but is "
            + shown(value)
            + xacro);
    return otherwise;
  }

  /** A user's word in quotes, cut where it is long. */
  static String shown(String text) {
    String line = text.replace('\n', ' ').replace('\r', ' ');
    return '"' + (line.length() > 60 ? line.substring(0, 60) + "..." : line) + '"';
  }

  private void fault(int line, String message) {
    faults.add(new UrdfFault(file, line, message));
  }

  private int line() {
    return Math.max(0, xml.getLocation().getLineNumber());
  }

  private String name() {
    return xml.getLocalName();
  }

  /** Goes to the next child element; false at the end of this one. */
  private boolean child() throws XMLStreamException, UrdfException {
    while (true) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        return false;
      }
      if (event == XMLStreamConstants.START_ELEMENT) {
        refuseXacro();
        return true;
      }
    }
  }

  /** Passes over all that an element holds; without recursion, however deep it goes. */
  private void skip() throws XMLStreamException, UrdfException {
    int depth = 1;
    while (depth > 0) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        refuseXacro();
        depth++;
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      }
    }
  }

  private void refuseXacro() throws UrdfException {
    if (name().startsWith("xacro:")) {
      throw one(
          file,
          line(),
          "<"
              + name()
              + "> is xacro, from which URDF is made; run xacro on the file and give what"
              + " it writes");
    }
  }
}
