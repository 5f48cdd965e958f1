package daubline.criteria;

import daubline.engine.inference.Assessment;
import daubline.engine.inference.Setting;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import java.util.List;

/** A criterion on one number: a value, a range, at least or at most, by difference or by ratio. */
abstract class NumberCriterion extends CardCriterion {

  /** Key of the tolerance in the settings. */
  static final String TOLERANCE = "tolerance";

  private final String variable;
  private final Scale scale;

  NumberCriterion(Card card, String variable, Scale scale, Setting... settings) {
    super(card, List.of(variable), List.of(settings));
    this.variable = variable;
    this.scale = scale;
  }

  /** What a side claims; where it is derived from other records, a criterion says so here. */
  List<Statement> statements(SheetData sheet, Side side, SettingValues settings) {
    return sheet.about(variable);
  }

  @Override
  public final Assessment assess(SheetData evidence, SheetData found, SettingValues settings) {
    NumberPair pair = new NumberPair(variable, scale, settings.number(TOLERANCE));
    Claims asked = settings.once(Side.EVIDENCE, evidence, s -> pair.claims(statements(s, Side.EVIDENCE, settings), Side.EVIDENCE));
    Claims seen = settings.once(Side.TRIAL, found, s -> pair.claims(statements(s, Side.TRIAL, settings), Side.TRIAL));
    return pair.assess(asked, seen);
  }

  /** The variable compared. */
  public final String variable() {
    return variable;
  }

  /** Whether it is compared by ratio, its tolerance being relative. */
  public final boolean isByRatio() {
    return scale == Scale.RATIO;
  }
}
