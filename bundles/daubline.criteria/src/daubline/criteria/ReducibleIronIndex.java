package daubline.criteria;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.inference.Group;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.engine.inference.kernel.Mixture;
import java.util.List;
import java.util.Set;

/**
 * Iron beyond what silica holds as fayalite: FeO / (2.39·SiO2) of the slag, all iron as FeO. Taken from the analyses where
 * the sheet does not state it.
 */
public final class ReducibleIronIndex extends NumberCriterion {

  /** Kilograms of FeO for one of SiO2 in fayalite: 2·71.844 / 60.084. */
  private static final double FAYALITE = 2 * 71.844 / 60.084;
  private static final double RELATIVE = 0.03;
  private static final double ABSOLUTE = 0.0005;

  /** Described by its card. */
  public ReducibleIronIndex() {
    super(new Card("reducible_iron_index", "Reducible iron index", Group.CHEMISTRY,
        "1 when equally much iron is left beyond fayalite, by ratio; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECIPES, Literature.KERNEL), "chem_rii", Scale.RATIO,
        Shown.relative(20, "slag of one furnace differs from piece to piece by this much"));
  }

  /** The oxides that the criteria on composition read too; a fault of one is a fault of all. */
  @Override
  Mixture mixture(SheetData found) {
    return isStated(found) ? Mixture.OWN : Mixture.ratio("FeO", "SiO2");
  }

  private static boolean isStated(SheetData sheet) {
    return sheet.about("chem_rii").stream().anyMatch(s -> s.amount().isNumber());
  }

  @Override
  List<Statement> statements(SheetData sheet, Side side, SettingValues settings) {
    List<Statement> stated = sheet.about("chem_rii");
    SlagSample slag = SlagSample.of(sheet, "").with(Set.of("FeO", "SiO2"));
    if (isStated(sheet) || slag.analyses().isEmpty()) {
      return stated;
    }
    double index = slag.mean("FeO") / (FAYALITE * slag.mean("SiO2"));
    double sigma = index * Math.sqrt(slag.variance("FeO", RELATIVE, ABSOLUTE) + slag.variance("SiO2", RELATIVE, ABSOLUTE));
    Trail trail = new Trail("FeO / (2.39·SiO2), geometric mean of " + slag.analyses().size() + " analyses", Printed.plusMinus(index, sigma), "",
        slag.analyses().stream().map(Recast::trail).toList());
    return List.of(new Statement("from analyses", Amount.plusMinus(index, sigma), Double.NaN, Double.NaN, false, trail));
  }
}
