package daubline.seeds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.HowGot;
import daubline.base.ValueKind;
import daubline.model.Analysis;
import daubline.model.Component;
import daubline.model.Reading;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.StudySession;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class OpenSmeltsTest {

  private StudySession session;

  @BeforeEach
  void open() throws Exception {
    session = StudySession.read(SeedsTest.SEEDS.resolve("open-smelts"));
  }

  @AfterEach
  void close() {
    session.close();
  }

  private <T extends EObject> List<T> all(Class<T> type) {
    List<T> found = new ArrayList<>();
    for (Iterator<EObject> all = session.study().eAllContents(); all.hasNext();) {
      EObject object = all.next();
      if (type.isInstance(object)) {
        found.add(type.cast(object));
      }
    }
    return found;
  }

  private List<Reading> of(String trial, String variable) {
    Trial t = session.find(trial, Trial.class).orElseThrow();
    List<Reading> values = new ArrayList<>(t.getValues());
    values.addAll(t.getBuild() == null ? List.of() : t.getBuild().getValues());
    t.getLots().forEach(lot -> values.addAll(lot.getValues()));
    return values.stream().filter(v -> variable.equals(v.getVariable())).toList();
  }

  @Test
  void everyValueIsACitedClaimWithItsWords() {
    List<Reading> readings = all(Reading.class);
    assertTrue(readings.size() > 400, "values: " + readings.size());
    for (Reading reading : readings) {
      assertEquals(HowGot.READ_FROM_REPORT, reading.getHow(), reading.getId());
      assertNotNull(reading.getTyped(), reading.getId());
      if (reading instanceof Component) {
        assertNotNull(((Analysis) reading.eContainer()).getCitation(), reading.getId());
      } else {
        assertNotNull(reading.getCitation(), reading.getId());
        assertNotNull(reading.getVerbatim(), reading.getId());
      }
    }
  }

  /** Figures of the Wareham Forge experiment overviews, Markewitz 2021 (warehamforge.ca), read from the pages themselves. */
  @Test
  void publishedSmeltsStandAsPrinted() {
    assertEquals(30.5, of("trial-dm-061", "ore_total").get(0).getValue(), 1e-12);
    assertEquals(0.29, of("trial-dm-061", "base_internal_diameter").get(0).getValue(), 1e-12);
    assertEquals(62, of("trial-dm-061", "charcoal_total").get(0).getValue(), 1e-12);
    assertEquals(1.0 / 60, of("trial-dm-061", "air_flow").get(0).getValue(), 1e-12);
    assertEquals(0.14, of("trial-dm-061", "bloom_per_ore").get(0).getValue(), 1e-12);
  }

  @Test
  void whatContradictsItselfStaysSideBySideAndUnpicked() {
    assertEquals(List.of(0.59, 0.657), of("trial-dm-002", "ore_iron").stream().map(Reading::getValue).toList());
    assertEquals(List.of(15.0, 0.0), of("trial-dm-003", "inlet_angle").stream().map(Reading::getValue).toList());
    assertTrue(all(Reading.class).stream().noneMatch(Reading::isPicked));
  }

  @Test
  void atLeastAndNotWeighedStayWhatTheyAre() {
    Reading charcoal = of("trial-dm-040", "charcoal_total").get(0);
    assertEquals(ValueKind.AT_LEAST, charcoal.getKind());
    assertEquals("38+", charcoal.getTyped());
    Trial bell = session.find("trial-dm-046", Trial.class).orElseThrow();
    assertEquals(ValueKind.NOT_WEIGHED, bell.getPieces().get(0).getValues().get(0).getKind());
  }

  @Test
  void nothingCalculatedIsCopied() {
    List<String> calculated = List.of("ore_to_charcoal", "blast_per_area", "chem_rii");
    assertFalse(all(StagedValue.class).stream().anyMatch(v -> calculated.contains(v.getVariable())));
    assertTrue(all(Analysis.class).stream().filter(a -> a.getTotal() != null)
        .allMatch(a -> a.getCitation().getId().equals("rancie-1838")));
  }

  /** Neumann, Freiberger Forschungshefte D 6, Tabelle 2, no. 1; the oxides give the printed 54.55 % of iron within rounding. */
  @Test
  void anExcavatedSlagStandsAsPrinted() {
    Analysis slag = session.find("analysis-neu-t2-01", Analysis.class).orElseThrow();
    double iron = 0;
    for (Component c : slag.getComponents()) {
      iron += c.getSymbol().equals("FeO") ? 0.7773 * c.getValue() : c.getSymbol().equals("Fe2O3") ? 0.6994 * c.getValue() : 0;
    }
    assertEquals(0.5455, iron, 0.001);
  }
}
