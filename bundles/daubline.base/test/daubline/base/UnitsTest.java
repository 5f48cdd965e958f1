package daubline.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class UnitsTest {

  static Stream<Unit> all() {
    return Stream.of(Quantity.values()).flatMap(q -> Units.of(q).stream());
  }

  /**
   * SI Brochure, 9th edition 2019: prefixes (table 7), minute, hour, day, degree, litre, tonne (table 8), Celsius
   * (section 2.3.1). Inch 25.4 mm and pound 0.453 592 37 kg exactly, ounce a sixteenth, foot twelve inches (agreement of
   * 1959); bar 100 kPa; standard gravity 9.806 65 m/s² and conventional water columns 9.806 65 Pa and 249.088 91 Pa
   * (NIST Special Publication 811, 2008, appendix B, rounds them to 9.806 65 and 249.088 9); cubic foot per minute
   * 4.719 474 E-04 m³/s (the same); poise 0.1 Pa·s (the same).
   */
  @ParameterizedTest
  @CsvSource({
      "LENGTH,mm,1,0.001", "LENGTH,cm,1,0.01", "LENGTH,µm,1,1e-6", "LENGTH,in,1,0.0254", "LENGTH,ft,1,0.3048",
      "AREA,cm²,1,1e-4", "AREA,mm²,1,1e-6", "VOLUME,L,1,1e-3", "VOLUME,mL,1,1e-6", "VOLUME,in³,1,1.6387064e-5",
      "VOLUME,ft³,1,0.028316846592", "MASS,g,1,1e-3", "MASS,mg,1,1e-6", "MASS,t,1,1000", "MASS,Mg,1,1000", "MASS,lb,1,0.45359237",
      "MASS,oz,1,0.028349523125", "TIME,min,1,60", "TIME,h,1,3600", "TIME,d,1,86400", "TEMPERATURE,K,273.15,0",
      "TEMPERATURE,°F,32,0", "TEMPERATURE,°F,212,100", "TEMPERATURE,°F,-40,-40", "PRESSURE,kPa,1,1000", "PRESSURE,mbar,1,100",
      "PRESSURE,bar,1,100000", "PRESSURE,mmH2O,1,9.80665", "PRESSURE,inH2O,1,249.08891", "VOLUME_FLOW,L/min,1,1.6666666666666667e-5",
      "VOLUME_FLOW,m³/h,1,2.7777777777777778e-4", "VOLUME_FLOW,cfm,1,4.719474432e-4", "MASS_FLOW,kg/h,1,2.7777777777777778e-4",
      "SPEED,km/h,3.6,1", "SPEED,ft/s,1,0.3048", "SPEED,cm/h,360,1e-3", "FLUX,L/(min·cm²),6,1", "RATE,1/min,60,1",
      "DENSITY,g/cm³,1,1000", "ANGLE,rad,3.141592653589793,180", "VISCOSITY,P,1,0.1", "POWER,kW,1,1000", "ENERGY,kWh,1,3.6e6",
      "FRACTION,%,1,0.01", "FRACTION,mg/kg,1,1e-6", "FRACTION,g/kg,1,1e-3"})
  void factorsAreThoseOfTheStandards(Quantity quantity, String symbol, double entered, double canonical) {
    Unit unit = Units.find(quantity, symbol).orElseThrow();
    assertEquals(canonical, unit.toCanonical(entered), Math.max(1e-12, Math.abs(canonical) * 1e-12));
  }

  @ParameterizedTest
  @MethodSource("all")
  void thereAndBackIsTheSame(Unit unit) {
    assertEquals(123.456, unit.fromCanonical(unit.toCanonical(123.456)), 1e-10);
    assertEquals(2.5, unit.differenceFromCanonical(unit.differenceToCanonical(2.5)), 1e-12);
  }

  @Test
  void aTemperatureDifferenceHasNoOffset() {
    assertEquals(10, Units.find(Quantity.TEMPERATURE, "°F").orElseThrow().differenceToCanonical(18), 1e-12);
    assertEquals(10, Units.find(Quantity.TEMPERATURE, "K").orElseThrow().differenceToCanonical(10), 1e-12);
  }

  @ParameterizedTest
  @EnumSource(Quantity.class)
  void everyQuantityHasItsCanonicalUnit(Quantity quantity) {
    Unit unit = Units.canonical(quantity);
    assertEquals(quantity.canonicalSymbol().equals("1") ? "" : quantity.canonicalSymbol(), unit.symbol());
  }

  @ParameterizedTest
  @CsvSource({"LENGTH,inches,in", "LENGTH,MM,mm", "MASS,KG,kg", "MASS,lbs,lb", "VOLUME_FLOW,LPM,L/min", "VOLUME_FLOW,CFM,cfm",
      "PRESSURE,inch H2O,inH2O", "FRACTION,wt%,%", "FRACTION,ppm,mg/kg", "TEMPERATURE,deg C,°C", "DENSITY,g/cc,g/cm³"})
  void spellingsOfPublishedPagesAreKnown(Quantity quantity, String typed, String symbol) {
    assertEquals(symbol, Units.find(quantity, typed).orElseThrow().symbol());
  }

  @Test
  void aUnitOfAnotherQuantityIsNotTaken() {
    assertEquals(Optional.empty(), Units.find(Quantity.LENGTH, "kg"));
    assertTrue(Units.named("kg").stream().anyMatch(u -> u.quantity() == Quantity.MASS));
  }

  /** SI Brochure section 3: m is milli, M is mega; a factor of 10⁹ must not hide in the case of a letter. */
  @Test
  void milliIsNeverReadAsMega() {
    assertEquals(Optional.empty(), Units.find(Quantity.ENERGY, "mJ"));
    assertEquals(1e6, Units.find(Quantity.ENERGY, "MJ").orElseThrow().factor());
  }
}
