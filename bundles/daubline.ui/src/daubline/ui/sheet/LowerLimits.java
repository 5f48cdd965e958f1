package daubline.ui.sheet;

import daubline.base.Confidence;
import daubline.base.RecoveredTotal;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.model.EvidenceSheet;
import daubline.model.Reading;
import daubline.model.Sheet;
import daubline.session.Readings;
import daubline.ui.Words;

/** Totals that are shown as at least, since only a share of the whole was recovered, or the reading is doubtful. */
final class LowerLimits {

  private LowerLimits() {
  }

  /** The text of a value, with at least before it where it is a lower limit without saying so. */
  static String shown(String text, Reading reading, Variable variable) {
    if (!variable.id().equals(RecoveredTotal.VARIABLE) || !(reading.eContainer() instanceof Sheet sheet)) {
      return text;
    }
    Double own = reading.getSamplingFraction() == null ? sheet.getSamplingFraction() : reading.getSamplingFraction();
    RecoveredTotal total = RecoveredTotal.stated(Readings.amount(reading), own == null ? Double.NaN : own, !(sheet instanceof EvidenceSheet), reading.getConfidence() == Confidence.LOW);
    boolean says = reading.getKind() == ValueKind.AT_LEAST;
    return !total.isLeast() || says ? text : Words.of("total.least", text, why(total));
  }

  private static String why(RecoveredTotal total) {
    String share = total.share() < 1 ? Words.of("total.share", total.percent()) : "";
    String doubt = total.doubtful() ? Words.of("total.doubtful") : "";
    return share.isEmpty() && doubt.isEmpty() ? Words.of("total.unstated") : share + (share.isEmpty() || doubt.isEmpty() ? "" : "; ") + doubt;
  }
}
