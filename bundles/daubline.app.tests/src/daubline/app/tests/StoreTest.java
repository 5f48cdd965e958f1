package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.TrialStatus;
import daubline.model.FurnaceBuild;
import daubline.model.Lot;
import daubline.model.Permission;
import daubline.model.Series;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.ui.Parts;
import daubline.ui.Words;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.SafetyView;
import daubline.ui.views.StudyView;
import java.text.DecimalFormatSymbols;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Lots are followed, split and put together, clay is mixed and dried, the team is planned, and a trial is called ready, by typing and pressing buttons. */
class StoreTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  private static NatTable page(EObject object, String key) {
    SheetEditor editor = Window.sheet(object);
    assertNotNull(editor.show("record." + key), key);
    Window.pump();
    return Window.find(key, NatTable.class);
  }

  private static void enter(NatTable grid, String... texts) {
    for (String text : texts) {
      if (text.isEmpty()) {
        Window.key(grid, SWT.CR, SWT.CR);
      } else {
        Window.enter(grid, text);
      }
    }
  }

  private static Lot lot(OpenStudy study, String id) {
    return study.session().find(id, Lot.class).orElseThrow();
  }

  private static void undoTo(OpenStudy study, String before) {
    while (!study.session().digest().equals(before) && study.session().undoLabel().isPresent()) {
      study.session().undo();
    }
    assertEquals(before, study.session().digest());
  }

  /** A number with the decimal sign of the window. */
  private static String n(String number) {
    return number.replace('.', DecimalFormatSymbols.getInstance().getDecimalSeparator());
  }

  private static String said(String table) {
    return Window.find(table + ".summary", Label.class).getText();
  }

  /** Fills the next dialog with a title, and presses its button. */
  private static void inDialog(String title, String button, Consumer<Shell> fill) {
    Display.getCurrent().timerExec(200, () -> {
      Shell shell = Arrays.stream(Display.getCurrent().getShells()).filter(s -> s.getText().equals(title)).findFirst().orElseThrow(() -> new AssertionError("no dialog " + title));
      fill.accept(shell);
      Window.all(shell).stream().filter(c -> c instanceof Button b && b.getText().replace("&", "").equals(button)).findFirst().ifPresent(b -> {
        if (b.isEnabled()) {
          b.notifyListeners(SWT.Selection, new Event());
        }
      });
      if (!shell.isDisposed()) {
        shell.close();
      }
    });
  }

  private static <C extends Control> C in(Shell shell, String id, Class<C> type) {
    return Window.all(shell).stream().filter(c -> type.isInstance(c) && id.equals(c.getData("id"))).map(type::cast).findFirst().orElseThrow();
  }

  private static void press(String id) {
    Button button = Window.find(id, Button.class);
    assertTrue(button.isEnabled(), id);
    button.notifyListeners(SWT.Selection, new Event());
    Window.pump();
  }

  @Test
  void stepsAndBandsAreTypedAndWaterHasABasis() throws Exception {
    OpenStudy study = Window.demonstration();
    String before = study.session().digest();
    Lot lime = lot(study, "shell-lime");
    NatTable steps = page(lime, "steps");
    enter(steps, "deliver", "2031-06-28", "40", "40", "0", "200 g");
    enter(steps, "sieve", "2031-06-29", "40", "30", "10", n("0.2"));
    assertEquals(2, lime.getTreatments().size());
    assertTrue(said("steps").contains(n("29.50")), "0.5 kg of the 30 were charged: " + said("steps"));
    NatTable bands = page(lime, "bands");
    enter(bands, "5", "20", "30", "", "", "5", "10", "Lime fines");
    assertEquals(2, lime.getTreatments().get(1).getBands().size());
    assertEquals("Lime fines", lime.getTreatments().get(1).getBands().get(1).getLot().getName());
    Lot clay = lot(study, "clay-mix");
    page(clay, "steps");
    Combo basis = Window.find("store.basis", Combo.class);
    assertEquals(1, basis.getSelectionIndex(), "the demonstration states the wet basis");
    assertTrue(said("steps").contains(n("23.5")), said("steps"));
    basis.select(0);
    basis.notifyListeners(SWT.Selection, new Event());
    Window.pump();
    assertTrue(said("steps").startsWith("△"), said("steps"));
    Window.waitForResults(study);
    assertTrue(study.findings().stream().anyMatch(f -> f.code().equals("moisture.basis")), study.findings().toString());
    undoTo(study, before);
  }

  @Test
  void aLotIsSplitAndPutTogetherAgainFromSheetAndTree() throws Exception {
    OpenStudy study = Window.demonstration();
    Study model = study.session().study();
    String before = study.session().digest();
    Lot charcoal = lot(study, "charcoal-graded");
    int lots = model.getLots().size();
    page(charcoal, "steps");
    inDialog(Words.of("split.title"), Words.of("split.do"), shell -> in(shell, "splitParts", Text.class).setText("May: 400 kg"));
    press("store.split");
    assertEquals(lots, model.getLots().size(), "more than is left is refused");
    inDialog(Words.of("split.title"), Words.of("split.do"), shell -> {
      in(shell, "splitParts", Text.class).setText("May: 12 kg\nJune: 8 kg");
      in(shell, "moveOn", Text.class).setText("2031-05-01");
    });
    press("store.split");
    assertEquals(lots + 2, model.getLots().size());
    Lot may = model.getLots().get(model.getLots().indexOf(charcoal) + 1);
    assertEquals("May", may.getName());
    assertEquals(List.of(charcoal), may.getFrom());
    StudyView tree = Window.view(Parts.STUDY, StudyView.class);
    tree.reveal(may);
    tree.setFocus();
    Window.pump();
    inDialog(Words.of("merge.title"), Words.of("merge.do"), shell -> {
      org.eclipse.swt.widgets.Table table = in(shell, "mergeLots", org.eclipse.swt.widgets.Table.class);
      Arrays.stream(table.getItems()).filter(i -> i.getText().startsWith("June")).forEach(i -> i.setChecked(true));
      in(shell, "mergeName", Text.class).setText("Season");
    });
    PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("daubline.ui.mergeLots", null);
    Window.pump();
    Lot season = model.getLots().stream().filter(l -> "Season".equals(l.getName())).findFirst().orElseThrow();
    assertEquals(20, season.getTreatments().get(0).getMassOut(), 1e-9);
    Window.waitForResults(study);
    assertFalse(study.findings().stream().anyMatch(f -> f.code().startsWith("lot.")), study.findings().toString());
    NatTable trace = page(season, "trace");
    assertTrue(trace.getRowCount() > 3);
    assertEquals(Words.of("change.merge", "Season"), study.session().undoLabel().orElseThrow());
    undoTo(study, before);
  }

  @Test
  void clayIsMixedByARecipeAndDriesByADiary() throws Exception {
    OpenStudy study = Window.demonstration();
    String before = study.session().digest();
    Lot mix = lot(study, "clay-mix");
    NatTable recipe = page(mix, "mix");
    enter(recipe, "clay", "60 kg", "");
    enter(recipe, "sand", "40 kg", "");
    assertEquals(2, mix.getRecipe().size());
    FurnaceBuild build = study.session().study().getBuilds().get(0);
    int entries = build.getLog().size();
    NatTable diary = page(build, "drying");
    String[][] weighed = {{"2031-04-20 12:00", "10"}, {"2031-04-21 00:00", "9.1"}, {"2031-04-21 12:00", "8.602"}, {"2031-04-22 00:00", "8.331"}, {"2031-04-22 12:00", "8.181"}};
    for (String[] line : weighed) {
      enter(diary, line[0], "weighing", "Brick A", n(line[1]));
    }
    assertEquals(entries + 5, build.getLog().size());
    assertTrue(said("drying").contains(n("7.996")), said("drying"));
    undoTo(study, before);
  }

  @Test
  void rolesHazardsAndPermissionsAreTypedAndReadyWantsAReason() throws Exception {
    OpenStudy study = Window.demonstration();
    Study model = study.session().study();
    String before = study.session().digest();
    Series series = model.getSeries().get(0);
    NatTable roles = page(series, "roles");
    enter(roles, "charger", "Teodor Wray", "900", "1200");
    assertTrue(said("roles").contains("Teodor Wray"), said("roles"));
    Window.view(Parts.SAFETY, SafetyView.class);
    press("safety.record.permissions");
    NatTable permissions = Window.find("permissions", NatTable.class);
    enter(permissions, "Water", "W/1", "Brook board", "2020-01-01", "2020-12-31");
    Permission permission = model.getPermissions().get(model.getPermissions().size() - 1);
    assertEquals("2020-12-31", permission.getValidUntil());
    assertTrue(said("permissions").contains("Water"), said("permissions"));
    page(model, "hazards");
    study.edit("change.field", "stop", () -> series.setStopCriteria(null));
    Trial trial = Window.firstTrial(study);
    Window.sheet(trial).show("page.facts");
    Window.pump();
    TrialStatus was = trial.getStatus();
    Combo status = Window.find("status", Combo.class);
    int ready = status.indexOf(Words.of(TrialStatus.READY));
    Window.answer(Words.of("ready.title"), "Cancel");
    status.select(ready);
    status.notifyListeners(SWT.Selection, new Event());
    Window.pump();
    assertEquals(was, trial.getStatus(), "without a reason it stays what it was");
    inDialog(Words.of("ready.title"), "OK", shell -> Window.all(shell).stream().filter(c -> c instanceof Text t && (t.getStyle() & SWT.READ_ONLY) == 0)
        .map(Text.class::cast).findFirst().orElseThrow().setText("no water is drawn"));
    status.select(ready);
    status.notifyListeners(SWT.Selection, new Event());
    Window.pump();
    assertEquals(TrialStatus.READY, trial.getStatus());
    assertEquals("no water is drawn", trial.getReadyBecause());
    undoTo(study, before);
  }

  /** The lots and people of a trial that somebody makes by hand; they are its own afterwards, as one change each. */
  @Test
  void aTrialNamesItsLotsAndItsPeople() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    study.session().edit("Empty", () -> {
      trial.getLots().clear();
      trial.getPeople().clear();
    });
    Window.sheet(trial).show("page.facts");
    Window.pump();
    Table lots = Window.find("lots", Table.class);
    List<Lot> all = study.session().study().getLots();
    assertEquals(all.stream().map(OpenStudy::nameOf).toList(), Arrays.stream(lots.getItems()).map(TableItem::getText).toList());
    set(lots, 1);
    set(Window.find("people", Table.class), 0);
    assertEquals(List.of(all.get(1)), trial.getLots());
    assertEquals(1, trial.getPeople().size());
    set(lots, 1);
    assertTrue(trial.getLots().isEmpty(), "cleared again");
    study.session().undo();
    Window.pump();
    assertTrue(lots.getItem(1).getChecked(), "undo is seen");
  }

  private static void set(Table table, int line) {
    TableItem item = table.getItem(line);
    item.setChecked(!item.getChecked());
    Event event = new Event();
    event.detail = SWT.CHECK;
    event.item = item;
    table.notifyListeners(SWT.Selection, event);
    Window.pump();
  }
}
