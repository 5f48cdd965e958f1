package daubline.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Factors from element to oxide, and what repeated measurements say together. */
class OxideFactorsTest {

  /**
   * As printed in the table of conversions for carbonates, oxides and elements at tibaland.co (read 2026-11-26); it reckons with
   * atomic weights of two decimals (Ti 47.90 where it is 47.867 now), so that the last of its digits may differ by a few.
   */
  @ParameterizedTest
  @CsvSource({"Si,SiO2,2.1395", "Ti,TiO2,1.6681", "Al,Al2O3,1.8893", "Fe,Fe2O3,1.4298", "Fe,FeO,1.2865", "Mn,MnO,1.2912", "Mn,Mn3O4,1.3883", "Mn,MnO2,1.5825",
      "Mg,MgO,1.6581", "Ca,CaO,1.3992", "Na,Na2O,1.3479", "K,K2O,1.2045", "P,P2O5,2.2915"})
  void factorsOfAPrintedTable(String element, String oxide, double printed) {
    assertEquals(printed, OxideFactors.factor(element, oxide).orElseThrow(), 4e-4);
    assertTrue(OxideFactors.of(element).contains(oxide));
  }

  @Test
  void onlyAnOxideOfTheElement() {
    assertEquals(Optional.empty(), OxideFactors.factor("Si", "Al2O3"));
    assertEquals(Optional.empty(), OxideFactors.factor("Si", "SiC"));
    assertEquals(List.of(), OxideFactors.of("Xe"));
    assertEquals(Oxides.FEO_OF_FE, OxideFactors.factor("Fe", "FeO").orElseThrow(), 1e-9);
  }

  /** JCGM 100:2008, 4.2.3; the five voltages of an invented row: mean 10, s² = 2.5, s/√5 = 0.70711. */
  @Test
  void theMeanHasTheUncertaintyOfAMean() {
    Amount mean = Repeated.mean(List.of(8, 9, 10, 11, 12).stream().map(n -> Amount.exact(n)).toList()).orElseThrow();
    assertEquals(10, mean.value(), 1e-12);
    assertEquals(0.70711, mean.sigma(), 1e-5);
    Amount stated = Repeated.mean(List.of(Amount.plusMinus(10, 3), Amount.plusMinus(10, 4))).orElseThrow();
    assertEquals(2.5, stated.sigma(), 1e-12, "what is stated where the numbers scatter less");
    assertEquals(ValueKind.EXACT, Repeated.mean(List.of(Amount.exact(3), Amount.exact(3))).orElseThrow().kind());
  }

  @Test
  void limitsAndReasonsAreNeverAveraged() {
    assertEquals(Amount.belowLimit(0.02), Repeated.mean(List.of(Amount.belowLimit(0.01), Amount.belowLimit(0.02))).orElseThrow());
    assertEquals(Amount.of(ValueKind.TRACE), Repeated.mean(List.of(Amount.of(ValueKind.TRACE), Amount.of(ValueKind.TRACE))).orElseThrow());
    assertEquals(Optional.empty(), Repeated.mean(List.of(Amount.exact(1), Amount.belowLimit(0.02))));
    assertEquals(Optional.empty(), Repeated.mean(List.of(Amount.of(ValueKind.TRACE), Amount.of(ValueKind.NOT_ANALYSED))));
  }
}
