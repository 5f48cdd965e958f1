package daubline.export.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.base.Amount;
import daubline.base.Confidence;
import daubline.export.Table;
import daubline.export.TableOptions;
import daubline.model.EvidenceSheet;
import daubline.model.ModelFactory;
import daubline.model.ResidueMass;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Totals of which only a share was recovered read “at least” in tables. Masses and shares invented. */
class LowerLimitsTest {

  private static final String SHEET = "HEAP";

  private static List<List<String>> rows(daubline.export.TableSpec spec, Double share) throws Exception {
    return rows(spec, share, null);
  }

  private static List<List<String>> rows(daubline.export.TableSpec spec, Double share, Confidence confidence) throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      EvidenceSheet sheet = session.study().getSites().get(0).getContexts().get(0).getSheets().get(0);
      sheet.setName(SHEET);
      sheet.setSamplingFraction(share);
      sheet.getResidues().clear();
      sheet.getClaims().removeIf(c -> "residue_total".equals(c.getVariable()));
      for (double mass : new double[] {10, 2.3}) {
        ResidueMass residue = ModelFactory.eINSTANCE.createResidueMass();
        residue.setResidueClass(session.study().getResidueClasses().get(sheet.getResidues().size()));
        residue.setConfidence(confidence);
        residue.setCount((int) mass);
        Readings.put(residue, Amount.exact(mass));
        sheet.getResidues().add(residue);
      }
      daubline.model.Claim claim = ModelFactory.eINSTANCE.createClaim();
      claim.setVariable("residue_total");
      claim.setConfidence(confidence);
      Readings.put(claim, Amount.exact(31));
      sheet.getClaims().add(claim);
      Table table = spec.build(StudyComparison.of(session, new ComparisonOptions(false, List.of(), List.of(), 100, 1, 1)), TableOptions.STANDARD);
      int reads = table.columns().stream().map(c -> c.id()).toList().indexOf("reads");
      return table.rows().stream().map(r -> r.stream().map(c -> c.text()).toList()).filter(r -> r.contains(SHEET) && !r.get(reads).isEmpty()).toList();
    }
  }

  @Test
  void classesAndTheirTotal() throws Exception {
    List<List<String>> rows = rows(new ResiduesTable(), 0.4);
    assertEquals(List.of("at least 10\u00A0kg (40\u00A0% of it recovered)", "at least 2.3\u00A0kg (40\u00A0% of it recovered)",
        "at least 12.3\u00A0kg (40\u00A0% of it recovered)"), rows.stream().map(r -> r.get(r.size() - 1)).toList());
    assertTrue(rows.get(2).contains("All classes weighed"), rows.toString());
    List<List<String>> whole = rows(new ResiduesTable(), 1.0);
    assertEquals(List.of("12.3\u00A0kg"), whole.stream().map(r -> r.get(r.size() - 1)).toList());
  }

  @Test
  void aTotalThatIsClaimed() throws Exception {
    List<String> row = rows(new EvidenceTable(), 0.4).get(0);
    assertEquals("at least 31\u00A0kg (40\u00A0% of it recovered)", row.get(row.size() - 1));
    List<String> unknown = rows(new EvidenceTable(), null).get(0);
    assertEquals("at least 31\u00A0kg (share recovered not stated)", unknown.get(unknown.size() - 1));
  }

  @Test
  void aTotalReadWithLowConfidence() throws Exception {
    List<String> doubtful = rows(new EvidenceTable(), 1.0, Confidence.LOW).get(0);
    assertEquals("at least 31\u00A0kg (read with low confidence)", doubtful.get(doubtful.size() - 1));
    List<String> medium = rows(new EvidenceTable(), 1.0, Confidence.MEDIUM).get(0);
    assertEquals("31\u00A0kg", medium.get(medium.size() - 1));
    List<List<String>> classes = rows(new ResiduesTable(), 1.0, Confidence.LOW);
    assertEquals("at least 12.3\u00A0kg (read with low confidence)", classes.get(classes.size() - 1).get(7));
  }

  @Test
  void piecesOfAllClassesAreAtLeastForTheSameReasons() throws Exception {
    assertEquals("≥ 12", last(rows(new ResiduesTable(), 0.4)).get(5));
    assertEquals("12", last(rows(new ResiduesTable(), 1.0)).get(5));
    assertEquals("≥ 12", last(rows(new ResiduesTable(), null)).get(5));
  }

  private static List<String> last(List<List<String>> rows) {
    return rows.get(rows.size() - 1);
  }
}
