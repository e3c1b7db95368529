package io.github.holdpath.sim.robot;

import io.github.holdpath.dynamics.inertia.Inertia;
import io.github.holdpath.dynamics.inertia.MassProperties;
import io.github.holdpath.dynamics.spatial.Pose;
import io.github.holdpath.dynamics.spatial.Vec3;

/**
 * Mass properties of a link. Unlike {@link MassProperties} it need not be a possible body: data
 * identified on an arm hold what moves the joints and nothing else, so a first link has an inertia
 * about one axis and no mass.
 *
 * @param mass kg, not negative
 * @param centreOfMass in the link's frame, m
 * @param inertia about the centre of mass, axes parallel to the link's frame, kg m^2
 */
public record LinkBody(double mass, Vec3 centreOfMass, Inertia inertia) {
  /** A link without mass. */
  public static final LinkBody NONE = new LinkBody(0, Vec3.ZERO, Inertia.POINT);

  /** Refuses a negative mass and numbers that are not finite. */
  public LinkBody {
    if (!(mass >= 0) || !Double.isFinite(mass)) {
      throw new IllegalArgumentException("mass must not be negative, but was " + mass);
    }
    double sum =
        Math.abs(inertia.xx())
            + Math.abs(inertia.yy())
            + Math.abs(inertia.zz())
            + Math.abs(inertia.xy())
            + Math.abs(inertia.xz())
            + Math.abs(inertia.yz());
    if (!Double.isFinite(sum)) {
      throw new IllegalArgumentException("inertia must be finite, but was " + inertia);
    }
  }

  /** Of a possible body, such as a payload. */
  public static LinkBody of(MassProperties body) {
    return new LinkBody(body.mass(), body.centreOfMass(), body.inertia());
  }

  /** This body, given in frame B, in frame A of {@code X_AB}. */
  public LinkBody seenFrom(Pose pose) {
    return new LinkBody(mass, pose.apply(centreOfMass), inertia.rotated(pose.rotation()));
  }

  /** Two bodies as one, both in the same frame. */
  public LinkBody plus(LinkBody o) {
    double total = mass + o.mass;
    if (total == 0) {
      return new LinkBody(0, centreOfMass, inertia.plus(o.inertia));
    }
    Vec3 c = centreOfMass.times(mass / total).plus(o.centreOfMass.times(o.mass / total));
    Inertia sum =
        inertia
            .plus(Inertia.ofPointAt(mass, centreOfMass.minus(c)))
            .plus(o.inertia)
            .plus(Inertia.ofPointAt(o.mass, o.centreOfMass.minus(c)));
    return new LinkBody(total, c, sum);
  }
}
