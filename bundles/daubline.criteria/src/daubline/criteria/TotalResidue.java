package daubline.criteria;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.RecoveredTotal;
import daubline.base.Source;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.engine.inference.ClassMass;
import daubline.engine.inference.Group;
import daubline.engine.inference.Setting;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import java.util.List;

/**
 * Mass of all residues. An excavated total is a lower limit unless the whole deposit is known to have been recovered, and the reading is not doubtful;
 * where no total is stated the classes are added up.
 */
public final class TotalResidue extends NumberCriterion {

  private static final String SMELTS = "smelts";

  /** Described by its card. */
  public TotalResidue() {
    super(new Card("residue_total", "Total residue", Group.RESIDUES,
        "Probability that the trial leaves at least as much residue as was recovered for one smelt, when the evidence is a lower limit; by ratio.",
        Literature.RECORDING, Literature.LIMIT), RecoveredTotal.VARIABLE, Scale.RATIO,
        Shown.relative(30, "slag masses of repeated smelts scatter by about a third"),
        Setting.number(SMELTS, "Smelts in the deposit", 1, Shown.ONE, "number of smelts that the excavated deposit stands for",
            Source.commonPractice("one, unless repairs or layers show more")));
  }

  @Override
  List<Statement> statements(SheetData sheet, Side side, SettingValues settings) {
    List<Statement> stated = sheet.about(RecoveredTotal.VARIABLE);
    List<Statement> used = stated.stream().anyMatch(s -> s.amount().isNumber()) ? stated : addedUp(sheet, stated);
    return side == Side.TRIAL ? used.stream().map(s -> asLimit(s, sheet, 1)).toList()
        : used.stream().map(s -> perSmelt(asLimit(s, sheet, Double.NaN), settings.number(SMELTS))).toList();
  }

  private static List<Statement> addedUp(SheetData sheet, List<Statement> otherwise) {
    List<ClassMass> weighed = sheet.residues().stream().filter(r -> r.mass().isNumber()).toList();
    if (weighed.isEmpty()) {
      return otherwise;
    }
    double sum = weighed.stream().mapToDouble(r -> r.mass().value()).sum();
    double variance = weighed.stream().mapToDouble(r -> Math.pow(r.mass().sigmaOr(0), 2)).sum();
    boolean complete = weighed.size() == sheet.residues().size() && weighed.stream().noneMatch(r -> r.mass().kind() == ValueKind.AT_LEAST);
    Amount amount = !complete ? Amount.atLeast(sum) : variance > 0 ? Amount.plusMinus(sum, Math.sqrt(variance)) : Amount.exact(sum);
    Trail trail = new Trail("Sum of the classes weighed", Printed.number(sum) + "\u00A0kg", "", weighed.stream().map(ClassMass::trail).toList());
    return List.of(new Statement("sum of classes", amount, Double.NaN, Double.NaN, false, weighed.stream().anyMatch(ClassMass::doubtful), trail));
  }

  /** A total of which a share was recovered, or that was read with low confidence, is a lower limit. */
  private static Statement asLimit(Statement statement, SheetData sheet, double whenNotStated) {
    double share = !Double.isNaN(statement.samplingFraction()) ? statement.samplingFraction()
        : !Double.isNaN(sheet.samplingFraction()) ? sheet.samplingFraction() : whenNotStated;
    Amount limit = RecoveredTotal.stated(statement.amount(), share, false, statement.doubtful()).total();
    return limit.equals(statement.amount()) ? statement : change(statement, limit,
        statement.doubtful() ? "read with low confidence, so a lower limit" : Double.isNaN(share) ? "share recovered not stated, so a lower limit" : "share recovered " + Printed.number(share) + ", so a lower limit");
  }

  private static Statement perSmelt(Statement statement, double smelts) {
    Amount amount = statement.amount();
    if (!(smelts > 0) || smelts == 1 || !amount.isNumber()) {
      return statement;
    }
    return change(statement, new Amount(amount.kind(), amount.value() / smelts, amount.low() / smelts, amount.high() / smelts,
        amount.sigma() / smelts, amount.category()), "divided by " + Printed.number(smelts) + " smelts");
  }

  private static Statement change(Statement from, Amount amount, String why) {
    return from.reading(amount, Trail.of("Total residue, " + why, Printed.number(amount.value()) + "\u00A0kg", from.trail()));
  }
}
