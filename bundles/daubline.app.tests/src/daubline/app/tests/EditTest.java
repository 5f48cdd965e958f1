package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Stage;
import daubline.base.ValueKind;
import daubline.model.Claim;
import daubline.model.EvidenceSheet;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.model.VariableDefinition;
import daubline.ui.study.Additions;
import daubline.ui.study.OpenStudy;
import java.util.List;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Values are typed by key, understood with their unit, and undone to the same bytes. */
class EditTest {

  private static final String VARIABLE = "furnace_height";

  @AfterEach
  void clear() {
    Window.clear();
  }

  private static List<StagedValue> planned(Trial trial) {
    return trial.getValues().stream().filter(v -> v.getStage() == Stage.PLANNED && VARIABLE.equals(v.getVariable())).toList();
  }

  private static void command(String id) throws Exception {
    PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(id, null);
    Window.pump();
  }

  private static NatTable gridAt(Trial trial) {
    Window.sheet(trial).reveal(null, VARIABLE);
    Window.pump();
    return Window.find("values", NatTable.class);
  }

  @Test
  void aTypedValueIsKeptAsTypedAndUndoneToTheSameBytes() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    String before = study.session().digest();
    NatTable grid = gridAt(trial);
    Window.type(grid, "98.5 ± 2 cm");
    StagedValue value = planned(trial).get(0);
    assertEquals(ValueKind.PLUS_MINUS, value.getKind());
    assertEquals(0.985, value.getValue(), 1e-12);
    assertEquals(0.02, value.getSigma(), 1e-12);
    assertEquals("98.5 ± 2", value.getTyped());
    assertEquals("cm", value.getUnit());
    assertTrue(study.session().isDirty());
    String after = study.session().digest();
    assertNotEquals(before, after);
    assertTrue(study.session().undoLabel().orElseThrow().contains("Furnace height"), study.session().undoLabel().orElseThrow());
    command("org.eclipse.ui.edit.undo");
    assertNotEquals(after, study.session().digest(), "undo took the change back");
    assertEquals(before, study.session().digest());
    assertFalse(study.session().isDirty());
    command("org.eclipse.ui.edit.redo");
    assertEquals(after, study.session().digest());
  }

  @Test
  void aWordForMissingIsOneClick() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    gridAt(trial);
    Window.find(ValueKind.NOT_RECORDED.name(), Button.class).notifyListeners(SWT.Selection, new Event());
    Window.pump();
    assertEquals(ValueKind.NOT_RECORDED, planned(trial).get(0).getKind());
  }

  @Test
  void whatIsNotUnderstoodStaysToBeMendedAndOutOfTheStudy() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    String before = study.session().digest();
    NatTable grid = gridAt(trial);
    Window.type(grid, "9o cm");
    assertEquals(before, study.session().digest());
    Window.sheet(trial).reveal(null, VARIABLE);
    Window.pump();
    String message = Window.find("message", org.eclipse.swt.widgets.Label.class).getText();
    assertTrue(message.contains("9o"), message);
    Window.type(grid, "90 cm");
    assertEquals(0.9, planned(trial).get(0).getValue(), 1e-12);
  }

  @Test
  void whatArrivesFromBehindDoesNotDisturbTyping() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    NatTable grid = gridAt(trial);
    Window.key(grid, '9', '9');
    Text field = (Text) grid.getActiveCellEditor().getEditorControl();
    field.setText("97");
    study.recompute();
    Window.waitForResults(study);
    study.edit("change.field", "elsewhere", () -> study.session().study().setQuestion("Changed by another part"));
    Window.waitForResults(study);
    assertFalse(field.isDisposed(), "the cell is still open");
    assertEquals("97", field.getText());
    field.setText("97 cm");
    Window.key(field, SWT.CR, SWT.CR);
    assertEquals(0.97, planned(trial).get(0).getValue(), 1e-12);
  }

  @Test
  void savingClearsTheMarkOfChange() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.type(gridAt(Window.firstTrial(study)), "≥ 90 cm");
    assertEquals(ValueKind.AT_LEAST, planned(Window.firstTrial(study)).get(0).getKind());
    command("org.eclipse.ui.file.save");
    assertFalse(study.session().isDirty());
  }

  @Test
  void theBalanceStandsBesideTheRecordAndIsNotMadeToClose() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.sheet(Window.firstTrial(study)).show("page.balance");
    Window.pump();
    NatTable elements = Window.find("balance.elements", NatTable.class);
    Window.waitFor("the table", () -> elements.getDataValueByPosition(3, 1) != null);
    List<String> iron = java.util.stream.IntStream.range(0, 6).mapToObj(i -> String.valueOf(elements.getDataValueByPosition(i, 1))).toList();
    assertEquals("Fe", iron.get(0), iron.toString());
    // what is left over is what came less what was found (conservation of mass)
    assertEquals(Double.parseDouble(iron.get(1)) - Double.parseDouble(iron.get(2)), Double.parseDouble(iron.get(3)), 0.0011);
    assertTrue(Window.find("balance-charged", daubline.ui.look.Passage.class).getText().contains("kg of iron"));
  }

  @Test
  void aVariableOfOnesOwnIsAskedForLikeAnyOther() throws Exception {
    OpenStudy study = Window.demonstration();
    String before = study.session().digest();
    VariableDefinition own = (VariableDefinition) Additions.add(study, Additions.Kind.VARIABLE, null);
    Window.sheet(own);
    Text name = Window.find("name", Text.class);
    name.setFocus();
    name.setText("Rake marks");
    name.notifyListeners(SWT.DefaultSelection, new Event());
    assertEquals("Rake marks", own.getName());
    EvidenceSheet sheet = study.session().study().getSites().get(0).getContexts().get(0).getSheets().get(0);
    Window.sheet(sheet).reveal(null, own.getId());
    Window.pump();
    Window.type(Window.find("values", NatTable.class), "7");
    assertEquals(List.of(7.0), sheet.getClaims().stream().filter(c -> own.getId().equals(c.getVariable())).map(Claim::getValue).toList());
    while (study.session().undoLabel().isPresent()) {
      study.session().undo();
    }
    assertEquals(before, study.session().digest());
  }
}
