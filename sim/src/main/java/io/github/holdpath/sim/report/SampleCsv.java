package io.github.holdpath.sim.report;

import io.github.holdpath.dynamics.margin.FailureMode;
import io.github.holdpath.dynamics.margin.FirstSlip;
import io.github.holdpath.dynamics.margin.HoldModel;
import io.github.holdpath.sim.study.SampleTable;
import io.github.holdpath.sim.study.StudyResult;
import tools.jackson.core.io.NumberOutput;

/** Every sample as a row of CSV (RFC 4180, SI; docs/formats/result.md). */
public final class SampleCsv {
  private static final String HEADER =
      "time,segment,s,x,y,z,qw,qx,qy,qz,vx,vy,vz,wx,wy,wz,ax,ay,az,alx,aly,alz,"
          + "fx,fy,fz,mx,my,mz,factor,wholeGripFactor,margin,speedHeadroom,mode,patch";
  private static final String END = "\r\n";

  private SampleCsv() {}

  /**
   * The whole table.
   *
   * @param step spacing of the samples, s
   */
  public static String text(StudyResult result, double step) {
    StringBuilder out = new StringBuilder(HEADER).append(END);
    new SampleTable(result, step)
        .forEach(
            row -> {
              number(out, row.time());
              out.append(',').append(row.segment()).append(',');
              number(out, row.distance());
              for (double v : row.state()) {
                out.append(',');
                number(out, v);
              }
              for (double v : row.wrench()) {
                out.append(',');
                number(out, v);
              }
              if (row.hold().isPresent()) {
                hold(out, row, row.hold().get(), result.requiredSafety());
              } else {
                out.append(",,,,,,");
              }
              out.append(END);
            });
    return out.toString();
  }

  private static void hold(StringBuilder out, SampleTable.Row row, FirstSlip first, double safety) {
    boolean none = first.mode() == FailureMode.NONE;
    out.append(',');
    number(out, none ? Double.POSITIVE_INFINITY : first.factor());
    out.append(',');
    double whole = row.wholeGripFactor();
    number(out, whole >= HoldModel.NO_LIMIT ? Double.POSITIVE_INFINITY : whole);
    out.append(',');
    number(out, none ? Double.POSITIVE_INFINITY : first.factor() / safety);
    out.append(',');
    number(out, row.speedHeadroom());
    out.append(',').append(first.mode().label()).append(',');
    text(out, first.patchName());
  }

  private static void number(StringBuilder out, double v) {
    // Adding zero turns -0 into 0.
    out.append(Double.isInfinite(v) ? "inf" : NumberOutput.toString(v + 0.0, true));
  }

  private static void text(StringBuilder out, String s) {
    if (s.contains(",") || s.contains("\"") || s.contains("\n") || s.contains("\r")) {
      out.append('"').append(s.replace("\"", "\"\"")).append('"');
    } else {
      out.append(s);
    }
  }
}
