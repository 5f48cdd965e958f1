package daubline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.IronBasis;
import daubline.base.ValueKind;
import daubline.intake.Recognised.Aspect;
import daubline.intake.Recognised.State;
import daubline.model.Analysis;
import daubline.model.Component;
import daubline.model.Sample;
import daubline.session.StudySession;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is recognised in laboratories' tables as they come, that guesses keep a table out until they are confirmed, and that
 * each of them can be changed. Tables invented unless said.
 */
class LabTablesTest {

  @TempDir
  Path folder;

  private static Preview look(StudySession session, Path file, String... settings) throws Exception {
    IntakeOptions options = IntakeOptions.none();
    for (int i = 0; i < settings.length; i += 2) {
      options = options.with(settings[i], settings[i + 1]);
    }
    return Intake.preview(session, file, Target.ANALYSES, options);
  }

  private static Recognised one(Preview preview, Aspect aspect, String where) {
    return preview.recognised().stream().filter(r -> r.aspect() == aspect && r.where().startsWith(where)).findFirst()
        .orElseThrow(() -> new AssertionError(aspect + " " + where + " is not in " + preview.recognised()));
  }

  private static List<String> open(Preview preview) {
    return preview.recognised().stream().filter(Recognised::isOpen).map(r -> r.aspect().word()).distinct().toList();
  }

  private static List<Analysis> of(StudySession session, int trial) {
    return session.study().getSeries().get(0).getTrials().get(trial).getAnalyses();
  }

  private static Component part(Analysis analysis, String symbol) {
    return analysis.getComponents().stream().filter(c -> symbol.equals(c.getSymbol())).findFirst()
        .orElseThrow(() -> new AssertionError(symbol + " is not in " + analysis.getComponents()));
  }

