package daubline.criteria;

import daubline.engine.inference.Criterion;
import java.util.List;
import java.util.Optional;

/** The list of all criteria; what is not in it does not exist for the tool. */
public final class Criteria {

  private static final List<Criterion> ALL = List.of(
      new BaseInternalDiameter(), new BaseExternalDiameter(), new BaseShape(), new WallThickness(), new SurvivingHeight(),
      new PitDiameter(), new PitDepth(), new PitFill(), new TapOpening(), new TapOpeningWidth(),
      new InletBore(), new InletHeight(), new InletAngle(), new InletCount(),
      new VitrifiedHeights(), new WallZones(), new OxidisedDepth(), new LiningLost(), new SlagAdheringHeight(),
      new TappedSlag(), new ResidueShares(), new ResidueCounts(), new TotalResidue(), new SlagPerIron(), new Prills(),
      new FlowMorphology(), new SlagDensity(), new CharcoalImpressions(), new OrganicImpressions(),
      new SlagComposition(), new OxideRatios(), new ReducibleIronIndex(), new SourceShares(), new MineralPhases(),
      new CharcoalSpecies(), new CharcoalSize(),
      new BloomMass(), new BloomDiameter(), new BloomQuality());

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
