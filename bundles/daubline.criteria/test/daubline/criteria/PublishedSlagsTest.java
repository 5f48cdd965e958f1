package daubline.criteria;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Excavated slags of the La Tène and Roman periods: Neumann, Freiberger Forschungshefte D 6, table 2, after Schmid 1932, Gilles
 * and Karsten. Per cent by weight; number, iron as printed, FeO, Fe2O3, MnO, Al2O3, CaO, MgO, SiO2.
 */
class PublishedSlagsTest {

  private static final double[][] SLAGS = {
      {1, 54.55, 48.26, 24.29, 1.29, 3.65, 2.13, 0.90, 14.78}, {2, 51.82, 55.39, 12.62, 2.35, 2.54, 1.99, 1.43, 24.48},
      {4, 48.38, 56.73, 6.03, 9.28, 5.27, 1.40, 1.26, 19.60}, {5, 39.54, 47.74, 3.36, 11.51, 6.62, 7.24, 1.08, 27.23},
      {6, 43.80, 52.94, 3.99, 7.55, 4.35, 2.00, 0, 28.20}, {8, 40.00, 41.12, 11.42, 12.32, 5.94, 2.00, 0, 24.08}};

  private static SheetBuilder slag(double[] row) {
    return SheetBuilder.sheet("slag " + (int) row[0]).analysis(Material.SLAG, IronBasis.BOTH, "FeO", row[2], "Fe2O3", row[3], "MnO", row[4], "Al2O3", row[5],
        "CaO", row[6], "MgO", row[7], "SiO2", row[8]);
  }

  /** All iron as FeO, back to iron, is the iron the analysts printed, within 0.15 %. */
  @Test
  void allIronAsFeOKeepsTheIronPrinted() {
    for (double[] row : SLAGS) {
      double feo = SlagSample.of(slag(row).build(), "").mean("FeO");
      assertEquals(row[1], 100 * feo / Recast.FROM_FE, 0.15, "no. " + (int) row[0]);
    }
  }

  /** Weathering turns FeO into Fe2O3 and changes no comparison: the same iron all ferrous agrees fully. */
  @Test
  void weatheringChangesNoComparison() {
    double[] row = SLAGS[0];
    SheetData fresh = SheetBuilder.sheet("fresh").analysis(Material.SLAG, IronBasis.FEO, "FeO", row[2] + 100 * Recast.FROM_FE2O3 * row[3] / 100, "MnO", row[4],
        "Al2O3", row[5], "CaO", row[6], "MgO", row[7], "SiO2", row[8]).build();
    SlagComposition criterion = new SlagComposition();
    var answer = (Assessment.Tested) criterion.assess(slag(row).build(), fresh, SettingValues.standard(criterion));
    assertEquals(1, Math.exp(answer.kernel().log()), 1e-9);
  }

  /**
   * Siegerland siderite holds 12 to 23 % Mn on 42.67 % Fe (Neumann, image 19). Manganese stays in the slag and iron leaves it, so
   * slag of that ore cannot have a lower Mn/Fe; those of Engsbach and Obersetzen have. Nothing is apportioned to such a source.
   */
  @Test
  void anOreThatCannotHaveMadeTheSlag() {
    double poorest = 12 / 42.67;
    for (double[] row : new double[][] {SLAGS[4], SLAGS[5]}) {
      double ratio = row[4] * 54.938 / 70.937 / row[1];
      assertTrue(ratio < poorest, "no. " + (int) row[0] + ": " + ratio);
      SheetData evidence = slag(row).analysis(Material.ORE, IronBasis.FE2O3, "Fe2O3", 61.0, "MnO", 22.0, "SiO2", 3.0, "Al2O3", 1.0)
          .analysis(Material.LINING, IronBasis.FE2O3, "SiO2", 68.0, "Al2O3", 18.0, "Fe2O3", 5.0, "CaO", 1.0).build();
      SourceShares criterion = new SourceShares();
      Assessment answer = criterion.assess(evidence, evidence, SettingValues.standard(criterion));
      assertFalse(answer instanceof Assessment.Tested, "no. " + (int) row[0]);
      assertTrue(answer.explain().reason().startsWith("the evidence sheet"), answer.explain().reason());
    }
  }

  /** The slags of two Siegerland places are told apart from those of the Alps by manganese, whatever their iron. */
  @Test
  void manganeseTellsRegionsApart() {
    SlagComposition criterion = new SlagComposition();
    SettingValues parts = SettingValues.of(criterion, Map.of("parts", "MnO;Al2O3;SiO2"));
    var near = (Assessment.Tested) criterion.assess(slag(SLAGS[4]).build(), slag(SLAGS[5]).build(), parts);
    var far = (Assessment.Tested) criterion.assess(slag(SLAGS[1]).build(), slag(SLAGS[5]).build(), parts);
    assertTrue(far.kernel().compatibility() < 0.001 && near.kernel().compatibility() > 0.01, near.kernel().compatibility() + " " + far.kernel().compatibility());
  }
}
