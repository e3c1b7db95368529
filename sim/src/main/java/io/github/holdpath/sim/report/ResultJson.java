package io.github.holdpath.sim.report;

import io.github.holdpath.dynamics.compliance.SwingMode;
import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.sim.motion.MotionSegment;
import io.github.holdpath.sim.motion.joint.JointSlowing;
import io.github.holdpath.sim.motion.route.RouteStep;
import io.github.holdpath.sim.scene.LoadedScene;
import io.github.holdpath.sim.study.DropBound;
import io.github.holdpath.sim.study.GiveResult;
import io.github.holdpath.sim.study.GuideUse;
import io.github.holdpath.sim.study.Help;
import io.github.holdpath.sim.study.JointUse;
import io.github.holdpath.sim.study.Payload;
import io.github.holdpath.sim.study.Peaks;
import io.github.holdpath.sim.study.SegmentResult;
import io.github.holdpath.sim.study.StudyResult;
import io.github.holdpath.sim.study.Worst;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** The result file {@code holdpath-result/1} (docs/formats/result.md): SI, keys in fixed order. */
public final class ResultJson {
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();

  private static final String JSON_NUMBER = "-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?";

  private final JsonGenerator json;
  private final StudyResult result;

  private ResultJson(JsonGenerator json, StudyResult result) {
    this.json = json;
    this.result = result;
  }

