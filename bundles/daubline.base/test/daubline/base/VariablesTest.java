package daubline.base;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class VariablesTest {

  private static final String HEADER = "id,name,group,type,quantity,unit,low,high,places,words,ordered,evidenced_by,meaning,source\n";

  static Stream<Variable> all() {
    return Variables.standard().all().stream();
  }

  @Test
  void theCatalogueIsLarge() {
    assertTrue(Variables.standard().all().size() >= 140, "variables: " + Variables.standard().all().size());
  }

  @ParameterizedTest
  @MethodSource("all")
  void everyVariableIsComplete(Variable v) {
    assertAll(v.id(),
        () -> assertTrue(v.id().matches("[a-z][a-z0-9]*(_[a-z0-9]+)*"), "id"),
        () -> assertTrue(v.name().length() > 2 && Character.isUpperCase(v.name().charAt(0)), "name"),
        () -> assertFalse(v.group().isBlank(), "group"),
        () -> assertFalse(v.places().isEmpty(), "places"),
        () -> assertTrue(v.meaning().length() > 30 && v.meaning().endsWith("."), "meaning says what it is: " + v.meaning()),
        () -> assertFalse(v.source().isBlank(), "source"),
        () -> assertEquals(v.type() == ValueType.CATEGORY, !v.words().isEmpty(), "words belong to categories"),
        () -> assertEquals(v.words().size(), new HashSet<>(v.words()).size(), "no word twice"),
        () -> assertTrue(v.type() != ValueType.NUMBER || v.plausibleLow() < v.plausibleHigh(), "a number has a plausible range"));
  }

  @ParameterizedTest
  @MethodSource("all")
  void whatRemainsCanShowSaysHow(Variable v) {
    assertTrue(!v.isAt(Variable.Place.REMAINS) || !v.evidencedBy().isBlank(),
        v.id() + " is recorded on remains, so the catalogue must say how they show it");
  }

  @Test
  void namesAreUnique() {
    Set<String> names = new HashSet<>();
    List<String> twice = all().map(Variable::name).filter(n -> !names.add(n)).toList();
    assertEquals(List.of(), twice);
  }

  /** Values of runs published on warehamforge.ca and wealdeniron.org.uk, and other ordinary ones of the trade. */
  @ParameterizedTest
  @CsvSource({
      "base_internal_diameter,20,cm", "base_internal_diameter,34,cm", "base_internal_diameter,68,cm", "furnace_height,63.5,cm",
      "furnace_height,150,cm", "height_above_inlet,66,cm", "inlet_bore,2.5,cm", "inlet_angle,22.5,°", "inlet_angle,45,°",
      "inlet_height_above_floor,16,cm", "inlet_height_above_floor,1,cm", "ore_total,18,kg", "ore_total,91,kg", "ore_iron,61,%",
      "ore_iron,53,%", "charcoal_total,38,kg", "charcoal_total,193,kg", "air_flow,100,L/min", "air_flow,1000,L/min",
      "air_flow,0,L/min", "main_sequence_duration,3.5,h", "main_sequence_duration,23,h", "bloom_mass,4.9,kg", "bloom_mass,0,kg",
      "bloom_per_ore,27,%", "iron_recovery,44.6,%", "ore_to_charcoal,0.76,", "charge_interval,13,min", "charge_interval,20,min",
      "bellows_strokes_per_minute,72,1/min", "bellows_stroke_volume,1.2,L", "blast_per_area,2.07,L/(min·cm²)",
      "blast_per_area,0.11,L/(min·cm²)", "temperature_above_inlet,1170,°C", "temperature_mid_shaft,780,°C",
      "temperature_peak_inlet,1450,°C", "metal_carbon,0.43,%", "slag_density,2.89,g/cm³", "inlet_pressure,0.9,kPa",
      "chem_rii,1.985,", "chem_rii,0.544,", "billet_mass,1.85,kg", "inlet_count,16,", "pit_depth,45,cm", "ore_moisture,10,%"})
  void ordinaryValuesArePlausible(String id, double value, String symbol) {
    Variable variable = Variables.standard().get(id);
    Unit unit = Units.find(variable.quantity(), symbol == null ? "" : symbol).orElseThrow();
    assertTrue(variable.isPlausible(unit.toCanonical(value)), id + " " + value + " " + symbol);
  }

  @Test
  void aTypedValueIsReadByType() {
    Variables catalogue = Variables.standard();
    Variable diameter = catalogue.get("base_internal_diameter");
    assertEquals(0.255, diameter.read("255", diameter.unit(), DecimalSign.POINT).amount().value(), 1e-12);
    assertEquals("oval", catalogue.get("base_profile_shape").read("Oval", diameter.unit(), DecimalSign.POINT).amount().category());
    assertEquals(ValueKind.PRESENT, catalogue.get("tap_opening").read("yes", diameter.unit(), DecimalSign.POINT).amount().kind());
    assertEquals("one lime, three sand", catalogue.get("clay_recipe").read("one lime, three sand", diameter.unit(), DecimalSign.POINT).amount().category());
    assertFalse(catalogue.get("base_profile_shape").read("roundish", diameter.unit(), DecimalSign.POINT).isRead());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "a,A,g,number,length,bushel,1,2,built,,,,m,s|no unit “bushel” of LENGTH",
      "a,A,g,number,length,mm,9,2,built,,,,m,s|upside down",
      "a,A,g,number,length,mm,x,2,built,,,,m,s|x",
      "a,A,g,number,loudness,mm,1,2,built,,,,m,s|LOUDNESS",
      "a,A,g,number,length,mm,1,2,attic,,,,m,s|ATTIC",
      "a,A,g,category,number,,,,built,,,,m,s|words",
      ",A,g,number,length,mm,1,2,built,,,,m,s|id is empty",
      "a,A,g,number,length,mm,1|line 2"})
  void refusesWrongRowsAndNamesTheLine(String row, String reason) {
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> Variables.read(new StringReader(HEADER + row)));
    assertTrue(e.getMessage().contains("line 2"), e.getMessage());
    assertTrue(e.getMessage().contains(reason), e.getMessage());
  }

  @Test
  void refusesTheSameIdTwice() {
    String row = "a,A,g,number,length,mm,1,2,built,,,,m,s\n";
    assertTrue(assertThrows(IllegalArgumentException.class, () -> Variables.read(new StringReader(HEADER + row + row))).getMessage()
        .contains("a stands twice"));
  }

  @Test
  void aStudyAddsVariablesAndChangesNone() throws IOException {
    Variables own = Variables.read(new StringReader(HEADER + "own,Own,g,number,length,mm,1,2,built,,,,m,s\n"
        + "furnace_height,Mine,g,number,length,mm,1,2,built,,,,m,s\n"));
    Variables both = Variables.standard().with(own.all());
    assertEquals("Own", both.get("own").name());
    assertEquals("Furnace height", both.get("furnace_height").name());
    assertThrows(IllegalArgumentException.class, () -> both.get("nothing_such"));
  }
}
