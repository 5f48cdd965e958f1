package daubline.export.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.ValueKind;
import daubline.export.TableOptions;
import daubline.export.TableOptions.Iron;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Iron of an analysis, given in another form. */
class IronFormTest {

  private static Map<String, Amount> of(Object... pairs) {
    Map<String, Amount> map = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put((String) pairs[i], (Amount) pairs[i + 1]);
    }
    return map;
  }

  /** The factor 1.1113 is that of the Canadian geochemical survey's page on iron in XRF (geochem.nrcan.gc.ca, sui00558). */
  @Test
  void theFactorIsThePublishedOne() {
    assertEquals(1.1113, IronForm.factor("FeO", "Fe2O3"), 5e-5);
    assertEquals(1, IronForm.factor("Fe2O3", "FeO") * IronForm.factor("FeO", "Fe2O3"), 1e-12);
  }

  @Test
  void thereAndBackIsWhereItBegan() {
    Map<String, Amount> printed = of("SiO2", Amount.exact(0.25), "FeO", Amount.plusMinus(0.6, 0.01));
    Map<String, Amount> back = IronForm.convert(IronForm.convert(printed, IronBasis.NOT_STATED, Iron.FE2O3), IronBasis.NOT_STATED, Iron.FEO);
    assertEquals(0.6, back.get("FeO").value(), 1e-12);
    assertEquals(0.01, back.get("FeO").sigma(), 1e-12);
    assertEquals(List.of("SiO2", "FeO"), List.copyOf(back.keySet()));
    assertSame(printed, IronForm.convert(printed, IronBasis.NOT_STATED, Iron.FEO));
    assertSame(printed, IronForm.convert(printed, IronBasis.NOT_STATED, Iron.AS_PRINTED));
  }

  @Test
  void bothOxidesAreAddedAndTheElementDoesNotCountTwice() {
    Map<String, Amount> both = of("FeO", Amount.exact(0.4), "Fe2O3", Amount.exact(0.1), "Fe", Amount.exact(0.38));
    assertEquals(0.4 + 0.1 / 1.11134, IronForm.convert(both, IronBasis.NOT_STATED, Iron.FEO).get("FeO").value(), 1e-5);
    assertEquals(1, IronForm.convert(both, IronBasis.NOT_STATED, Iron.FEO).size());
    // 55.845 of iron make 71.844 of FeO
    assertEquals(0.71844, IronForm.convert(of("Fe", Amount.exact(0.55845)), IronBasis.NOT_STATED, Iron.FEO).get("FeO").value(), 1e-5);
  }

  @Test
  void metallicIronCountsWhereTheBasisSaysItIsMetal() {
    Map<String, Amount> both = of("FeO", Amount.exact(0.4), "Fe", Amount.exact(0.1));
    assertEquals(0.4 + 0.1 * 71.844 / 55.845, IronForm.convert(both, IronBasis.WITH_METAL, Iron.FEO).get("FeO").value(), 1e-5);
    assertEquals(0.4, IronForm.convert(both, IronBasis.FEO, Iron.FEO).get("FeO").value(), 1e-12);
  }

  @Test
  void limitsAndReasonsStayWhatTheyAre() {
    Amount limit = IronForm.convert(of("Fe2O3", Amount.belowLimit(0.001)), IronBasis.NOT_STATED, Iron.FEO).get("FeO");
    assertEquals(ValueKind.BELOW_LIMIT, limit.kind());
    assertEquals(0.0008998, limit.value(), 1e-7);
    assertEquals(ValueKind.NOT_ANALYSED, IronForm.convert(of("Fe2O3", Amount.of(ValueKind.NOT_ANALYSED)), IronBasis.NOT_STATED, Iron.FEO).get("FeO").kind());
  }

  @Test
  void anOrderOfOxidesIsMadeOfFormulas() {
    assertEquals(List.of("FeO", "SiO2"), new TableOptions(List.of(" FeO", "SiO2", ""), Iron.FEO).oxides());
    assertThrows(IllegalArgumentException.class, () -> new TableOptions(List.of("iron"), Iron.FEO));
    assertThrows(IllegalArgumentException.class, () -> new TableOptions(List.of("FeO", "FEO"), Iron.FEO));
  }
}
