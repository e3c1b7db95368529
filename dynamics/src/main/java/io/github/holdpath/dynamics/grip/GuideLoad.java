package io.github.holdpath.dynamics.grip;

import io.github.holdpath.dynamics.contact.ContactPatch;
import io.github.holdpath.dynamics.spatial.Vec3;
import io.github.holdpath.dynamics.spatial.Wrench;
import java.util.List;

/**
 * What the part puts on the guide of one jaw: the gripping force at the end of the overhang, and
 * the jaw's share of the load (theory, eq. 2.9). The weight and the inertia of the jaw itself and
 * the force of the drive, which acts close to the guide, are left out.
 *
 * @param guide that is loaded
 * @param load of the part on the jaw about the guide's origin, in guide axes, N and N m
 */
public record GuideLoad(Guide guide, Wrench load) {
  /**
   * From the shares of a load.
   *
   * @param guide of the jaw
   * @param patches all patches of the grip
   * @param shares of the load on the part, one for each patch, patch axes, without the preload
   */
  public static GuideLoad of(Guide guide, List<ContactPatch> patches, List<Wrench> shares) {
    if (patches.size() != shares.size()) {
      throw new IllegalArgumentException(
          "there must be a share for each of "
              + patches.size()
              + " patches, but there were "
              + shares.size());
    }
    Wrench onPart = Wrench.ZERO;
    for (int index : guide.patches()) {
      ContactPatch patch = patches.get(index);
      Wrench preload = new Wrench(new Vec3(0, 0, patch.preload()), Vec3.ZERO);
      onPart = onPart.plus(shares.get(index).plus(preload).seenFrom(patch.pose()));
    }
    return new GuideLoad(guide, onPart.times(-1).seenFrom(guide.pose().inverse()));
  }

  /**
   * How much of its rating the guide uses; 1 is all. The uses by each moment and by the force
   * square to the closing axis are added up, as is done for linear guides (common practice, no
   * source), because they load the same rollers or faces at once.
   *
   * @return dimensionless, at least 0; 0 where nothing is rated
   */
  public double use() {
    GuideRating rating = guide.rating();
    Vec3 m = load.moment();
    Vec3 f = load.force();
    return Math.abs(m.x()) / rating.aboutAcross()
        + Math.abs(m.y()) / rating.aboutClosing()
        + Math.abs(m.z()) / rating.aboutZ()
        + Math.hypot(f.x(), f.z()) / rating.force();
  }
}
