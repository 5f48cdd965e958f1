package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Variable;
import daubline.base.Variables;
import daubline.model.EvidenceSheet;
import daubline.model.ModelPackage.Literals;
import daubline.model.Sheet;
import daubline.model.SpreadSquare;
import daubline.model.Trial;
import daubline.model.WallZone;
import daubline.session.StudyVariables;
import daubline.ui.record.RecordPages;
import daubline.ui.sheet.Forms;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.layer.ILayer;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Remains of trials are recorded on the same pages as excavated evidence; undo brings back the same bytes. */
class RemainsPagesTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  private static NatTable page(EObject object, String id) {
    SheetEditor editor = Window.sheet(object);
    assertNotNull(editor.show("record." + id), id);
    Window.pump();
    return Window.find(id, NatTable.class);
  }

  private static void row(NatTable grid, String... texts) {
    for (String text : texts) {
      Window.enter(grid, text);
    }
  }

  private static List<String> captions() {
    return Window.all(Window.shell()).stream().filter(c -> c instanceof Label && c.isVisible()).map(c -> ((Label) c).getText()).toList();
  }

  private static void wallAndGround(OpenStudy study, EObject object, java.util.function.Supplier<Sheet> sheet) {
    String before = study.session().digest();
    int zones = sheet.get() == null ? 0 : sheet.get().getZones().size();
    int squares = sheet.get() == null ? 0 : sheet.get().getSpread().size();
    row(page(object, "zones"), "12", "0", "18 cm", "vitr", "12", "180 mm", "30 cm", "oxidised");
    List<WallZone> typed = sheet.get().getZones().subList(zones, zones + 2);
    assertEquals("vitrified", typed.get(0).getState());
    assertEquals(0.18, typed.get(1).getLow(), 0);
    assertTrue(captions().stream().anyMatch(c -> c.startsWith("Inner wall of")), "the wall is drawn beside: " + captions());
    row(page(object, "spread"), "1.5", "-0.5", "0.8 kg", "1", "Tapped slag");
    SpreadSquare square = sheet.get().getSpread().get(squares);
    assertEquals(-0.5, square.getNorth(), 0);
    assertEquals(0.8, square.getValue(), 1e-12);
    assertEquals("Tapped slag", square.getResidueClass().getName());
    assertTrue(captions().stream().anyMatch(c -> c.startsWith("Residue on the ground") && c.contains("Tapped slag")), "the map is drawn beside: " + captions());
    while (!study.session().digest().equals(before) && study.session().undoLabel().isPresent()) {
      study.session().undo();
    }
    assertEquals(before, study.session().digest());
  }

  @Test
  void wallAndGroundOfAnEvidenceSheetAreMapped() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet sheet = EvidenceTest.firstSheet(study);
    wallAndGround(study, sheet, () -> sheet);
  }

  @Test
  void wallAndGroundOfATrialAreMappedOnTheSamePages() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    wallAndGround(study, trial, trial::getRemains);
  }

  /** Every heading of a grid, in order. */
  private static List<String> headings(NatTable grid) {
    List<String> all = new ArrayList<>();
    ILayer layer = grid.getLayer();
    for (int c = 0; c < layer.getColumnCount(); c++) {
      all.add(String.valueOf(layer.getDataValueByPosition(c, 0)));
    }
    return all;
  }

  /** F49: what an evidence sheet asks for, the remains of a trial are asked for, page by page and column by column. */
  @Test
  void evidenceAndRemainsComeFromOneDefinition() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet sheet = EvidenceTest.firstSheet(study);
    Trial trial = Window.firstTrial(study);
    List<String> ofSheet = RecordPages.of(sheet).stream().map(RecordPages.Kind::key).toList();
    List<String> ofTrial = RecordPages.of(trial).stream().map(RecordPages.Kind::key).toList();
    assertTrue(ofSheet.size() > 4 && ofTrial.containsAll(ofSheet), ofSheet + " in " + ofTrial);
    for (String key : ofSheet) {
      String id = key.substring("record.".length());
      Window.sheet(sheet).show(key);
      Window.pump();
      boolean analyses = id.equals("analyses");
      List<String> excavated = headings(Window.find(id, NatTable.class));
      Window.sheet(trial).show(key);
      Window.pump();
      List<String> left = headings(Window.find(id, NatTable.class));
      assertTrue(analyses ? left.size() >= 5 : left.equals(excavated), key + ": " + excavated + " and " + left);
    }
  }

  /** The one difference is what the feature is called; what a sheet holds is defined once. */
  @Test
  void bothSheetsHoldTheSame() {
    List<String> excavated = names(Literals.EVIDENCE_SHEET.getEAllStructuralFeatures());
    List<String> left = names(Literals.REMAINS_SHEET.getEAllStructuralFeatures());
    excavated.remove("feature");
    assertEquals(excavated, left);
    assertTrue(Literals.REMAINS_SHEET.getEStructuralFeatures().isEmpty(), "remains add nothing of their own");
  }

  private static List<String> names(List<EStructuralFeature> features) {
    return new ArrayList<>(features.stream().map(EStructuralFeature::getName).toList());
  }

  /** The variables asked about an evidence sheet are those asked in the column “as found” of a trial, in the same order. */
  @Test
  void theSamePropertiesAreAskedOfBoth() throws Exception {
    OpenStudy study = Window.demonstration();
    Variables variables = StudyVariables.of(study.session().study());
    List<Variable> excavated = Forms.remains(EvidenceTest.firstSheet(study), variables);
    assertTrue(excavated.size() > 40, excavated.toString());
    assertEquals(excavated, Forms.remains(Window.firstTrial(study), variables));
  }
}
