package daubline.criteria;

import daubline.base.Source;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Group;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import java.util.List;

/** Which minerals the slag holds, each present or searched for and absent. */
public final class MineralPhases extends JointCriterion {

  /** Described by its card. */
  public MineralPhases() {
    super(new Card("mineral_phases", "Mineral phases", Group.CHEMISTRY,
        "Geometric mean over the minerals that both sides report; 1 when all are present or absent alike.",
        Literature.RECORDING, Source.fromMemory("Fisher 1932, Statistical methods for research workers: combination of probabilities")),
        List.of("phase_wustite", "phase_fayalite", "phase_hercynite", "phase_leucite", "phase_magnetite", "phase_kirschsteinite",
            "phase_metallic_iron", "phase_anorthite", "phase_glass"),
        List.of(YesNoPair.MISSED, YesNoPair.MISTAKEN));
  }

  @Override
  Assessment part(String variable, SheetData evidence, SheetData found, SettingValues settings) {
    return YesNoPair.assess(variable, evidence, found, settings);
  }
}
