package daubline.validation;

import java.util.List;

/** Where to look for each check: its source stands beside it in the test. */
final class WhereChecked implements Section {

  private static final List<List<String>> ROWS = List.of(
      List.of("units", "SI Brochure, 9th edition; exact inch and pound", "`UnitsTest`"),
      List.of("rounding of values and uncertainties", "JCGM 100:2008, 7.2.6", "`PrintedTest`"),
      List.of("compositions, distances, acceptability, censored likelihoods, uncertainty", "the sources named in each",
          "tests of `daubline.engine.stats`"),
      List.of("criteria, pooling, ranking", "worked values and axioms over seeded cases",
          "tests of `daubline.criteria` and `daubline.engine.inference`"),
      List.of("heat functions, equilibria, flame temperature", "NIST WebBook and JANAF tables, published fits", "`ThermoTest`"),
      List.of("resistance of a packed bed, blast, draught, carburising", "a published table after Ergun; stoichiometry; a textbook example",
          "`AirTest`"),
      List.of("mass balance and apportionment", "stoichiometry, published mixing data", "`BalanceTest`, `ApportionmentTest`"),
      List.of("slag viscosity, liquidus, phases", "measured iron-silicate melts, cross-validated by study; fixed points of fayalite",
          "`SlagTest`"),
      List.of("shaft model", "six reference furnaces on fine grids, invariants of random furnaces", "`ShaftTest`"),
      List.of("a whole forecast", "one published smelt, from its plan alone", "`TrialForecastTest`, `BurnForecastTest`"),
      List.of("designs and effects", "handbook tables, certified optima, reference regressions", "tests of `daubline.engine.design`"));

  @Override
  public String title() {
    return "Where each check stands";
  }

  @Override
  public void write(Page page) {
    page.text("Every check names its source beside it, in the tests; this table says where to look. The demonstration study is "
        + "invented and checks only that its own numbers balance (`AldervaleBalanceTest`).");
    page.table(List.of("what", "source", "test"), ROWS);
  }
}
