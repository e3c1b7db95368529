package io.github.holdpath.sim.robot;

import io.github.holdpath.sim.robot.Following.PastLimit;
import io.github.holdpath.sim.robot.JointMotion.Outcome;
import java.util.Optional;

/** Looks at a followed path between its knots: joint ranges and singularities. */
final class PathAudit {
  private static final int LOOKS = 4;
  private static final int HALVINGS = 50;

  /** Beyond a stop by no more than this is on it, rad or m. */
  private static final double ON_IT = 1e-9;

  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private final JointPath path;
  private final JointPathSampler sampler;
  private final double[] s;
  private final double[][] q;
  private final double[][] q1;
  private final double[] condition;
  private final double[] scratch1;
  private final double[] scratch2;
  private final double[] value;

  PathAudit(JointPath path) {
    this.path = path;
    sampler = path.sampler();
    int n = path.robot.joints().size();
    int count = (path.knots() - 1) * LOOKS + 1;
    s = new double[count];
    q = new double[count][n];
    q1 = new double[count][n];
    condition = new double[count];
    scratch1 = new double[n];
    scratch2 = new double[n];
    value = new double[n];
    for (int i = 0; i < count; i++) {
      int knot = i / LOOKS;
      double share = (double) (i % LOOKS) / LOOKS;
      double from = path.knot(knot);
      s[i] = share == 0 ? from : from + share * (path.knot(knot + 1) - from);
      condition[i] =
          sampler.at(s[i], q[i], q1[i], scratch2) == Outcome.LOST ? 0 : sampler.condition();
    }
  }

  /** What was found, the first trouble on the path first. */
  Following answer() {
    double least = Double.POSITIVE_INFINITY;
    double leastAt = 0;
    double singularAt = Double.POSITIVE_INFINITY;
    double singular = 0;
    for (int i = 0; i < s.length; i++) {
      double here = condition[i];
      double at = s[i];
      boolean dip =
          i > 0
              && i < s.length - 1
              && condition[i] <= condition[i - 1]
              && condition[i] <= condition[i + 1];
      if (dip) {
        at = leastConditionAt(s[i - 1], s[i + 1]);
        here = Math.min(here, conditionAt(at));
      }
      if (here < least) {
        least = here;
        leastAt = at;
      }
      if (here < JointMotion.SINGULAR && at < singularAt) {
        singularAt = at;
        singular = here;
      }
    }
    Optional<PastLimit> past = pastLimit();
    if (past.isPresent() && past.get().at() <= singularAt) {
      return past.get();
    }
    if (singularAt < Double.POSITIVE_INFINITY) {
      return new Following.Singular(singularAt, singular);
    }
    return new Following.Followed(path, least, leastAt);
  }

  private double conditionAt(double at) {
    return sampler.at(at, value, scratch1, scratch2) == Outcome.LOST ? 0 : sampler.condition();
  }

  /** Golden section: the condition falls and rises once between two neighbours of a low sample. */
  private double leastConditionAt(double from, double to) {
    double a = from;
    double b = to;
    double x = b - GOLDEN * (b - a);
    double y = a + GOLDEN * (b - a);
    double atX = conditionAt(x);
    double atY = conditionAt(y);
    for (int i = 0; i < HALVINGS; i++) {
      if (atX < atY) {
        b = y;
        y = x;
        atY = atX;
        x = b - GOLDEN * (b - a);
        atX = conditionAt(x);
      } else {
        a = x;
        x = y;
        atX = atY;
        y = a + GOLDEN * (b - a);
        atY = conditionAt(y);
      }
    }
    return (a + b) / 2;
  }

  private Optional<PastLimit> pastLimit() {
    Optional<PastLimit> first = Optional.empty();
    for (int k = 0; k < value.length; k++) {
      Optional<PastLimit> past = pastLimit(k);
      if (past.isPresent() && (first.isEmpty() || past.get().at() < first.get().at())) {
        first = past;
      }
    }
    return first;
  }

  private Optional<PastLimit> pastLimit(int k) {
    RobotJoint joint = path.robot.joints().get(k);
    double worst = ON_IT;
    double worstAt = 0;
    double worstValue = 0;
    double firstAt = Double.POSITIVE_INFINITY;
    double before = 0;
    for (int i = 0; i < s.length; i++) {
      double at = s[i];
      if (i > 0 && q1[i][k] * q1[i - 1][k] < 0) {
        at = turningPoint(k, i);
        double turned = valueAt(at, k);
        if (joint.limits().beyond(turned) <= joint.limits().beyond(q[i][k])) {
          at = s[i];
        }
      }
      double here = at == s[i] ? q[i][k] : valueAt(at, k);
      double beyond = joint.limits().beyond(here);
      if (beyond > ON_IT && firstAt == Double.POSITIVE_INFINITY) {
        firstAt = i == 0 ? 0 : crossing(joint.limits(), k, before, at);
      }
      if (beyond > worst) {
        worst = beyond;
        worstAt = at;
        worstValue = here;
      }
      before = s[i];
    }
    return firstAt == Double.POSITIVE_INFINITY
        ? Optional.empty()
        : Optional.of(new PastLimit(joint.name(), firstAt, worstValue, worst, worstAt));
  }

  private double valueAt(double at, int k) {
    sampler.at(at, value, scratch1, scratch2);
    return value[k];
  }

  private double turningPoint(int k, int i) {
    double a = s[i - 1];
    double b = s[i];
    for (int j = 0; j < HALVINGS; j++) {
      double middle = (a + b) / 2;
      sampler.at(middle, value, scratch1, scratch2);
      if (scratch1[k] * q1[i - 1][k] > 0) {
        a = middle;
      } else {
        b = middle;
      }
    }
    return (a + b) / 2;
  }

  private double crossing(JointLimits limits, int k, double inside, double outside) {
    double a = inside;
    double b = outside;
    for (int j = 0; j < HALVINGS; j++) {
      double middle = (a + b) / 2;
      if (limits.beyond(valueAt(middle, k)) > ON_IT) {
        b = middle;
      } else {
        a = middle;
      }
    }
    return b;
  }
}
