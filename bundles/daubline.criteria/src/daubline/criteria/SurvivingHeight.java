package daubline.criteria;

import daubline.base.Amount;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.engine.inference.Group;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import java.util.List;

/** Height to which the wall stands: an excavated wall has lost some, so its height is always a lower limit. */
public final class SurvivingHeight extends NumberCriterion {

  /** Described by its card. */
  public SurvivingHeight() {
    super(new Card("surviving_height", "Surviving height", Group.GEOMETRY,
        "Probability that the trial's wall stands at least as high as the excavated one, of which more may have stood.",
        Literature.RECORDING, Literature.LIMIT), "surviving_height", Scale.DIFFERENCE,
        Shown.tolerance(60, Shown.MM, "how much of a wall falls depends on weather, robbing and how the bloom was taken out"));
  }

  @Override
  List<Statement> statements(SheetData sheet, Side side, SettingValues settings) {
    List<Statement> stated = sheet.about("surviving_height");
    return side == Side.TRIAL ? stated : stated.stream().map(SurvivingHeight::asLimit).toList();
  }

  private static Statement asLimit(Statement statement) {
    Amount amount = statement.amount();
    if (amount.kind() != ValueKind.EXACT && amount.kind() != ValueKind.PLUS_MINUS) {
      return statement;
    }
    Amount limit = Amount.atLeast(amount.value()).withSigma(amount.sigma());
    return new Statement(statement.id(), limit, statement.samplingFraction(), statement.preservationLimit(), statement.picked(),
        Trail.of("Surviving height taken as a lower limit: more of it may have stood", "", statement.trail()));
  }
}
