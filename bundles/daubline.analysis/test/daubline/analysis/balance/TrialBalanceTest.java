package daubline.analysis.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.forecast.TrialForecast;
import daubline.base.DecimalSign;
import daubline.base.Material;
import daubline.base.Stage;
import daubline.base.TrialStatus;
import daubline.base.Variables;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.balance.ElementBalance;
import daubline.model.Analysis;
import daubline.model.Charge;
import daubline.model.ChargeItem;
import daubline.model.Component;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.Series;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrialBalanceTest {

  private static final ModelFactory NEW = ModelFactory.eINSTANCE;

  @TempDir
  Path temporary;
  private StudySession session;
  private final Trial trial = NEW.createTrial();

  @BeforeEach
  void makeStudy() throws Exception {
    session = StudySession.create(temporary.resolve("study"), "Study");
    session.edit("Fill", () -> {
      Series series = NEW.createSeries();
      trial.setName("B1");
      trial.setStatus(TrialStatus.RECORDED);
      series.getTrials().add(trial);
      session.study().getSeries().add(series);
    });
  }

  @AfterEach
  void close() {
    session.close();
  }

  private void put(String variable, String typed, String unit) {
    session.edit("Put", () -> {
      StagedValue value = NEW.createStagedValue();
      value.setStage(Stage.AS_FIRED);
      assertTrue(Readings.put(value, Variables.standard().get(variable), typed, unit, DecimalSign.POINT).isEmpty(), variable);
      trial.getValues().add(value);
    });
  }

  private static Analysis analysis(Material material, Object... parts) {
    Analysis analysis = NEW.createAnalysis();
    analysis.setName(material.word());
    analysis.setMaterial(material);
    for (int i = 0; i < parts.length; i += 2) {
      Component component = NEW.createComponent();
      component.setSymbol((String) parts[i]);
      Readings.put(component, daubline.base.Amount.exact(((Number) parts[i + 1]).doubleValue() / 100));
      analysis.getComponents().add(component);
    }
    return analysis;
  }

  /** 100 kg of ore with 10 % SiO2 and 56 % Fe give slag with 25 % SiO2 and 62 % FeO: 40.0 kg slag, 36.72 kg metal (arithmetic). */
  private void smelt(double slagMass) {
    put("base_internal_diameter", "60", "cm");
    put("air_flow", "2000", "L/min");
    put("ore_total", "100", "kg");
    put("charcoal_total", "150", "kg");
    put("ore_moisture", "0", "%");
    put("lining_mass_lost", "0", "kg");
    put("charcoal_ash", "0", "%");
    put("bloom_mass", "36.72", "kg");
    put("iron_made", "36.72", "kg");
    put("tapped_slag_mass", String.valueOf(slagMass), "kg");
    put("furnace_slag_mass", "0.001", "kg");
    session.edit("Analyse", () -> {
      Lot lot = NEW.createLot();
      lot.setName("Ore");
      lot.setMaterial(Material.ORE);
      lot.getAnalyses().add(analysis(Material.ORE, "Fe2O3", 80.07, "SiO2", 10));
      session.study().getLots().add(lot);
      trial.getLots().add(lot);
      trial.getAnalyses().add(analysis(Material.SLAG, "FeO", 62, "SiO2", 25));
    });
  }

  private TrialBalance balance() {
    return TrialBalance.of(session, List.of(), 50, 1).get(0);
  }

  private static ElementBalance element(TrialBalance balance, String element) {
    return balance.elements().stream().filter(e -> e.element().equals(element)).findFirst().orElseThrow();
  }

  private static ChargeItem item(Material material, double mass) {
    ChargeItem item = NEW.createChargeItem();
    item.setMaterial(material);
    Readings.put(item, daubline.base.Amount.exact(mass));
    return item;
  }

  @Test
  void whatTheLogChargedCountsWhereNoTotalIsStated() {
    smelt(40);
    ElementBalance stated = element(balance(), "Fe");
    session.edit("Log", () -> {
      trial.getValues().removeIf(v -> v.getVariable().equals("ore_total") || v.getVariable().equals("charcoal_total"));
      for (int i = 0; i < 4; i++) {
        Charge charge = NEW.createCharge();
        charge.setKind("charge");
        charge.getItems().add(item(Material.ORE, 25));
        charge.getItems().add(item(Material.CHARCOAL, 37.5));
        trial.getLog().add(charge);
      }
    });
    assertEquals(stated.in(), element(balance(), "Fe").in(), 1e-9);
    session.edit("Not over", () -> trial.setStatus(TrialStatus.READY));
    assertTrue(balance().elements().isEmpty(), "what was charged so far is no total before the fire is over");
  }

  /** 130 kg were planned and 100 kg charged: the 100 kg are balanced, and the recovery is 36.72 kg of 56 kg. */
  @Test
  void whatWasChargedCountsNotWhatWasPlanned() {
    smelt(40);
    ElementBalance stated = element(balance(), "Fe");
    session.edit("Plan", () -> {
      StagedValue planned = NEW.createStagedValue();
      planned.setStage(Stage.PLANNED);
      planned.setVariable("ore_total");
      Readings.put(planned, daubline.base.Amount.exact(130));
      trial.getValues().add(planned);
    });
    assertEquals(stated.in(), element(balance(), "Fe").in(), 1e-9);
    TrialForecast forecast = TrialForecast.of(session, List.of(), 0, 1).get(0);
    assertEquals(0.656, forecast.outcome(BurnQuantity.RECOVERY).orElseThrow().value(), 0.001);
  }

  @Test
  void theTextbookSmeltClosesAndItsTracerGivesTheSlag() {
    smelt(40);
    TrialBalance b = balance();
    assertEquals(40.0, b.tracers().stream().filter(t -> t.oxide().equals("SiO2")).findFirst().orElseThrow().slag(), 0.01);
    assertEquals(0, element(b, "Fe").remainder(), 0.05);
    assertTrue(element(b, "Fe").closes() && element(b, "SiO2").closes());
    assertEquals(0.656, b.yields().stream().filter(y -> y.yield().label().equals("iron recovery")).findFirst().orElseThrow().value(), 0.001);
    assertTrue(b.yields().stream().allMatch(y -> !y.yield().formula().isBlank()));
  }

  @Test
  void theSlagAnalysedIsJudgedInTheHeat() {
    smelt(40);
    TrialBalance.HotSlag slag = balance().slag().orElseThrow();
    double hottest = TrialForecast.of(session, List.of(), 0, 1).get(0).get(BurnQuantity.HOTTEST).orElseThrow().central();
    assertEquals(hottest, slag.celsius(), 1e-9);
    assertEquals(daubline.engine.process.slag.ViscosityModel.SHAW.of(daubline.engine.process.balance.Analysis.ofPercent(daubline.engine.process.balance.Oxide.FEO, 62,
        daubline.engine.process.balance.Oxide.SIO2, 25), hottest + 273.15), slag.behaviour().viscosity().get(daubline.engine.process.slag.ViscosityModel.SHAW), 1e-9);
    // 62 FeO to 25 SiO2 is all but fayalite, which melts at 1205 °C (Bowen & Schairer 1932)
    assertEquals(1205, slag.behaviour().liquidus().temperature() - 273.15, 40);
    assertTrue(slag.phases().startsWith("fayalitic olivine 97 %, wüstite"), slag.phases());
    assertEquals(daubline.engine.process.slag.ViscosityModel.values().length, slag.behaviour().viscosity().size());
  }

  @Test
  void whatWasNotWeighedStaysARemainder() {
    smelt(25);
    TrialBalance b = balance();
    assertEquals(15 * .25, element(b, "SiO2").remainder(), 0.05);
    assertTrue(b.findings().stream().anyMatch(f -> f.code().equals("balance.open") && f.what().contains("SiO2")), b.findings().toString());
  }

  @Test
  void tooFewOxidesForTheBackwardBalanceAreSaid() {
    smelt(40);
    TrialBalance b = balance();
    assertTrue(b.sources().isEmpty());
    assertTrue(b.findings().stream().anyMatch(f -> f.code().equals("balance.apportion")), b.findings().toString());
  }

  @Test
  void anEmptyTrialHasFindingsAndNothingElse() {
    TrialBalance b = balance();
    assertTrue(b.forward().isEmpty() && b.elements().isEmpty() && b.yields().isEmpty());
    assertTrue(b.findings().stream().anyMatch(f -> f.code().equals("forecast.missing")));
  }
}
