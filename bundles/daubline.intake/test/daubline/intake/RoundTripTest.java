package daubline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Stage;
import daubline.base.ValueKind;
import daubline.base.Variables;
import daubline.intake.PreviewRow.State;
import daubline.model.Analysis;
import daubline.model.Charge;
import daubline.model.Claim;
import daubline.model.Component;
import daubline.model.Incident;
import daubline.model.LogEntry;
import daubline.model.Reading;
import daubline.model.ResidueMass;
import daubline.model.Sheet;
import daubline.model.Trial;
import daubline.session.StudySession;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * From the empty table to the study and back again: what is imported twice changes nothing, and undo takes all of it
 * back. Data invented unless said.
 */
class RoundTripTest {

  @TempDir
  Path folder;

  /** Fills every column of a template with its own example, so that each column is shown to be read. */
  private static Map<String, String> examples(Target target) {
    Map<String, String> row = new HashMap<>();
    for (FormColumn column : Forms.of(target).template(Variables.standard())) {
      row.put(column.heading(), column.example());
    }
    row.keySet().removeAll(List.of("id", "repeat_of", "reconstruction"));
    row.replaceAll((heading, text) -> switch (heading) {
      case "trial" -> target == Target.CLAIMS || target == Target.RESIDUES || target == Target.ANALYSES ? "" : "T1";
      case "lot", "sample", "replicate", "excluded_because", "preservation_limit [mm]" -> "";
      case "lots", "ore_lot", "from" -> "Bog ore";
      case "charcoal_lot", "flux_lot" -> "Oak charcoal";
      case "kind" -> target == Target.CLAIMS ? "" : text;
      case "uncertainty" -> "";
      case "duration [min]", "effect" -> "";
      default -> text;
    });
    return row;
  }

  @ParameterizedTest
  @EnumSource(Target.class)
  void templateFilledImportedAndImportedAgain(Target target) throws Exception {
    for (String ending : List.of(".csv", ".xlsx")) {
      Path dir = Files.createDirectories(folder.resolve(target.word() + ending));
      Path file = dir.resolve("table" + ending);
      List<Path> written = Intake.template(target, file);
      assertEquals(ending.equals(".csv") ? 2 : 1, written.size());
      fill(file, examples(target));
      try (StudySession session = Studies.withTrials(dir)) {
        Map<String, String> before = Studies.saved(session);
        Preview first = Studies.take(session, file, target);
        assertEquals(List.of(), first.unreadColumns());
        assertEquals(1, first.count(State.ADDED), first.findings().toString());
        Map<String, String> after = Studies.saved(session);
        Preview again = Studies.take(session, file, target);
        assertEquals(1, again.count(State.UNCHANGED), again.rows().toString());
        assertEquals(after, Studies.saved(session));
        session.undo();
        assertEquals(before, Studies.saved(session));
        session.redo();
        assertEquals(after, Studies.saved(session));
      }
    }
  }

