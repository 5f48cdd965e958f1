package daubline.criteria;

import daubline.engine.inference.Assessment;
import daubline.engine.inference.Setting;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.SheetGroup;
import daubline.engine.inference.Statement;
import daubline.engine.inference.kernel.Mixture;
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

  /** Where the random numbers of the trial's value come from; where it is worked out of parts, a criterion says so here. */
  Mixture mixture(SheetData found) {
    return Mixture.OWN;
  }

  @Override
  public final Assessment assess(SheetData evidence, SheetData found, SettingValues settings) {
    NumberPair pair = new NumberPair(variable, scale, settings.number(TOLERANCE), mixture(found));
    Claims asked = settings.once(Side.EVIDENCE, evidence, s -> pair.claims(asked(s, settings), Side.EVIDENCE));
    Claims seen = settings.once(Side.TRIAL, found, s -> pair.claims(statements(s, Side.TRIAL, settings), Side.TRIAL));
    return pair.assess(asked, seen);
  }

  /** What the evidence claims; of a group what its features, each by itself, let expect of one more. */
  private List<Statement> asked(SheetData evidence, SettingValues settings) {
    return evidence.features().isEmpty() ? statements(evidence, Side.EVIDENCE, settings)
        : SheetGroup.merged(variable, evidence.features().stream().map(f -> statements(f, Side.EVIDENCE, settings)).toList());
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
