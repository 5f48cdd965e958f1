package daubline.criteria;

import daubline.base.Source;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Group;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import java.util.List;

/** Height of the vitrified zone at four clock positions, the air inlet facing twelve, or its height as a whole. */
public final class VitrifiedHeights extends JointCriterion {

  /** Described by its card. */
  public VitrifiedHeights() {
    super(new Card("vitrified_heights", "Vitrified zone by clock position", Group.FIRE,
        "Geometric mean over the clock positions that both sides record; 1 when the zone reaches equally high at each.",
        Literature.RECORDING, Literature.KERNEL, Source.fromMemory("Fisher 1932, combination of probabilities")),
        List.of("vitrified_height", "vitrified_height_12", "vitrified_height_3", "vitrified_height_6", "vitrified_height_9"),
        List.of(Shown.tolerance(50, Shown.MM, "the hot zone wanders with the burden and the inlet")));
  }

  @Override
  Assessment part(String variable, SheetData evidence, SheetData found, SettingValues settings) {
    return new NumberPair(variable, Scale.DIFFERENCE, settings.number(NumberCriterion.TOLERANCE)).assess(evidence.about(variable), found.about(variable));
  }
}