  /** Semicolons, decimal comma, Windows-1252 without a mark, a row of units, German words, one row of limits. */
  @Test
  void aGermanTableWithARowOfUnits() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Path file = folder.resolve("prüf.csv");
      Files.write(file, String.join("\r\n", "Prüfbericht 12;;;;;;", "Probe;SiO2;FeO ges.;Al2O3;Cr;Summe;Bemerkung", ";Gew.-%;Gew.-%;Gew.-%;µg/g;Gew.-%;",
          "T1 Fließschlacke;24,10;61,30;5,20;120;90,61;größer", "T2 Ofenschlacke;31,00;55,10;6,05;n.n.;92,15;", "Nachweisgrenze;0,02;0,01;0,02;5;;")
          .getBytes("windows-1252"));
      Preview preview = look(session, file);
      assertEquals(List.of("belonging"), open(preview), preview.findings().toString());
      assertFalse(preview.canApply());
      assertEquals("3", one(preview, Aspect.LAYOUT, "units").found());
      assertEquals(State.READ, one(preview, Aspect.UNIT, "Cr").state());
      assertEquals("mg/kg", one(preview, Aspect.UNIT, "Cr").found());
      assertEquals("all iron as FeO", one(preview, Aspect.IRON, "*").found());
      assertEquals(State.READ, one(preview, Aspect.IRON, "*").state());
      assertEquals("passed over", one(preview, Aspect.ROLE, "row 6").found());
      assertEquals("1 × n.d. (n.n.)", one(preview, Aspect.LIMIT, "Cr").found());
      assertEquals("90.61 %", one(preview, Aspect.TOTAL, "row 4").found());
      assertEquals("total", one(preview, Aspect.COLUMN, "Summe").found());
      assertEquals("trial T1", one(preview, Aspect.BELONGING, "row 4").found());
      assertThrows(IntakeException.class, () -> preview.apply(session));
      look(session, file, "confirm", "belonging").apply(session);
      assertEquals(List.of("T1 Fließschlacke"), of(session, 0).stream().map(Analysis::getName).toList());
      assertEquals(1.2e-4, part(of(session, 0).get(0), "Cr").getValue(), 1e-12);
      assertEquals("größer", of(session, 0).get(0).getNote());
      assertEquals(IronBasis.FEO, of(session, 0).get(0).getIronBasis());
      assertEquals(ValueKind.NOT_DETECTED, part(of(session, 1).get(0), "Cr").getKind());
      assertEquals("lab/prüf.csv", of(session, 1).get(0).getFile().getPath());
      assertEquals(KeptFile.digest(Files.readAllBytes(file)), of(session, 1).get(0).getFile().getSha256());
      Preview again = look(session, file, "confirm", "belonging");
      assertEquals(2, again.count(PreviewRow.State.UNCHANGED), again.rows().toString());
      assertEquals(State.READ, one(again, Aspect.BELONGING, "row 4").state(), "the analysis of this name is there");
    }
  }

  /** Samples in columns, a mark at the beginning of the file, units in a column of their own, no heading over the names. */
  @Test
  void samplesInColumns() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Path file = Books.csv(folder, "turned.csv", "\uFEFF,,T1-x,T2-y", "SiO2,wt%,24.1,31.0", "FeO,wt%,61.3,55.1", "Al2O3,wt%,5.2,6.05", "MnO,wt%,<0.01,bdl",
          "V,ppm,85,90", "Total,wt%,95.00,92.15");
      Preview preview = look(session, file);
      assertEquals("columns", one(preview, Aspect.LAYOUT, "samples").found());
      assertEquals(List.of("columns", "belonging", "iron"), open(preview), preview.recognised().toString());
      assertEquals("name", one(preview, Aspect.COLUMN, "#1").found());
      assertEquals(State.GUESSED, one(preview, Aspect.BELONGING, "column 3, T1-x").state());
      assertEquals("90.61 %", one(preview, Aspect.TOTAL, "column 3").found(), "mg/kg count as what they are");
      assertEquals("total.differs", Studies.finding(preview, "total.differs").code());
      assertTrue(Studies.finding(preview, "total.differs").where().contains("column 3, T1-x"), Studies.finding(preview, "total.differs").where());
      look(session, file, "column:#1", "name", "of:3", "trial T2", "of:4", "lot Bog ore", "set:iron_basis", "not stated").apply(session);
      assertEquals(List.of("T1-x"), of(session, 1).stream().map(Analysis::getName).toList());
      Analysis ore = session.study().getLots().get(0).getAnalyses().get(0);
      assertEquals(ValueKind.BELOW_DETECTION, part(ore, "MnO").getKind());
      assertEquals(9e-5, part(ore, "V").getValue(), 1e-12);
      assertEquals(0.9215, ore.getTotal(), 1e-12);
      assertEquals(IronBasis.NOT_STATED, ore.getIronBasis());
    }
  }

  @Test
  void aBadCellOfATurnedTableIsNamedWhereItStands() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Path file = Books.xlsx(folder, "turned.xlsx", List.of(List.of("name", "a", "b"), List.of("SiO2 [%]", 24.1, "24..1"), List.of("Al2O3 [%]", 5, 6), List.of("CaO [%]", 1, 2),
          List.of("trial", "T1", "T1")), sheet -> { });
      Preview preview = look(session, file);
      assertTrue(preview.findings().stream().anyMatch(f -> f.isError() && f.where().contains("cell C2 (SiO2 [%])")), preview.findings().toString());
    }
  }

  @Test
  void unitsThatNobodyStatesAreAskedFor() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Path file = Books.csv(folder, "in.csv", "trial,name,SiO2,Cr,Mn", "T1,a,24.1,120,0.8", "T1,b,30.2,95,1.1");
      Preview preview = look(session, file);
      assertEquals(List.of("units"), open(preview));
      assertEquals(State.USUAL, one(preview, Aspect.UNIT, "SiO2").state());
      assertEquals(List.of("mg/kg", "mg/kg"), List.of(one(preview, Aspect.UNIT, "Cr").found(), one(preview, Aspect.UNIT, "Mn").found()));
      assertTrue(Studies.finding(preview, "confirm.units").remedy().contains("unit:Cr=…"), preview.findings().toString());
      look(session, file, "unit:Cr", "ppm", "unit:Mn", "%").apply(session);
      assertEquals(0.008, part(of(session, 0).get(0), "Mn").getValue(), 1e-12);
      Path parts = Books.csv(folder, "parts.csv", "trial,name,SiO2,Al2O3,CaO", "T2,a,0.241,0.052,0.03", "T2,b,0.25,0.06,0.03");
      assertEquals("fraction", one(look(session, parts), Aspect.UNIT, "SiO2").found());
      assertEquals(List.of("units"), open(look(session, parts)));
      look(session, parts, "confirm", "units").apply(session);
      assertEquals(0.241, part(of(session, 1).get(0), "SiO2").getValue(), 1e-12);
      Path traces = Books.csv(folder, "traces.csv", "trial,name,SiO2,Al2O3", "T3,a,241000,52000");
      assertEquals("mg/kg", one(look(session, traces), Aspect.UNIT, "Al2O3").found());
      assertFalse(look(session, traces).canApply());
    }
  }

  /** FeO and Fe2O3 of slag 1, Neumann B., Freiberger Forschungshefte D 6, table 2; the other rows are invented. */
  @Test
  void ironIsReadWhereHeadingsSayItAndAskedForOtherwise() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      assertEquals(State.READ, iron(session, "FeO [%],Fe2O3 [%]", "48.26,24.29", "FeO and Fe2O3"));
      assertEquals(State.GUESSED, iron(session, "FeO [%],Fe2O3 [%]", "48.26,53.63", "all iron as FeO"));
      assertEquals(State.GUESSED, iron(session, "FeO [%]", "61.2", "all iron as FeO"));
      assertEquals(State.GUESSED, iron(session, "Fe2O3 [%]", "61.2", "all iron as Fe2O3"));
      assertEquals(State.READ, iron(session, "Fe2O3* [%]", "61.2", "all iron as Fe2O3"));
      assertEquals(State.READ, iron(session, "ΣFeO [%]", "61.2", "all iron as FeO"));
      assertEquals(State.GUESSED, iron(session, "Fe [%]", "44", "iron as Fe"));
      assertEquals(State.READ, iron(session, "Fe total [%]", "44", "iron as Fe"));
      assertEquals(State.READ, iron(session, "TFe %", "44", "iron as Fe"));
      assertEquals(State.READ, iron(session, "FeO [%],Fe met [%]", "52,9", "oxides and metallic iron"));
      assertEquals(State.GUESSED, iron(session, "FeO [%],Fe [%]", "52,9", "oxides and metallic iron"));
      assertEquals(State.GUESSED, iron(session, "FeO [%],Fe [%]", "52,40.42", "all iron as FeO"));
    }
  }

  private State iron(StudySession session, String headings, String values, String basis) throws Exception {
    Path file = Books.csv(folder, "iron.csv", "trial,name,SiO2 [%]," + headings, "T1,a,24.1," + values);
    Preview preview = look(session, file);
    Recognised found = one(preview, Aspect.IRON, "*");
    assertEquals(basis, found.found(), headings + " " + preview.findings());
    assertEquals(found.state() == State.READ, preview.canApply(), headings + " " + preview.findings());
    assertTrue(look(session, file, "set:iron_basis", "not stated").canApply());
    return found.state();
  }

  @Test
  void metallicIronCountsInTheSumAndIronToldTwiceDoesNot() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Path metal = Books.csv(folder, "m.csv", "trial,name,SiO2 [%],FeO [%],Fe met [%]", "T1,a,24,52,9");
      assertEquals("85.00 %", one(look(session, metal), Aspect.TOTAL, "row 2").found());
      Path twice = Books.csv(folder, "t.csv", "trial,name,SiO2 [%],FeO [%],Fe [%]", "T1,a,24,52,40.42");
      assertEquals("76.00 %", one(look(session, twice), Aspect.TOTAL, "row 2").found());
    }
  }

  @Test
  void replicatesAreKeptJoinedOrApart() throws Exception {
    Path file = Books.csv(folder, "rep.csv", "trial,name,SiO2 [%],MnO [%],TiO2 [%]", "T1,tap a,24.0,<0.01,n.d.", "T1,tap b,25.0,<0.02,n.d.", "T1,core,30.0,1.0,0.2",
        "T1,core,31.0,1.2,0.2", "T1,edge,28,0.5,0.1", "T1,edge dup,28.4,0.5,0.1", "T2,T2-1,20,1,1", "T2,T2-2,21,1,1");
    try (StudySession session = Studies.withTrials(folder)) {
      Preview asked = look(session, file);
      assertEquals(List.of("replicates"), open(asked), asked.findings().toString());
      assertEquals("tap: 2, the names differ in a last letter; core: 2, the same name; edge: 2, the name says so", one(asked, Aspect.REPLICATE, "*").why(),
          "T2-1 and T2-2 are two samples of a trial");
      session.save();
      look(session, file, "replicates", "kept").apply(session);
      assertEquals(List.of("tap a", "tap b", "core", "core (2)", "edge", "edge dup"), of(session, 0).stream().map(Analysis::getName).toList());
      assertEquals(List.of("tap", "tap", "core", "core", "edge", "edge"), of(session, 0).stream().map(Analysis::getReplicate).toList());
      assertEquals(8, look(session, file, "replicates", "kept").count(PreviewRow.State.UNCHANGED));
      session.undo();
      look(session, file, "replicates", "joined").apply(session);
      assertEquals(List.of("tap", "core", "edge"), of(session, 0).stream().map(Analysis::getName).toList());
      Component silica = part(of(session, 0).get(0), "SiO2");
      assertEquals(0.245, silica.getValue(), 1e-12);
      assertEquals(0.005, silica.getSigma(), 1e-12, "s / √2 of 24 and 25, JCGM 100:2008, 4.2.3");
      assertEquals("mean of 24.0; 25.0", silica.getTyped());
      assertEquals(2e-4, part(of(session, 0).get(0), "MnO").getHigh(), 1e-12);
      assertEquals(ValueKind.NOT_DETECTED, part(of(session, 0).get(0), "TiO2").getKind());
      session.undo();
      Preview apart = look(session, file, "replicates", "apart");
      assertEquals("row.duplicate", apart.findings().get(0).code(), "two rows of one name need names of their own then");
      Preview single = look(session, file, "replicates", "kept", "row:2:replicate", "-");
      assertEquals("core: 2, the same name; edge: 2, the name says so", one(single, Aspect.REPLICATE, "*").why());
    }
  }

  @Test
  void noMeanOfANumberAndALimit() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Path file = Books.csv(folder, "rep.csv", "trial,name,SiO2 [%],MnO [%]", "T1,tap a,24.0,<0.01", "T1,tap b,25.0,0.02");
      assertEquals("replicates.mixed", look(session, file, "replicates", "joined").findings().get(0).code());
      assertTrue(look(session, file, "replicates", "kept").canApply());
    }
  }

  @Test
  void samplesOfTheStudyAreFoundByName() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      session.edit("Add sample", () -> {
        Sample sample = daubline.model.ModelFactory.eINSTANCE.createSample();
        sample.setName("S 17");
        session.study().getSeries().get(0).getTrials().get(2).getSamples().add(sample);
      });
      Path file = Books.csv(folder, "in.csv", "Sample,SiO2 [%],Al2O3 [%]", "S-17,24.1,5", "T1a,22,4", "T12,22,4", "Bog ore,10,3");
      Preview preview = look(session, file);
      assertEquals(List.of("trial T3", "trial T1", "", "lot Bog ore"), List.of(2, 3, 4, 5).stream().map(n -> one(preview, Aspect.BELONGING, "row " + n).found()).toList());
      assertEquals(List.of(State.READ, State.GUESSED, State.OPEN, State.READ), List.of(2, 3, 4, 5).stream().map(n -> one(preview, Aspect.BELONGING, "row " + n).state()).toList());
      assertFalse(look(session, file, "confirm", "belonging").canApply(), "nothing can be confirmed where nothing is guessed");
      look(session, file, "confirm", "belonging", "of:4", "trial T2").apply(session);
      assertEquals("S 17", of(session, 2).get(0).getSample().getName());
      assertEquals(State.OPEN, one(look(session, file, "of:4", "trial T7"), Aspect.BELONGING, "row 4").state());
    }
  }

  @Test
  void elementsBecomeOxidesOnlyOnRequestAndWhatIsPrintedIsKept() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Path file = Books.csv(folder, "in.csv", "trial,name,Si [%],Fe total [%],Cr [mg/kg]", "T1,a,11.27,47.6,<120");
      look(session, file).apply(session);
      assertEquals(List.of("Si", "Fe", "Cr"), of(session, 0).get(0).getComponents().stream().map(Component::getSymbol).toList());
      session.undo();
      Preview preview = look(session, file, "convert:Si [%]", "SiO2", "convert:Fe", "FeO", "convert:Cr", "Cr2O3");
      assertTrue(one(preview, Aspect.FORMULA, "Si").why().startsWith("Si × 2.1393, IUPAC"), one(preview, Aspect.FORMULA, "Si").why());
      preview.apply(session);
      Analysis a = of(session, 0).get(0);
      assertEquals(List.of("SiO2", "FeO", "Cr2O3"), a.getComponents().stream().map(Component::getSymbol).toList());
      assertEquals(0.2411, part(a, "SiO2").getValue(), 1e-4);
      assertEquals("Si 11.27 % × 2.1393 (IUPAC standard atomic weights, CIAAW 2021)", part(a, "SiO2").getPrintedAs());
      assertEquals(ValueKind.BELOW_LIMIT, part(a, "Cr2O3").getKind());
      assertEquals(120e-6 * 1.4616, part(a, "Cr2O3").getHigh(), 1e-8);
      assertEquals(IronBasis.FEO, a.getIronBasis());
      assertEquals(1, look(session, file, "convert:Si [%]", "SiO2", "convert:Fe", "FeO", "convert:Cr", "Cr2O3").count(PreviewRow.State.UNCHANGED));
    }
  }

  @Test
  void formulasOfAWorkbookGiveTheirLastValueAndAreSaid() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Path file = Books.xlsx(folder, "in.xlsx", List.of(List.of("trial", "name", "SiO2", "Al2O3", "Total"), List.of("", "", "wt.-%", "wt.-%", "wt.-%"),
          List.of("T1", "a", 24.1, 5.2, ""), List.of("T1", "mean", 24.1, 5.2, "")), sheet -> {
            Row row = sheet.getRow(2);
            row.createCell(4).setCellFormula("SUM(C3:D3)");
            sheet.getWorkbook().getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(row.getCell(4));
            assertEquals(CellType.FORMULA, row.getCell(4).getCellType());
          });
      Preview preview = look(session, file);
      assertEquals("29.30 %", one(preview, Aspect.TOTAL, "row 3").found());
      assertEquals("the table prints 29.30 %", one(preview, Aspect.TOTAL, "row 3").why());
      assertEquals(List.of("rows"), open(preview), "a mean is passed over only when a person says so");
      assertNotNull(Studies.finding(preview, "confirm.rows"));
      look(session, file, "row:4:role", "analysis").apply(session);
      assertEquals(2, of(session, 0).size());
      assertEquals(0.293, of(session, 0).get(0).getTotal(), 1e-12);
    }
  }

  @Test
  void aKeptMappingConfirmsNothing() throws Exception {
    try (StudySession session = Studies.withTrials(folder)) {
      Path first = Books.csv(folder, "1.csv", "trial,name,SiO2 [%],FeO [%]", "T1,a,24.1,60");
      look(session, first, "confirm", "iron", "save", "Ovenby").apply(session);
      Path second = Books.csv(folder, "2.csv", "trial,name,SiO2 [%],FeO [%]", "T1,b,24.1,60");
      assertFalse(look(session, second, "mapping", "Ovenby").canApply());
      look(session, first, "set:iron_basis", "all iron as FeO", "row:2:note", "x", "save", "Ovenby").apply(session);
      assertEquals(Map.of("set:iron_basis", "all iron as FeO"), Mappings.settings(session.study().getMappings().get(0)));
      assertTrue(look(session, second, "mapping", "Ovenby").canApply());
    }
  }

  @Test
  void settingsThatMakeNoSenseAreRefused() {
    for (String[] wrong : new String[][] {{"samples", "up"}, {"units", "x"}, {"replicates", "some"}, {"confirm", "all"}}) {
      assertThrows(IntakeException.class, () -> IntakeOptions.none().with(wrong[0], wrong[1]), wrong[0]);
    }
  }
}
