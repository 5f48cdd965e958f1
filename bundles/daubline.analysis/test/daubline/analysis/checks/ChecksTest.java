package daubline.analysis.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Amount;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.Stage;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.base.Variables;
import daubline.model.Analysis;
import daubline.model.Charge;
import daubline.model.ChargeItem;
import daubline.model.Claim;
import daubline.model.Component;
import daubline.model.Context;
import daubline.model.DataFile;
import daubline.model.EvidenceSheet;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.Permission;
import daubline.model.Piece;
import daubline.model.Reading;
import daubline.model.ResidueClass;
import daubline.model.Sample;
import daubline.model.Series;
import daubline.model.Site;
import daubline.model.StagedValue;
import daubline.model.Treatment;
import daubline.model.Trial;
import daubline.model.VariableDefinition;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChecksTest {

  private static final ModelFactory NEW = ModelFactory.eINSTANCE;

  @TempDir
  Path temporary;
  private StudySession session;
  private final EvidenceSheet sheet = NEW.createEvidenceSheet();
  private final Trial trial = NEW.createTrial();
  private final Series series = NEW.createSeries();

  @BeforeEach
  void makeStudy() throws Exception {
    session = StudySession.create(temporary.resolve("study"), "Study");
    session.edit("Fill", () -> {
      Site site = NEW.createSite();
      site.setName("Glen");
      Context context = NEW.createContext();
      context.setName("Phase 1");
      sheet.setName("Furnace 1");
      context.getSheets().add(sheet);
      site.getContexts().add(context);
      session.study().getSites().add(site);
      series.setName("Summer");
      trial.setName("G1");
      trial.setStatus(TrialStatus.PLANNED);
      series.getTrials().add(trial);
      session.study().getSeries().add(series);
    });
  }

  @AfterEach
  void close() {
    session.close();
  }

  private List<String> codesAfter(Runnable change) {
    session.edit("Change", change);
    List<Finding> findings = Checks.run(session);
    findings.forEach(f -> assertFalse(f.remedy().isEmpty() || f.where().isEmpty(), f.toString()));
    return findings.stream().map(Finding::code).distinct().toList();
  }

  private Claim claim(String variable, String typed, String unit) {
    Claim claim = NEW.createClaim();
    claim.setVariable(variable);
    Variables.standard().find(variable).ifPresent(v -> assertTrue(Readings.put(claim, v, typed, unit, DecimalSign.POINT).isEmpty()));
    claim.setBy(session.study().getPeople().isEmpty() ? null : session.study().getPeople().get(0));
    return claim;
  }

  private static <T> T with(T object, Consumer<T> steps) {
    steps.accept(object);
    return object;
  }

  private static <T extends Reading> T mass(T reading, double kilograms) {
    reading.setVariable("bloom_mass");
    Readings.put(reading, Amount.exact(kilograms));
    return reading;
  }

  @Test
  void findsNothingInAPlainStudy() {
    assertEquals(List.of(), codesAfter(() -> { }));
  }

  @Test
  void findsUnitSlipsUnknownVariablesAndChangedNumbers() {
    assertEquals(List.of("value.implausible", "origin.none"), codesAfter(() -> sheet.getClaims().add(claim("base_internal_diameter", "25.5", "m"))));
    assertTrue(codesAfter(() -> sheet.getClaims().add(claim("no_such_thing", "1", ""))).contains("value.variable"));
    assertTrue(codesAfter(() -> sheet.getClaims().get(0).setValue(0.3)).contains("value.differs"));
  }

  @Test
  void namesThePlaceOfAFinding() {
    session.edit("Add", () -> sheet.getClaims().add(claim("base_internal_diameter", "25.5", "m")));
    Finding finding = Checks.run(session).get(0);
    assertEquals("Glen · Phase 1 · Furnace 1", finding.where());
    assertEquals(sheet.getClaims().get(0).getId(), finding.subject());
    assertEquals("base_internal_diameter", finding.variable());
  }

  @Test
  void listsContradictoryClaimsUntilOneIsPickedWithAReason() {
    assertTrue(codesAfter(() -> {
      sheet.getClaims().add(claim("base_internal_diameter", "255", "mm"));
      sheet.getClaims().add(claim("base_internal_diameter", "285", "mm"));
    }).contains("claims.several"));
    List<String> picked = codesAfter(() -> sheet.getClaims().get(0).setPicked(true));
    assertFalse(picked.contains("claims.several"));
    assertTrue(picked.contains("claims.reason"));
    assertFalse(codesAfter(() -> sheet.getClaims().get(0).setPickedBecause("plan is to scale")).contains("claims.reason"));
  }

  @Test
  void onlyOneClaimCanBePicked() {
    codesAfter(() -> {
      sheet.getClaims().add(claim("base_internal_diameter", "255", "mm"));
      sheet.getClaims().add(claim("base_internal_diameter", "285", "mm"));
      sheet.getClaims().add(claim("pit_depth", "200", "mm"));
      sheet.getClaims().forEach(c -> c.setPicked(true));
      sheet.getClaims().forEach(c -> c.setPickedBecause("seen"));
    });
    assertTrue(codesAfter(() -> { }).contains("claims.picks"));
    assertFalse(codesAfter(() -> Readings.pick(sheet.getClaims().get(1), true)).contains("claims.picks"));
    assertFalse(sheet.getClaims().get(0).isPicked());
    assertEquals(null, sheet.getClaims().get(0).getPickedBecause());
    assertTrue(sheet.getClaims().get(1).isPicked() && sheet.getClaims().get(2).isPicked(), "another property is left alone");
    codesAfter(() -> Readings.pick(sheet.getClaims().get(1), false));
    assertFalse(sheet.getClaims().get(1).isPicked());
  }

  @Test
  void findsClaimsAboveTheHeightToWhichTheyCouldBeSeen() {
    Claim zone = claim("vitrified_height", "300", "mm");
    List<String> above = codesAfter(() -> {
      zone.setPreservationLimit(0.21);
      sheet.getClaims().add(zone);
    });
    assertTrue(above.containsAll(List.of("preserved.above", "preserved.reason")), above.toString());
    assertFalse(codesAfter(() -> zone.setLimitBecause("broken off")).contains("preserved.reason"));
    assertFalse(codesAfter(() -> zone.setPreservationLimit(0.4)).contains("preserved.above"));
    Claim pit = claim("pit_depth", "200", "mm");
    assertTrue(codesAfter(() -> {
      pit.setPreservationLimit(0.21);
      sheet.getClaims().add(pit);
    }).contains("preserved.none"));
  }

  @Test
  void findsLabelsThatLookAlike() {
    assertTrue(codesAfter(() -> List.of("S-01", "5-O1").forEach(n -> trial.getSamples().add(with(NEW.createSample(), (Sample s) -> s.setName(n)))))
        .contains("name.alike"));
  }

  @Test
  void findsMassesThatCannotBe() {
    assertTrue(codesAfter(() -> trial.getPieces().add(with(NEW.createPiece(), (Piece whole) -> {
      whole.getValues().add(mass(NEW.createReading(), 4.9));
      whole.getPieces().add(with(NEW.createPiece(), (Piece part) -> part.getValues().add(mass(NEW.createReading(), 5.2))));
    }))).contains("mass.pieces"));
    assertTrue(codesAfter(() -> session.study().getLots().add(with(NEW.createLot(), (Lot lot) -> lot.getTreatments().add(
        with(NEW.createTreatment(), (Treatment t) -> {
          t.setMassIn(50.0);
          t.setMassOut(51.0);
          t.setSigma(0.2);
        }))))).contains("mass.treatment"));
  }

  @Test
  void findsTotalsOffAHundred() {
    assertTrue(codesAfter(() -> sheet.getAnalyses().add(with(NEW.createAnalysis(), (Analysis a) -> {
      a.setTotal(1.08);
      List.of("SiO2", "FeO", "Al2O3", "CaO").forEach(symbol -> a.getComponents().add(with(NEW.createComponent(), (Component c) -> {
        c.setSymbol(symbol);
        Readings.put(c, Amount.exact(0.25));
      })));
    }))).containsAll(List.of("analysis.total", "analysis.sum")));
  }

  /** Elements without their oxygen never add up to a hundred: an ore given as Fe, Mn and SiO2 is not odd. */
  @Test
  void asksNoTotalOfElements() {
    assertEquals(List.of(), codesAfter(() -> sheet.getAnalyses().add(with(NEW.createAnalysis(), (Analysis a) -> {
      a.setIronBasis(IronBasis.FE);
      List.of("Fe", "Mn", "SiO2", "P").forEach(symbol -> a.getComponents().add(with(NEW.createComponent(), (Component c) -> {
        c.setSymbol(symbol);
        Readings.put(c, Amount.exact(0.12));
      })));
    }))));
  }

  @Test
  void wantsRemainsOfFiredTrialsAndStopCriteriaOfReadyOnes() {
    assertTrue(codesAfter(() -> trial.setStatus(TrialStatus.FIRED)).contains("trial.remains"));
    assertTrue(codesAfter(() -> {
      trial.setStatus(TrialStatus.READY);
      trial.setOn("2027-06-12");
      session.study().getPermissions().add(with(NEW.createPermission(), (Permission p) -> p.setValidUntil("2027-05-01")));
    }).containsAll(List.of("trial.stop", "trial.permission")));
    assertTrue(codesAfter(() -> trial.setKind(TrialKind.REPEAT)).contains("trial.repeat"));
  }

  @Test
  void aReasonTurnsWhatStandsAgainstATrialIntoANote() {
    assertTrue(codesAfter(() -> trial.setStatus(TrialStatus.READY)).contains("trial.stop"));
    assertTrue(Checks.run(session).stream().anyMatch(f -> f.code().equals("trial.stop") && f.isError()));
    session.edit("Reason", () -> trial.setReadyBecause("the leader stops by eye"));
    assertTrue(Checks.run(session).stream().anyMatch(f -> f.code().equals("trial.stop") && !f.isError() && f.what().contains("by eye")));
  }

  @Test
  void looksAtRolesHazardsLotsAndTheirWater() {
    assertTrue(codesAfter(() -> series.getRoles().add(NEW.createRoleAssignment())).containsAll(List.of("role.name", "role.missing")));
    assertTrue(codesAfter(() -> session.study().getHazards().add(with(NEW.createHazard(), (daubline.model.Hazard h) -> h.setName("Dust")))).contains("hazard.control"));
    assertTrue(codesAfter(() -> session.study().getLots().add(with(NEW.createLot(), (Lot lot) -> {
      lot.setName("Ore");
      Reading water = NEW.createReading();
      Readings.put(water, Variables.standard().get("ore_moisture"), "12", "%", DecimalSign.POINT);
      lot.getValues().add(water);
    }))).contains("moisture.basis"));
  }

  @Test
  void addsUpTheCharges() {
    assertTrue(codesAfter(() -> {
      StagedValue total = mass(NEW.createStagedValue(), 18);
      total.setVariable("ore_total");
      total.setStage(Stage.AS_FIRED);
      trial.getValues().add(total);
      for (int i = 0; i < 10; i++) {
        Charge charge = NEW.createCharge();
        charge.setElapsed(i == 5 ? 60.0 : 600.0 * i);
        ChargeItem ore = mass(NEW.createChargeItem(), 1.5);
        ore.setMaterial(Material.ORE);
        charge.getItems().add(ore);
        trial.getLog().add(charge);
      }
    }).containsAll(List.of("log.order", "log.total")));
  }

  @Test
  void findsMissingAndOutsideFiles() {
    assertEquals(List.of("file.outside", "file.missing"), codesAfter(() -> List.of("../secret.csv", "logs/none.csv").forEach(path ->
        trial.getFiles().add(with(NEW.createDataFile(), (DataFile f) -> f.setPath(path))))).stream().filter(c -> c.startsWith("file")).toList());
  }

  @Test
  void ownVariablesAndClassesMustBeClear() {
    VariableDefinition variable = NEW.createVariableDefinition();
    assertEquals(List.of("own.name", "own.type", "own.quantity", "own.places", "own.meaning"),
        codesAfter(() -> session.study().getVariables().add(variable)));
    assertEquals(List.of("own.unit", "own.places", "own.range", "own.meaning"), codesAfter(() -> {
      variable.setName("Moss cover");
      variable.setType("number");
      variable.setQuantity("fraction");
      variable.setUnit("mm");
      variable.setStages("remains; attic");
      variable.setLow(1.0);
      variable.setHigh(0.0);
    }));
    assertEquals(List.of("own.words", "own.twin"), codesAfter(() -> {
      variable.setName("Base internal diameter");
      variable.setMeaning("Share of the wall under moss, by eye");
      variable.setType("category");
      variable.setUnit("%");
      variable.setStages("remains; built");
      variable.setLow(0.0);
      variable.setHigh(1.0);
    }));
    assertEquals(List.of(), codesAfter(() -> {
      variable.setName("Moss cover");
      variable.setCategories("bare; green");
    }));
    ResidueClass residue = NEW.createResidueClass();
    residue.setName("Glass");
    assertEquals(List.of("own.definition"), codesAfter(() -> session.study().getResidueClasses().add(residue)));
    assertEquals(List.of(), codesAfter(() -> residue.setDefinition("Clear glass with no crystals")));
  }
}
