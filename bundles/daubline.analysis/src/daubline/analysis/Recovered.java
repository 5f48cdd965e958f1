package daubline.analysis;

import daubline.base.RecoveredTotal;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;

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
    return RecoveredTotal.sum(sheet.residues().stream().map(r -> new RecoveredTotal.Part(r.mass(), r.samplingFraction())).toList(), sheet.samplingFraction(), trial);
  }

  /** A total that a sheet states. */
  public static RecoveredTotal of(SheetData sheet, Statement statement, boolean trial) {
    double share = Double.isNaN(statement.samplingFraction()) ? sheet.samplingFraction() : statement.samplingFraction();
    return RecoveredTotal.stated(statement.amount(), share, trial);
  }
}
