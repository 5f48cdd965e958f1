package daubline.analysis.checks;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.model.Analysis;
import daubline.model.Component;
import daubline.session.Readings;
import java.util.HashSet;
import java.util.Set;

/**
 * Chemical analyses: totals outside the customary window (95 to 103 % for bulk analyses; common practice, no source),
 * oxides given twice, a printed total that is not the sum, and iron without a basis.
 */
final class AnalysisCheck implements Check {

  private static final double LOW = 0.95;
  private static final double HIGH = 1.03;
  private static final double ROUNDING = 0.006;

  @Override
  public String id() {
    return "analysis";
  }

  @Override
  public String description() {
    return "Totals outside 95–103 %, oxides given twice, printed totals that differ from the sum, iron without a stated basis.";
  }

  @Override
  public void run(CheckedStudy study) {
    study.each(Analysis.class, analysis -> check(study, analysis));
  }

  private void check(CheckedStudy study, Analysis analysis) {
    double sum = 0;
    boolean full = false;
    Set<String> seen = new HashSet<>();
    for (Component component : analysis.getComponents()) {
      Amount amount = Readings.amount(component);
      String symbol = String.valueOf(component.getSymbol());
      if (!seen.add(symbol)) {
        study.report(Finding.warning("analysis.twice", "", symbol + " is given twice", "take one away or rename it"), component, null);
      }
      if (amount.isNumber() && amount.value() < 0) {
        study.report(Finding.error("analysis.negative", "", symbol + " is negative", "check it against the laboratory's report"), component, null);
      }
      boolean counts = amount.isNumber() && amount.kind() != daubline.base.ValueKind.BELOW_LIMIT;
      sum += counts ? amount.value() : 0;
      full |= counts && symbol.equals("SiO2");
    }
    checkTotal(study, analysis, sum, full);
  }

  private void checkTotal(CheckedStudy study, Analysis analysis, double sum, boolean full) {
    double total = analysis.getTotal() == null ? sum : analysis.getTotal();
    boolean whole = full && analysis.getIronBasis() != daubline.base.IronBasis.FE;
    if (whole && analysis.getComponents().size() > 3 && (total < LOW || total > HIGH)) {
      study.report(Finding.warning("analysis.total", "", "the total is " + Printed.fixed(total * 100, 1) + " %",
          "check the iron basis, loss on ignition and missing oxides; the measured values stay, normalised ones are shown beside them"), analysis, null);
    }
    if (analysis.getTotal() != null && full && Math.abs(analysis.getTotal() - sum) > ROUNDING) {
      study.report(Finding.note("analysis.sum", "", "the printed total is " + Printed.fixed(analysis.getTotal() * 100, 2) + " %, the components add up to "
          + Printed.fixed(sum * 100, 2) + " %", "look for a component that was left out, or a misprint; the printed total is kept"), analysis, null);
    }
  }
}
