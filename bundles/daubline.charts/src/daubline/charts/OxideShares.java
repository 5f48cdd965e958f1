package daubline.charts;

import daubline.base.Amount;
import daubline.base.Material;
import daubline.base.Oxides;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.inference.AnalysisData;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** FeO, SiO2 and Al2O3 of a slag, made to sum to one; all iron as FeO. */
record OxideShares(double feo, double sio2, double al2o3, Trail from) {

  /** Shares of no analysis, for scales. */
  OxideShares(double feo, double sio2, double al2o3) {
    this(feo, sio2, al2o3, null);
  }

  /** The shares with the analysis that they were made of. */
  Trail trail() {
    String shares = "FeO " + Printed.fixed(100 * feo, 1) + ", SiO₂ " + Printed.fixed(100 * sio2, 1) + ", Al₂O₃ " + Printed.fixed(100 * al2o3, 1) + "\u00A0%";
    return Trail.reckoned("Shares of three oxides", shares, "made to sum to 100 % by mass, all iron as FeO", List.of(from));
  }

  /** The shares of an analysis; empty when it is no slag or when one of the three was not determined. */
  static Optional<OxideShares> of(AnalysisData analysis) {
    Map<String, Amount> c = analysis.components();
    double feo = value(c, "FeO") + value(c, "Fe2O3") * Oxides.FEO_OF_FE2O3;
    double iron = feo > 0 ? feo : value(c, "Fe") * Oxides.FEO_OF_FE;
    double sio2 = value(c, "SiO2");
    double al2o3 = value(c, "Al2O3");
    double sum = iron + sio2 + al2o3;
    return analysis.material() != Material.SLAG || iron <= 0 || sio2 <= 0 || al2o3 <= 0 ? Optional.empty()
        : Optional.of(new OxideShares(iron / sum, sio2 / sum, al2o3 / sum, analysis.trail()));
  }

  private static double value(Map<String, Amount> components, String symbol) {
    Amount amount = components.get(symbol);
    return amount == null || !amount.isNumber() || amount.kind() == daubline.base.ValueKind.BELOW_LIMIT ? 0 : amount.value();
  }
}