  /**
   * The whole file, ended by a line feed.
   *
   * @param version of the program
   */
  public static String text(StudyResult result, LoadedScene from, String version) {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    ObjectWriteContext.Base context =
        new ObjectWriteContext.Base() {
          @Override
          public DefaultPrettyPrinter getPrettyPrinter() {
            return new DefaultPrettyPrinter().withObjectIndenter(lines);
          }
        };
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(context, text)) {
      new ResultJson(json, result).write(from, version);
    }
    return text + "\n";
  }

  private void write(LoadedScene from, String version) {
    json.writeStartObject();
    json.writeStringProperty("format", "holdpath-result/1");
    json.writeStringProperty("version", version);
    json.writeName("scene");
    json.writeStartObject();
    json.writeStringProperty("title", result.scene().title());
    json.writeStringProperty("file", String.valueOf(Path.of(from.fileName()).getFileName()));
    json.writeStringProperty("sha256", from.sha256());
    json.writeName("set");
    json.writeStartObject();
    for (Map.Entry<String, String> e : from.set().entrySet()) {
      set(e.getKey(), e.getValue().strip());
    }
    json.writeEndObject();
    json.writeEndObject();
    json.writeStringProperty("verdict", result.verdict().label());
    json.writeNumberProperty("requiredSafety", result.requiredSafety());
    factor(result.worst().first(), result.drop(), result.speedHeadroom());
    json.writeNumberProperty("speedHeadroomLimit", result.speedHeadroomLimit());
    json.writeName("worst");
    worst(result.worst());
    json.writeNumberProperty("cycleTime", result.cycleTime());
    json.writeNumberProperty("heldTime", result.heldTime());
    limited("partsPerHour", result.partsPerHour(), !(result.cycleTime() > 0));
    json.writeName("segments");
    json.writeStartArray();
    for (SegmentResult segment : result.segments()) {
      segment(segment);
    }
    json.writeEndArray();
    result.joints().ifPresent(this::robot);
    result.give().ifPresent(this::give);
    helps();
    peaks(result.peaks());
    result.payload().ifPresent(this::payload);
    if (result.guide().isPresent()) {
      GuideUse guide = result.guide().get();
      json.writeName("guide");
      json.writeStartObject();
      json.writeStringProperty("jaw", guide.jaw());
      json.writeNumberProperty("use", guide.use());
      json.writeNumberProperty("time", guide.time());
      json.writeEndObject();
    }
    if (result.preload().isPresent()) {
      var preload = result.preload().get();
      json.writeName("preload");
      json.writeStartObject();
      json.writeStringProperty("patch", preload.patch());
      json.writeNumberProperty("force", preload.preload());
      json.writeNumberProperty("permitted", preload.permitted());
      json.writeEndObject();
    }
    strings("assumptions", result.assumptions());
    strings("warnings", result.warnings());
    json.writeEndObject();
  }

  /** A value as it was taken: a number or a truth value of JSON, and else text. */
  private void set(String pointer, String value) {
    json.writeName(pointer);
    if (value.matches(JSON_NUMBER)) {
      json.writeNumber(value);
    } else if (value.equals("true") || value.equals("false")) {
      json.writeBoolean(value.equals("true"));
    } else {
      json.writeString(value);
    }
  }

  private void factor(FirstSlip first, DropBound drop, double headroom) {
    limited("factor", first.factor(), first.unlimited());
    limited("wholeGripFactor", drop.factor(), drop.factor() >= HoldModel.NO_LIMIT);
    limited("margin", first.factor() / result.requiredSafety(), first.unlimited());
    json.writeNumberProperty("speedHeadroom", headroom);
  }

  private void worst(Worst worst) {
    json.writeStartObject();
    json.writeNumberProperty("time", worst.time());
    json.writeNumberProperty("segment", worst.segment());
    json.writeStringProperty("patch", worst.first().patchName());
    json.writeStringProperty("mode", worst.first().mode().label());
    json.writeName("wrench");
    json.writeStartArray();
    for (double w : worst.load().total().toArray()) {
      json.writeNumber(w + 0.0);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void segment(SegmentResult s) {
    MotionSegment move = s.move();
    json.writeStartObject();
    json.writeNumberProperty("index", move.index());
    json.writeStringProperty("pointer", move.pointer());
    json.writeStringProperty("name", move.name());
    json.writeBooleanProperty("held", s.held());
    json.writeNumberProperty("from", move.from());
    json.writeNumberProperty("to", move.to());
    json.writeNumberProperty("length", move.length());
    json.writeNumberProperty("turn", move.turn());
    json.writeNumberProperty("peakSpeed", move.peakSpeed());
    json.writeNumberProperty("peakAcceleration", move.peakAcceleration());
    limited("peakJerk", move.peakJerk(), Double.isInfinite(move.peakJerk()));
    json.writeNumberProperty("peakTurnSpeed", move.peakTurnSpeed());
    json.writeNumberProperty("peakTurnAcceleration", move.peakTurnAcceleration());
    limited("peakTurnJerk", move.peakTurnJerk(), Double.isInfinite(move.peakTurnJerk()));
    if (s.worst().isPresent()) {
      Worst worst = s.worst().get();
      factor(worst.first(), s.drop().orElseThrow(), s.speedHeadroom());
      json.writeStringProperty("mode", worst.first().mode().label());
      json.writeStringProperty("patch", worst.first().patchName());
      json.writeNumberProperty("worstTime", worst.time());
    }
    List<RouteStep.Move> moves = Settings.moves(result.scene().motion());
    if (!moves.isEmpty()) {
      RouteStep.Move step = moves.get(move.index() - 1);
      json.writeStringProperty(
          "settings",
          Settings.line(
              result.scene(),
              step,
              move.length(),
              move.turn(),
              Settings.played(result, move.index())));
    }
    result
        .joints()
        .flatMap(j -> j.moves().get(move.index() - 1))
        .ifPresent(
            n -> {
              json.writeName("joint");
              json.writeStartObject();
              json.writeStringProperty("name", n.joint());
              json.writeStringProperty("limit", n.limit().label());
              json.writeNumberProperty("use", n.use());
              json.writeNumberProperty("time", n.time());
              json.writeEndObject();
            });
    json.writeEndObject();
  }

  private void robot(JointUse use) {
    json.writeName("robot");
    json.writeStartObject();
    json.writeStringProperty("kind", use.kind());
    json.writeName("joints");
    json.writeStartArray();
    for (JointUse.Peaks joint : use.joints()) {
      json.writeStartObject();
      json.writeStringProperty("name", joint.name());
      json.writeStringProperty("moves", joint.turns() ? "turns" : "slides");
      json.writeNumberProperty("lowest", joint.lowest());
      json.writeNumberProperty("highest", joint.highest());
      json.writeNumberProperty("peakSpeed", joint.speed());
      json.writeNumberProperty("peakAcceleration", joint.acceleration());
      known("peakTorque", joint.torque());
      known("rangeUse", joint.uses().range());
      known("speedUse", joint.uses().speed());
      known("accelerationUse", joint.uses().acceleration());
      known("torqueUse", joint.uses().torque());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeName("slowed");
    json.writeStartArray();
    for (JointSlowing s : result.scene().robot().orElseThrow().track().slowings()) {
      json.writeStartObject();
      json.writeNumberProperty("from", s.fromSegment());
      json.writeNumberProperty("to", s.toSegment());
      json.writeNumberProperty("factor", s.factor());
      json.writeStringProperty("joint", s.joint());
      json.writeStringProperty("limit", s.bySpeed() ? "speed" : "acceleration");
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void known(String key, OptionalDouble value) {
    value.ifPresent(v -> json.writeNumberProperty(key, v));
  }

  private void give(GiveResult give) {
    json.writeName("give");
    json.writeStartObject();
    json.writeNumberProperty("damping", give.damping());
    limited("factor", give.factor(), give.worst().first().unlimited());
    limited("margin", give.factor() / result.requiredSafety(), give.worst().first().unlimited());
    json.writeName("worst");
    worst(give.worst());
    json.writeName("segmentFactors");
    json.writeStartArray();
    for (Optional<Worst> worst : give.segments()) {
      if (worst.isEmpty() || worst.get().first().unlimited()) {
        json.writeNull();
      } else {
        json.writeNumber(worst.get().first().factor());
      }
    }
    json.writeEndArray();
    json.writeName("modes");
    json.writeStartArray();
    for (SwingMode mode : give.modes()) {
      json.writeStartObject();
      json.writeNumberProperty("frequency", mode.frequency());
      json.writeStringProperty("direction", mode.direction());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeName("dynamicFactors");
    json.writeStartArray();
    for (OptionalDouble f : give.dynamicFactors()) {
      if (f.isPresent()) {
        json.writeNumber(f.getAsDouble());
      } else {
        json.writeNull();
      }
    }
    json.writeEndArray();
    json.writeNumberProperty("largestSwing", give.largestSwing());
    json.writeName("stops");
    json.writeStartArray();
    for (GiveResult.Stop stop : give.stops()) {
      json.writeStartObject();
      json.writeNumberProperty("time", stop.time());
      json.writeNumberProperty("segment", stop.segment());
      json.writeNumberProperty("rest", stop.rest());
      json.writeNumberProperty("swing", stop.swing());
      if (stop.settling().isPresent()) {
        double settling = stop.settling().getAsDouble();
        limited("settling", settling, Double.isInfinite(settling));
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeNumberProperty("swingAtRelease", give.swingAtRelease());
    json.writeEndObject();
  }

  private void helps() {
    json.writeName("helps");
    json.writeStartArray();
    for (Help help : result.helps()) {
      json.writeStartObject();
      json.writeStringProperty("input", help.input());
      json.writeNumberProperty("change", help.more() ? Help.CHANGE : -Help.CHANGE);
      json.writeNumberProperty("gain", help.gain());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void peaks(Peaks peaks) {
    json.writeName("peaks");
    json.writeStartObject();
    json.writeNumberProperty("gripForce", peaks.gripForce());
    json.writeNumberProperty("gripMoment", peaks.gripMoment());
    if (peaks.flangeForce().isPresent()) {
      json.writeNumberProperty("flangeForce", peaks.flangeForce().getAsDouble());
      json.writeNumberProperty("flangeMoment", peaks.flangeMoment().orElseThrow());
    }
    json.writeEndObject();
  }

  private void payload(Payload payload) {
    json.writeName("payload");
    json.writeStartObject();
    body("withPart", payload.withPart());
    body("toolAlone", payload.toolAlone());
    json.writeNumberProperty("standingForce", payload.standingForce());
    json.writeNumberProperty("standingMoment", payload.standingMoment());
    payload.rated().ifPresent(rated -> json.writeNumberProperty("rated", rated));
    payload.use().ifPresent(use -> json.writeNumberProperty("ratedUse", use));
    json.writeEndObject();
  }

  private void body(String key, MassProperties body) {
    json.writeName(key);
    json.writeStartObject();
    json.writeNumberProperty("mass", body.mass());
    numbers(
        "centreOfMass", body.centreOfMass().x(), body.centreOfMass().y(), body.centreOfMass().z());
    inertia("inertia", body.inertia());
    inertia("inertiaAboutFlange", Payload.aboutFlange(body));
    json.writeEndObject();
  }

  private void inertia(String key, Inertia i) {
    numbers(key, i.xx(), i.yy(), i.zz(), i.xy(), i.xz(), i.yz());
  }

  private void numbers(String key, double... values) {
    json.writeName(key);
    json.writeStartArray();
    for (double v : values) {
      // Adding 0 takes the sign off a negative zero.
      json.writeNumber(v + 0.0);
    }
    json.writeEndArray();
  }

  /** A number, or null where there is no limit. */
  private void limited(String key, double value, boolean unlimited) {
    if (unlimited) {
      json.writeNullProperty(key);
    } else {
      json.writeNumberProperty(key, value);
    }
  }

  private void strings(String key, List<String> values) {
    json.writeName(key);
    json.writeStartArray();
    for (String value : values) {
      json.writeString(value);
    }
    json.writeEndArray();
  }
}
