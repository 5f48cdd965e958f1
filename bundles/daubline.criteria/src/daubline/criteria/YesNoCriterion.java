package daubline.criteria;

import daubline.engine.inference.Assessment;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import java.util.List;

/**
 * A criterion on something that is present, or was searched for and is absent. An absence weighs as much as the share of
 * the feature that was searched; what nobody looked for is not tested.
 */
abstract class YesNoCriterion extends CardCriterion {

  private final String variable;

  YesNoCriterion(Card card, String variable) {
    super(card, List.of(variable), List.of(YesNoPair.MISSED, YesNoPair.MISTAKEN));
    this.variable = variable;
  }

  @Override
  public final Assessment assess(SheetData evidence, SheetData found, SettingValues settings) {
    return YesNoPair.assess(variable, evidence, found, settings);
  }
}
