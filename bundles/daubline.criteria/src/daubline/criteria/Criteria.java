package daubline.criteria;

import daubline.engine.inference.Criterion;
import java.util.List;
import java.util.Optional;

/** The list of all criteria; what is not in it does not exist for the tool. */
public final class Criteria {

  private static final List<Criterion> ALL = List.of(
      new BaseInternalDiameter(), new WallThickness(), new SurvivingHeight(), new InletBore(), new InletHeight(),
      new TappedSlag(), new ResidueShares(), new TotalResidue(),
      new SlagComposition());

  private Criteria() {
  }

  /** Every criterion, in the order in which results are printed. */
  public static List<Criterion> all() {
    return ALL;
  }

  /** A criterion by its id. */
  public static Optional<Criterion> find(String id) {
    return ALL.stream().filter(c -> c.id().equals(id)).findFirst();
  }
}
