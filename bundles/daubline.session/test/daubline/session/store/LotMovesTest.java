package daubline.session.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Amount;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Material;
import daubline.base.MoistureBasis;
import daubline.base.Variables;
import daubline.model.Charge;
import daubline.model.ChargeItem;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.Reading;
import daubline.model.Series;
import daubline.model.Study;
import daubline.model.Treatment;
import daubline.model.Trial;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invented lots; sums that a reader can do on paper. */
class LotMovesTest {

  private static final ModelFactory NEW = ModelFactory.eINSTANCE;

  @TempDir
  Path folder;
  private StudySession session;
  private Study study;
  private Lot raw;
  private Trial trial;

  @BeforeEach
  void fill() throws Exception {
    session = StudySession.create(folder.resolve("study"), "Store");
    study = session.study();
    session.edit("Fill", () -> {
      raw = lot("Ore", 100);
      raw.setMoistureBasis("dry");
      raw.getValues().add(water("25 ± 1"));
      Series series = NEW.createSeries();
      trial = NEW.createTrial();
      trial.setName("T1");
      series.getTrials().add(trial);
      study.getSeries().add(series);
    });
  }

  @AfterEach
  void close() {
    session.close();
  }

  private Lot lot(String name, double delivered) {
    Lot lot = NEW.createLot();
    lot.setName(name);
    lot.setMaterial(Material.ORE);
    Treatment step = NEW.createTreatment();
    step.setStep("deliver");
    step.setMassIn(delivered);
    step.setMassOut(delivered);
    step.setSigma(0.5);
    lot.getTreatments().add(step);
    study.getLots().add(lot);
    return lot;
  }

  private static Reading water(String typed) {
    Reading reading = NEW.createReading();
    assertTrue(Readings.put(reading, Variables.standard().get("ore_moisture"), typed, "%", DecimalSign.POINT).isEmpty());
    return reading;
  }

  private void charge(Lot lot, double mass) {
    session.edit("Charge", () -> {
      Charge charge = NEW.createCharge();
      ChargeItem item = NEW.createChargeItem();
      item.setLot(lot);
      Readings.put(item, Amount.exact(mass));
      charge.getItems().add(item);
      trial.getLog().add(charge);
    });
  }

  private double left(Lot lot) {
    return LotMass.of(study, lot).orElseThrow().left().value();
  }

  private List<String> codes() {
    return study.getLots().stream().flatMap(l -> LotFindings.of(study, l).stream()).map(Finding::code).distinct().toList();
  }

  private List<Lot> split(String text) {
    List<Lot> made = new java.util.ArrayList<>();
    session.edit("Split", () -> made.addAll(LotMoves.split(study, raw, LotMoves.read(text, DecimalSign.POINT).parts(), "2031-04-07", 0.5)));
    return made;
  }

  @Test
  void partsKeepTheMassOfTheWholeAndLeadBackToTheDelivery() {
    String before = session.digest();
    charge(raw, 10);
    List<Lot> parts = split("May: 40 kg\nJune: 30000 g");
    assertEquals(20, left(raw), 1e-9, "100 − 10 charged − 40 − 30");
    assertEquals(40, left(parts.get(0)), 1e-9);
    assertEquals(30, left(parts.get(1)), 1e-9);
    assertEquals(List.of(raw), LotTrace.deliveries(parts.get(1)));
    assertEquals("ore_moisture", parts.get(0).getValues().get(0).getVariable());
    assertEquals("dry", parts.get(0).getMoistureBasis());
    charge(parts.get(0), 12);
    assertEquals(28, left(parts.get(0)), 1e-9);
    List<LotTrace.Line> trace = LotTrace.of(study, raw);
    assertTrue(trace.stream().anyMatch(l -> l.kind() == LotTrace.Kind.TRIAL && l.depth() == 2 && l.mass().orElseThrow().value() == 12), trace.toString());
    assertEquals(List.of(), codes());
    split("July: 15 kg");
    assertEquals(5, left(raw), 1e-9);
    assertEquals(List.of(), codes(), "two splits of one day add up too");
    while (!session.digest().equals(before)) {
      session.undo();
    }
    assertEquals(1, study.getLots().size());
  }

  @Test
  void whatIsNotThereCannotBeSplitOff() {
    assertEquals("split.more", LotMoves.refusal(study, raw, List.of(new LotMoves.Part("May", 102)), 0.5).map(Finding::code).orElse(""));
    assertEquals(Optional.empty(), LotMoves.refusal(study, raw, List.of(new LotMoves.Part("May", 101)), 0.5), "within two standard uncertainties");
    assertEquals("lot.twice", LotMoves.refusal(study, raw, List.of(new LotMoves.Part("Ore", 10)), 0.5).map(Finding::code).orElse(""));
    assertEquals("split.part", LotMoves.read("May 40 kg", DecimalSign.POINT).complaint().map(Finding::code).orElse(""));
    assertEquals("split.part", LotMoves.read("May: -4 kg", DecimalSign.POINT).complaint().map(Finding::code).orElse(""));
    assertThrows(IllegalArgumentException.class, () -> split("May: 140 kg"));
  }