  private static void fill(Path file, Map<String, String> row) throws Exception {
    if (file.toString().endsWith(".csv")) {
      String header = Files.readString(file).strip();
      List<String> cells = new ArrayList<>();
      for (String heading : header.replace("\uFEFF", "").split(",")) {
        cells.add("\"" + row.getOrDefault(heading, "") + "\"");
      }
      Files.writeString(file, header + "\n" + String.join(",", cells) + "\n");
      return;
    }
    try (InputStream in = Files.newInputStream(file); XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      Row filled = sheet.createRow(1);
      for (int i = 0; i < sheet.getRow(0).getLastCellNum(); i++) {
        String text = row.getOrDefault(sheet.getRow(0).getCell(i).getStringCellValue(), "");
        if (text.matches("\\d+(\\.\\d+)?")) {
          filled.createCell(i).setCellValue(Double.parseDouble(text));
        } else {
          filled.createCell(i).setCellValue(text);
        }
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
    }
  }

  @Test
  void everyTargetHasAFormAndEveryColumnIsExplained() {
    for (Target target : Target.values()) {
      Form form = Forms.of(target);
      assertTrue(form.explanation().length() > 40);
      for (FormColumn column : form.columns(Variables.standard())) {
        assertFalse(column.meaning().isBlank(), target + " " + column.id());
        assertEquals(column.id(), form.column(Heading.of(column.heading()), Variables.standard()).orElseThrow().id());
      }
    }
    assertEquals(Target.values().length, Forms.all().size());
  }

  @Test
  void aTemplateNeverOverwritesAFile() throws Exception {
    Path file = Files.writeString(folder.resolve("mine.csv"), "precious");
    assertThrows(IntakeException.class, () -> Intake.template(Target.LOTS, file));
    assertEquals("precious", Files.readString(file));
    assertThrows(IntakeException.class, () -> Intake.template(Target.LOTS, folder.resolve("table.ods")));
  }

  @Test
  void oneBadRowKeepsAllOut() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      String digest = session.digest();
      Preview preview = Intake.preview(session, Books.csv(folder, "in.csv", "trial,class,mass [kg]", "T1,Tapped slag,4",
          "T9,Tapped slag,5"),
          Target.RESIDUES, IntakeOptions.none());
      assertEquals(1, preview.count(State.ADDED));
      assertEquals(1, preview.count(State.FAULTY));
      assertThrows(IntakeException.class, () -> preview.apply(session));
      assertEquals(digest, session.digest());
      assertFalse(session.isDirty());
    }
  }

  @Test
  void aPreviewThatTheStudyOutranIsTakenBackWhole() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Preview preview = Intake.preview(session, Books.csv(folder, "in.csv", "trial,class,mass [kg]", "T1,Tapped slag,4",
          "T2,Tapped slag,5"),
          Target.RESIDUES, IntakeOptions.none());
      session.delete("Delete T2", List.of(session.study().getSeries().get(0).getTrials().get(1)));
      String digest = session.digest();
      IntakeException e = assertThrows(IntakeException.class, () -> preview.apply(session));
      assertEquals("trial.unknown", e.findings().get(0).code());
      assertEquals(digest, session.digest());
    }
  }

  @Test
  void aChangedRowUpdatesAndSaysWhatItChanges() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Studies.take(session, Books.csv(folder, "a.csv", "series,name,built:wall_thickness [mm]", "Season 2031,T1,80"),
          Target.TRIALS);
      Preview preview = Studies.take(session, Books.csv(folder, "b.csv", "series,name,built:wall_thickness [cm]",
          "Season 2031,T1,9"), Target.TRIALS);
      assertEquals(State.UPDATED, preview.rows().get(0).state());
      assertEquals(List.of("wall_thickness: 80 mm → 9 cm"), preview.rows().get(0).changes());
      Trial trial = session.study().getSeries().get(0).getTrials().get(0);
      assertEquals(1, trial.getValues().size());
      assertEquals(0.09, trial.getValues().get(0).getValue(), 1e-15);
      assertEquals(Stage.AS_BUILT, trial.getValues().get(0).getStage());
      Preview same = Studies.take(session, Books.csv(folder, "c.csv", "series,name,built:wall_thickness [mm]",
          "Season 2031,T1,90.0"), Target.TRIALS);
      assertEquals(State.UNCHANGED, same.rows().get(0).state(), "90 mm are 9 cm");
      assertEquals("Import trials from b.csv", session.undoLabel().orElseThrow());
    }
  }

  @Test
  void contradictoryClaimsStandSideBySide() throws Exception {
    try (StudySession session = Studies.fresh(folder)) {
      String head = "site,sheet,variable,value,unit,citation,page";
      Studies.take(session, Books.csv(folder, "a.csv", head, "Hollin Beck,F1,base_internal_diameter,26,cm,dale-1998,p. 4"),
          Target.CLAIMS);
      Preview beside = Studies.take(session, Books.csv(folder, "b.csv", head,
          "Hollin Beck,F1,base_internal_diameter,31,cm,dale-1998,p. 4",
          "Hollin Beck,F1,surviving_height,38+,cm,dale-1998,p. 4",
          "Hollin Beck,F1,tapped_slag,not looked for,,dale-1998,p. 4"), Target.CLAIMS);
      assertEquals(3, beside.count(State.ADDED));
      assertEquals("claim.beside", Studies.finding(beside, "claim.beside").code());
      Sheet sheet = session.study().getSites().get(0).getContexts().get(0).getSheets().get(0);
      assertEquals(4, sheet.getClaims().size());
      assertEquals(List.of(0.26, 0.31), sheet.getClaims().stream().limit(2)
          .map(c -> Math.round(c.getValue() * 1000) / 1000.0).toList());
      assertEquals(ValueKind.AT_LEAST, sheet.getClaims().get(2).getKind());
      assertEquals(ValueKind.NOT_LOOKED_FOR, sheet.getClaims().get(3).getKind());
      Claim first = sheet.getClaims().get(0);
      Preview corrected = Studies.take(session, Books.csv(folder, "c.csv", "id," + head, first.getId()
          + ",Hollin Beck,F1,base_internal_diameter,27,cm,dale-1998,p. 4"),
          Target.CLAIMS);
      assertEquals(State.UPDATED, corrected.rows().get(0).state());
      assertEquals(4, sheet.getClaims().size());
      assertEquals(0.27, first.getValue(), 1e-12);
    }
  }

  @Test
  void kindsAndUncertaintyInColumnsOfTheirOwn() throws Exception {
    try (StudySession session = Studies.fresh(folder)) {
      Studies.take(session, Books.csv(folder, "a.csv",
          "site,sheet,variable,value,uncertainty,unit,kind,sampling_fraction,confidence,reader,"
              + "verbatim,page,preservation_limit [mm]",
          "B,F1,surviving_height,38,,cm,at least,,high,M. Thorne,survives to 0.38 m,12,400",
          "B,F1,base_internal_diameter,255,10,mm,±,,,,,,",
          "B,F1,residue_total,31,,kg,,50 %,,,,,", "B,F1,inlet_bore,,,,not preserved,,,,,,"), Target.CLAIMS);
      List<Claim> claims = session.study().getSites().get(0).getContexts().get(0).getSheets().get(0).getClaims();
      assertEquals(ValueKind.AT_LEAST, claims.get(0).getKind());
      assertEquals("M. Thorne", claims.get(0).getBy().getName());
      assertFalse(claims.get(0).getBy().isMayPublishName());
      assertEquals(0.4, claims.get(0).getPreservationLimit(), 1e-12);
      assertEquals(0.01, claims.get(1).getSigma(), 1e-12);
      assertEquals(0.5, claims.get(2).getSamplingFraction(), 1e-12);
      assertEquals(ValueKind.NOT_PRESERVED, claims.get(3).getKind());
      assertNull(claims.get(3).getValue());
    }
  }

  /**
   * Neumann B., Freiberger Forschungshefte D 6, table 2, slags 1, 6 and 10, as printed; the sums are those printed there.
   */
  @Test
  void publishedSlagsWithTracesAndDashes() throws Exception {
    try (StudySession session = Studies.fresh(folder)) {
      Path file = Books.csv(folder, "neumann.csv",
          "site;sheet;name;material;iron_basis;FeO [wt%];Fe2O3 [wt%];MnO;Al2O3;CaO;MgO;SiO2;Fe [%]",
          "Noreia;Heap;1;slag;FeO and Fe2O3;48,26;24,29;1,29;3,65;2,13;0,90;14,78;54,55",
          "Siegerland;Heap;6;slag;FeO and Fe2O3;52,94;3,99;7,55;4,35;2,00;tr;28,20;43,80",
          "Alps;Heap;10;slag;FeO and Fe2O3;51,70;–;2,90;4,30;2,60;9,20;29,10;40,17");
      Preview preview = Studies.take(session, file, Target.ANALYSES);
      assertEquals(3, preview.count(State.ADDED), preview.findings().toString());
      Analysis noreia = session.study().getSites().get(0).getContexts().get(0).getSheets().get(0).getAnalyses().get(0);
      assertEquals(0.955, noreia.getComponents().stream()
          .filter(c -> !c.getSymbol().equals("Fe")).mapToDouble(Component::getValue).sum(), 0.003);
      assertEquals(ValueKind.TRACE, component(session, 1, "MgO").getKind());
      assertEquals(ValueKind.NOT_RECORDED, component(session, 2, "Fe2O3").getKind());
      assertEquals("lab/neumann.csv", noreia.getFile().getPath());
      assertEquals(Files.readString(file), Files.readString(session.folder().resolve("lab/neumann.csv")));
      assertEquals(1, session.study().getFiles().size());
    }
  }

  /**
   * Young T.P. 2013, GeoArch Report 2013/11, abstract: classes of residue at Dwr-y-Felin School, Neath, of about 31 kg in
   * all, 26.4 kg of them from stratified Roman contexts.
   */
  @Test
  void publishedResidueMasses() throws Exception {
    try (StudySession session = Studies.fresh(folder)) {
      Path file = Books.csv(folder, "neath.csv", "site,context,sheet,class,mass [kg],citation,page,how,verbatim",
          "Neath,Roman,All residues,Smithing hearth cake,15.8,young-2013,abstract,read from report,",
          "Neath,Roman,All residues,Gravelly lining slag,6.9,young-2013,abstract,read from report,",
          "Neath,Roman,All residues,vitrified_lining,2.6,young-2013,abstract,read from report,",
          "Neath,Roman,All residues,Charcoal,not weighed,young-2013,abstract,,");
      Preview preview = Studies.take(session, file, Target.RESIDUES);
      assertEquals(4, preview.count(State.ADDED));
      assertEquals(List.of("citation.new"), Studies.codes(preview), "said once, in the row that brings it");
      List<ResidueMass> masses = session.study().getSites().get(0).getContexts().get(0).getSheets().get(0).getResidues();
      assertEquals(25.3, masses.stream().filter(m -> m.getValue() != null).mapToDouble(Reading::getValue).sum(), 1e-9);
      assertEquals(ValueKind.NOT_WEIGHED, masses.get(3).getKind());
      assertEquals("young-2013", session.study().getCitations().get(0).getId());
      assertEquals(List.of("smithing_cake", "lining_slag", "vitrified_lining", "charcoal"), masses.stream()
          .map(m -> m.getResidueClass().getId()).toList());
    }
  }

  private static Component component(StudySession session, int site, String symbol) {
    return session.study().getSites().get(site).getContexts().get(0).getSheets().get(0).getAnalyses().get(0).getComponents()
        .stream()
        .filter(c -> c.getSymbol().equals(symbol)).findFirst().orElseThrow();
  }

  @Test
  void fiveKindsOfNothingStayFiveThings() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Studies.take(session, Books.csv(folder, "lab.csv", "trial,name,SiO2,TiO2,SO3,P2O5,BaO,V2O5,K2O,Cr [ppm]",
          "T1,a,24.1,<0.05,n.a.,n.d.,tr,0,–,120"), Target.ANALYSES);
      Analysis analysis = session.study().getSeries().get(0).getTrials().get(0).getAnalyses().get(0);
      assertEquals(List.of(ValueKind.EXACT, ValueKind.BELOW_LIMIT, ValueKind.NOT_ANALYSED, ValueKind.NOT_DETECTED,
          ValueKind.TRACE, ValueKind.EXACT,
          ValueKind.NOT_RECORDED, ValueKind.EXACT), analysis.getComponents().stream().map(Component::getKind).toList());
      assertEquals(5e-4, analysis.getComponents().get(1).getHigh(), 1e-15);
      assertEquals(0, analysis.getComponents().get(5).getValue());
      assertEquals(1.2e-4, analysis.getComponents().get(7).getValue(), 1e-15);
    }
  }

  @Test
  void aLaboratorysOwnTableIsMappedOnceAndKept() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      IntakeOptions mapping = IntakeOptions.none().with("column:Probe", "name").with("column:Summe", "total")
          .with("column:Bem.", "-").with("unit:*", "wt%")
          .with("set:trial", "T1").with("set:material", "slag").with("set:laboratory", "Ovenby University")
          .with("set:iron_basis", "all iron as FeO")
          .with("save", "Ovenby XRF");
      Path file = Books.csv(folder, "r1.csv", "Ovenby;Bericht 7", "", "Probe;SiO₂;FeO(t);Al2O3;Summe;Bem.",
          "T1-a;24,10;61,3;5,2;99,1;gut");
      Preview preview = Intake.preview(session, file, Target.ANALYSES, mapping);
      assertTrue(preview.canApply(), preview.findings().toString());
      assertEquals(List.of("Bem."), preview.unreadColumns());
      preview.apply(session);
      Map<String, String> saved = Studies.saved(session);
      Intake.preview(session, file, Target.ANALYSES, mapping).apply(session);
      assertEquals(saved, Studies.saved(session));
      Path next = Books.csv(folder, "r2.csv", "Ovenby;Bericht 8", "", "Probe;SiO₂;FeO(t);Al2O3;Summe;Bem.",
          "T1-b;25,00;60,1;5,9;98,4;");
      Preview second = Intake.preview(session, next, Target.ANALYSES, IntakeOptions.none().with("mapping", "Ovenby XRF"));
      second.apply(session);
      List<Analysis> analyses = session.study().getSeries().get(0).getTrials().get(0).getAnalyses();
      assertEquals(2, analyses.size());
      assertEquals("Ovenby University", analyses.get(1).getLaboratory());
      assertEquals(0.984, analyses.get(1).getTotal(), 1e-12);
      assertEquals("98,4", analyses.get(1).getTotalTyped());
      assertEquals("mapping.unknown", Studies.finding(Intake.preview(session, next, Target.ANALYSES, IntakeOptions.none()
          .with("mapping", "Ovenby")), "mapping.unknown").code());
    }
  }

  @Test
  void oneRowAComponent() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Path file = Books.csv(folder, "long.csv", "trial,Sample,Component,wt%", "T1,a,SiO2,21.32", "T1,a,FeO,64.13",
          "T1,a,Total,99.91", "T1,b,SiO2,22.99");
      Preview preview = Intake.preview(session, file, Target.ANALYSES, IntakeOptions.none().with("column:Sample", "name")
          .with("column:wt%", "value").with("set:iron_basis", "all iron as FeO"));
      preview.apply(session);
      List<Analysis> analyses = session.study().getSeries().get(0).getTrials().get(0).getAnalyses();
      assertEquals(List.of(2, 1), analyses.stream().map(a -> a.getComponents().size()).toList());
      assertEquals(0.9991, analyses.get(0).getTotal(), 1e-12);
    }
  }

  @Test
  void chargesIncidentsAndSensorStates() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Studies.take(session, Books.csv(folder, "log.csv",
          "trial,time,elapsed [min],kind,text,ore_count,ore_measure [kg],charge_mass_ore [kg],charge_mass_charcoal "
          + "[lb],ore_lot,temperature_mid_shaft [°F],duration [min],effect,late",
          "T1,10:05,65,charge,,3,0.5 ± 0.01,,4,Bog ore,,,,", "T1,10:10,,temperature,,,,,,,open,,,",
          "T1,10:20,,temperature,,,,,,,1832,,,", "T1,10:30,,incident,blower stopped,,,,,,,12,half blast,yes"), Target.LOG);
      List<LogEntry> log = session.study().getSeries().get(0).getTrials().get(0).getLog();
      Charge charge = (Charge) log.get(0);
      assertEquals("2031-05-10T10:05:00", charge.getAt());
      assertEquals(1.5, charge.getItems().get(0).getValue(), 1e-12);
      assertEquals(0.03, charge.getItems().get(0).getSigma(), 1e-12);
      assertEquals(3, charge.getItems().get(0).getCount());
      assertEquals(0.5, charge.getItems().get(0).getUnitMass());
      assertEquals(3900, charge.getElapsed(), 1e-9);
      assertEquals(4 * 0.45359237, charge.getItems().get(1).getValue(), 1e-12);
      assertEquals("Bog ore", charge.getItems().get(0).getLot().getName());
      assertEquals(ValueKind.TEXT, log.get(1).getValues().get(0).getKind());
      assertEquals("open", log.get(1).getValues().get(0).getCategory());
      assertEquals(1000, log.get(2).getValues().get(0).getValue(), 1e-9);
      assertEquals(720, ((Incident) log.get(3)).getDuration(), 1e-9);
      assertTrue(log.get(3).isLate());
    }
  }

  @Test
  void implausibleValuesAreTakenOverAndSaid() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Preview preview = Studies.take(session, Books.csv(folder, "in.csv", "series,name,built:wall_thickness [mm]",
          "Season 2031,T1,8"), Target.TRIALS);
      assertEquals(List.of("value.implausible"), Studies.codes(preview));
      assertTrue(Studies.finding(preview, "value.implausible").remedy().contains("cm"));
    }
  }

  @Test
  void percentCellsOfAWorkbook() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Path file = Books.xlsx(folder, "in.xlsx", List.of(List.of("series", "name", "fired:charcoal_moisture [%]"),
          List.of("Season 2031", "T1", 0.085)), sheet -> {
        CellStyle percent = sheet.getWorkbook().createCellStyle();
        percent.setDataFormat((short) 10);
        sheet.getRow(1).getCell(2).setCellStyle(percent);
      });
      Studies.take(session, file, Target.TRIALS);
      assertEquals(0.085, session.study().getSeries().get(0).getTrials().get(0).getValues().get(0).getValue(), 1e-12);
    }
  }

  @Test
  void aPastedBlock() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Preview preview = Intake.previewPasted(session,
          "trial\tclass\tmass [kg]\nT1\tTapped slag\t12,5\nT1\tFurnace slag\tnot weighed\n", Target.RESIDUES,
          IntakeOptions.none());
      preview.apply(session);
      assertEquals(ValueKind.NOT_WEIGHED,
          session.study().getSeries().get(0).getTrials().get(0).getRemains().getResidues().get(1).getKind());
      assertEquals("Import residues from pasted block", session.undoLabel().orElseThrow());
    }
  }

  /** A figure to look at, not a limit. */
  @Test
  void aLargeFile() throws Exception {
    StringBuilder text = new StringBuilder("site,context,sheet,variable,value,unit,page\n");
    for (int i = 0; i < 5000; i++) {
      text.append("Site ").append(i % 20).append(",Phase ").append(i % 3).append(",F").append(i % 50)
          .append(",base_internal_diameter,").append(200 + i % 97)
          .append(",mm,").append(i).append('\n');
    }
    Path file = Files.write(folder.resolve("large.csv"), text.toString().getBytes(StandardCharsets.UTF_8));
    try (StudySession session = Studies.fresh(folder)) {
      long start = System.nanoTime();
      Preview preview = Intake.preview(session, file, Target.CLAIMS, IntakeOptions.none());
      long previewed = System.nanoTime();
      preview.apply(session);
      System.out.printf(Locale.ROOT, "5000 claims: preview %.2f s, applied in %.2f s%n", (previewed - start) / 1e9,
          (System.nanoTime() - previewed) / 1e9);
      assertEquals(5000, preview.count(State.ADDED));
    }
  }
}
