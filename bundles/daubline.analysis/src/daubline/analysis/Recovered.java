package daubline.analysis;

import daubline.base.Amount;
import daubline.base.RecoveredTotal;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import java.util.List;

/** What the residues of a sheet add up to, and what a stated total is, with the share that was recovered. */
public final class Recovered {

  private Recovered() {
  }

  /**
   * The total of the classes weighed.
   *
   * @param trial whether the sheet is of an own trial, whose remains count as recovered whole where no share is stated
   */
  public static RecoveredTotal of(SheetData sheet, boolean trial) {
    return RecoveredTotal.sum(sheet.residues().stream().map(r -> new RecoveredTotal.Part(r.mass(), r.samplingFraction(), r.doubtful())).toList(), sheet.samplingFraction(), trial);
  }

  /**
   * The number of pieces of all classes counted; at least that where the mass would be a lower limit for the same reason.
   *
   * @param trial whether the sheet is of an own trial
   * @return not counted when no class was
   */
  public static Amount pieces(SheetData sheet, boolean trial) {
    List<RecoveredTotal.Part> counted = sheet.residues().stream().filter(r -> r.pieces() >= 0)
        .map(r -> new RecoveredTotal.Part(Amount.exact(r.pieces()), r.samplingFraction(), r.doubtful())).toList();
    boolean uncounted = counted.size() < sheet.residues().stream().filter(r -> r.pieces() >= 0 || r.mass().isNumber() && r.mass().value() > 0).count();
    Amount sum = RecoveredTotal.sum(counted, sheet.samplingFraction(), trial).total();
    return sum.isNumber() && uncounted ? Amount.atLeast(sum.value()) : sum;
  }

  /** A total that a sheet states. */
  public static RecoveredTotal of(SheetData sheet, Statement statement, boolean trial) {
    double share = Double.isNaN(statement.samplingFraction()) ? sheet.samplingFraction() : statement.samplingFraction();
    return RecoveredTotal.stated(statement.amount(), share, trial, statement.doubtful());
  }
}