  @Test
  void aPartWeighedAnewThatDoesNotAddUpIsFlagged() {
    List<Lot> parts = split("May: 40 kg");
    session.edit("Weigh", () -> parts.get(0).getTreatments().get(0).setMassOut(35.0));
    assertEquals(List.of("lot.split"), codes());
    session.edit("Loss", () -> raw.getTreatments().get(1).setLost(5.0));
    assertEquals(List.of(), codes(), "a stated loss mends it");
    charge(raw, 80);
    assertEquals(List.of("lot.overdrawn"), codes());
  }

  @Test
  void lotsPutTogetherGiveAllThatIsLeft() {
    Lot[] more = new Lot[2];
    session.edit("Second", () -> more[0] = lot("Ore of March", 50));
    charge(raw, 10);
    session.edit("Merge", () -> more[1] = LotMoves.merge(study, List.of(raw, more[0]), "Season", 139.5, "2031-05-01", 0.5));
    Lot made = more[1];
    assertEquals(139.5, left(made), 1e-9);
    assertEquals(140, made.getTreatments().get(0).getMassIn(), 1e-9);
    assertEquals(0, left(raw), 1e-9);
    assertEquals(0, left(more[0]), 1e-9);
    assertEquals(2, LotTrace.deliveries(made).size());
    assertTrue(made.getValues().isEmpty(), "the two do not say the same water");
    assertEquals(List.of(), codes());
    session.edit("Weigh", () -> made.getTreatments().get(0).setMassIn(160.0));
    assertEquals(List.of("lot.merge"), codes());
    assertEquals("merge.unweighed", LotMoves.refusal(study, List.of(raw, made), "Again").map(Finding::code).orElse(""));
  }

  @Test
  void waterCountsOnTheStatedBasisOnly() {
    assertEquals(0.20, LotMoisture.of(raw).orElseThrow().wet(), 1e-12, "25 % of the dry mass are 20 % of the moist");
    assertEquals(0.20, LotMoisture.amount(raw.getValues().get(0)).orElseThrow().value(), 1e-12);
    assertEquals(80, LotMoisture.dryMass(raw).orElseThrow().value(), 1e-9);
    session.edit("Basis", () -> raw.setMoistureBasis("wet"));
    assertEquals(75, LotMoisture.dryMass(raw).orElseThrow().value(), 1e-9);
    session.edit("Basis", () -> raw.setMoistureBasis(null));
    assertFalse(LotMoisture.of(raw).isPresent() || LotMoisture.dryMass(raw).isPresent() || LotMoisture.amount(raw.getValues().get(0)).isPresent());
    assertEquals("moisture.basis", LotMoisture.finding(raw).map(Finding::code).orElse(""));
    session.edit("Too much", () -> {
      raw.setMoistureBasis(MoistureBasis.WET.word());
      raw.getValues().set(0, water("120"));
    });
    assertEquals("moisture.share", LotMoisture.finding(raw).map(Finding::code).orElse(""));
  }

  @Test
  void sieveBandsMakeTheWhole() {
    Treatment sieving = NEW.createTreatment();
    session.edit("Sieve", () -> {
      sieving.setStep("sieve");
      sieving.setMassIn(100.0);
      sieving.setMassOut(80.0);
      sieving.setSigma(0.5);
      raw.getTreatments().add(sieving);
      for (double mass : new double[] {80, 15}) {
        var band = NEW.createSizeBand();
        Readings.put(band, Amount.exact(mass));
        sieving.getBands().add(band);
      }
    });
    assertEquals("mass.bands", LotFindings.of(sieving).map(Finding::code).orElse(""), "5 kg are in no band");
    session.edit("Fines", () -> Readings.put(sieving.getBands().get(1), Amount.exact(19.5)));
    assertEquals(Optional.empty(), LotFindings.of(sieving));
  }

  @Test
  void aBoundOfWaterIsNotItsValue() {
    for (String bound : java.util.List.of("< 5", "at least 5", "at most 5")) {
      session.edit("Bound", () -> {
        raw.setMoistureBasis(MoistureBasis.WET.word());
        raw.getValues().set(0, water(bound));
      });
      assertFalse(LotMoisture.of(raw).isPresent() || LotMoisture.dryMass(raw).isPresent() || LotMoisture.amount(raw.getValues().get(0)).isPresent(), bound);
      assertEquals("moisture.bound", LotMoisture.finding(raw).map(Finding::code).orElse(""), bound);
    }
  }

  @Test
  void aLotMadeOfItselfIsFlagged() {
    session.edit("Round", () -> raw.getFrom().add(raw));
    assertTrue(codes().contains("lot.round"), codes().toString());
    assertEquals(List.of(raw), daubline.session.store.LotTrace.deliveries(raw));
  }

}
