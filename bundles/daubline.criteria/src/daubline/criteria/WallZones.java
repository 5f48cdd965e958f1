package daubline.criteria;

import daubline.base.Source;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Group;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import java.util.List;

/** Heights to which the wall is reduced and oxidised. */
public final class WallZones extends JointCriterion {

  /** Described by its card. */
  public WallZones() {
    super(new Card("wall_zones", "Reduced and oxidised zones", Group.FIRE,
        "Geometric mean over the zones that both sides record; 1 when they reach equally high.",
        Literature.RECORDING, Literature.KERNEL, Source.fromMemory("Fisher 1932, combination of probabilities")),
        List.of("reduced_height", "oxidised_height"),
        List.of(Shown.tolerance(60, Shown.MM, "colours change gradually and the last hours of the fire change them again")));
  }

  @Override
  Assessment part(String variable, SheetData evidence, SheetData found, SettingValues settings) {
    return new NumberPair(variable, Scale.DIFFERENCE, settings.number(NumberCriterion.TOLERANCE)).assess(evidence.about(variable), found.about(variable));
  }
}
