package daubline.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlausibilityTest {

  private static Optional<Finding> check(String id, String text, String symbol) {
    Variable variable = Variables.standard().get(id);
    Unit unit = Units.find(variable.quantity(), symbol == null ? "" : symbol).orElseThrow();
    return Plausibility.check(variable, variable.read(text, unit, DecimalSign.POINT).amount(), unit);
  }

  /** Slips seen in published run records: 72 strokes a second for a minute, cm for mm, °F for °C, shares for per cent. */
  @ParameterizedTest
  @CsvSource({"bellows_strokes_per_minute,72,1/s,1/min", "base_internal_diameter,25,mm,cm", "temperature_mid_shaft,1652,°C,°F",
      "ore_iron,0.55,%,parts of one", "ore_iron,55,,%", "ore_total,18000,kg,in g", "air_flow,700,L/s,L/min", "slag_density,3.2,kg/m³,g/cm³"})
  void namesTheOtherUnit(String id, String text, String typedIn, String meant) {
    Finding finding = check(id, text, typedIn).orElseThrow();
    assertEquals("value.implausible", finding.code());
    assertEquals(Severity.WARNING, finding.severity());
    assertEquals(id, finding.variable());
    assertTrue(finding.remedy().contains(meant), finding.remedy());
  }

  @ParameterizedTest
  @CsvSource({"inlet_angle,225,°,22.5", "inlet_count,160,,16", "lining_repairs,500,,50"})
  void namesTheSlippedDecimalSign(String id, String text, String typedIn, String meant) {
    assertTrue(check(id, text, typedIn).orElseThrow().remedy().contains(meant));
  }

  @Test
  void saysTheRangeInTheUnitTyped() {
    assertTrue(check("base_internal_diameter", "900", "cm").orElseThrow().what().contains("12 to 150\u00A0cm"));
  }

  @ParameterizedTest
  @CsvSource({"ore_total,-5,kg", "surviving_height,-5,mm", "charcoal_ash,-1,%", "preheat_duration,-2,h"})
  void aNegativeMassOrLengthIsAnError(String id, String text, String unit) {
    assertEquals(Severity.ERROR, check(id, text, unit).orElseThrow().severity());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"ore_ignition_loss|-2|%", "inlet_projection|-10|mm", "air_temperature|-5|°C", "inlet_angle|-5|°",
      "base_internal_diameter|255|mm", "base_internal_diameter|≥ 60|mm", "base_internal_diameter|≤ 3000|mm", "base_internal_diameter|not preserved|mm"})
  void nothingOddIsPassed(String id, String text, String unit) {
    assertEquals(Optional.empty(), check(id, text, unit));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"base_internal_diameter|≥ 3000|mm", "base_internal_diameter|≤ 60|mm", "base_internal_diameter|60–300|mm"})
  void limitsAndRangesAreCheckedOnTheirOwnSide(String id, String text, String unit) {
    assertEquals("value.implausible", check(id, text, unit).orElseThrow().code());
  }
}
