package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Variable;
import daubline.base.Variables;
import daubline.model.ModelFactory;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.model.VariableDefinition;
import daubline.record.EventKind;
import daubline.session.StudyVariables;
import daubline.ui.Parts;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.Explanations;
import daubline.ui.grid.Grid;
import daubline.ui.grid.GridModel;
import daubline.ui.look.PageBook;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** F1 says of every variable, column and field what it is. */
class WhatIsThisTest {

  private OpenStudy study;

  @BeforeEach
  void open() throws Exception {
    study = Window.demonstration();
    Window.waitForResults(study);
    Window.front();
  }

  @AfterEach
  void clear() {
    Window.clear();
  }

  private Study all() {
    return study.session().study();
  }

  private static Optional<StyledText> shown() {
    return Arrays.stream(Display.getCurrent().getShells()).filter(Shell::isVisible).flatMap(s -> Window.all(s).stream())
        .filter(c -> c instanceof StyledText && "whatIsThis".equals(c.getData("id"))).map(StyledText.class::cast).findFirst();
  }

  private static Grid grid(Control table) {
    return (Grid) table.getData(Grid.GRID);
  }

  @Test
  void f1ExplainsTheRowAndEscGivesTheKeyboardBack() {
    Trial trial = Window.firstTrial(study);
    Window.sheet(trial).show("page.values");
    NatTable table = Window.find("values", NatTable.class);
    GridModel model = grid(table).model();
    Variable wall = Variables.standard().get("wall_thickness");
    int row = 0;
    while (model.explain(1, row).isEmpty() || !model.explain(1, row).get(0).text().contains("wall_thickness\n") && !model.explain(1, row).get(0).text().endsWith("wall_thickness")) {
      row++;
    }
    grid(table).select(1, row);
    table.setFocus();
    Keys.press(SWT.F1, (char) 0);
    Window.waitFor("the explanation", () -> shown().isPresent());
    StyledText text = shown().orElseThrow();
    assertTrue(text.getText().contains(Explanations.variable(wall).term()), text.getText());
    assertTrue(text.getText().contains("mm"), "its unit");
    assertTrue(text.getText().contains(wall.source()), "its source");
    assertTrue(text.isFocusControl(), "the keyboard is in the explanation");
    assertTrue(!text.getEditable(), "read only");
    text.selectAll();
    assertEquals(text.getText(), text.getSelectionText(), "it can be selected and copied");
    Keys.press(SWT.ESC, SWT.ESC);
    Window.waitFor("the explanation to go", () -> shown().isEmpty());
    Window.waitFor("the keyboard back", () -> Display.getCurrent().getFocusControl() == table);
    assertSame(table, Display.getCurrent().getFocusControl());
  }

  @Test
  void everyVariableOfCatalogueAndStudyIsExplained() {
    VariableDefinition own = ModelFactory.eINSTANCE.createVariableDefinition();
    own.setId("blast_pipe_colour");
    own.setName("Colour of the blast pipe");
    own.setGroup("Air");
    own.setMeaning("Colour of the pipe after the fire, judged in daylight.");
    own.setType("category");
    own.setCategories("grey;blue;red");
    own.setStages("fired");
    study.edit("change.field", "own", () -> all().getVariables().add(own));
    List<Variable> known = StudyVariables.of(all()).all();
    assertTrue(known.size() > Variables.standard().all().size());
    TreeSet<String> silent = new TreeSet<>();
    for (Variable v : known) {
      Explanation e = Explanations.variable(v);
      boolean german = java.util.Locale.getDefault().getLanguage().equals("de");
      boolean translated = german && Variables.standard().find(v.id()).isPresent();
      boolean whole = e.lines().get(0).text().length() > 10 && (translated ? !e.lines().get(0).text().equals(v.meaning()) : e.lines().get(0).text().equals(v.meaning()))
          && e.text().contains(v.unit().symbol()) && e.text().contains(v.source()) && v.words().stream().allMatch(e.text()::contains);
      if (!whole) {
        silent.add(v.id());
      }
    }
    assertEquals(new TreeSet<>(), silent);
    assertTrue(Explanations.variable(StudyVariables.of(all()).get("blast_pipe_colour")).text().contains("grey, blue, red"));
    for (EventKind kind : EventKind.values()) {
      assertTrue(Explanations.event(kind).isTelling(), kind.name());
    }
    all().getResidueClasses().forEach(c -> assertTrue(Explanations.residue(c).isTelling(), c.getName()));
  }

  private List<EObject> owners() {
    var site = all().getSites().get(0);
    var context = site.getContexts().get(0);
    return List.of(all(), site, context, context.getSheets().get(0), all().getCitations().get(0), all().getPeople().get(0), all().getReconstructions().get(0),
        all().getBuilds().get(0), all().getLots().get(0), all().getResidueClasses().get(0), all().getSeries().get(0), all().getSeries().get(0).getTrials().get(1));
  }

  @Test
  void everyColumnAndFieldOfEverySheetIsExplained() {
    TreeSet<String> silent = new TreeSet<>();
    int[] seen = new int[2];
    for (EObject owner : owners()) {
      Window.sheet(owner);
      PageBook book = (PageBook) Window.all(Window.shell()).stream().filter(c -> c instanceof PageBook && c.isVisible()).findFirst().orElseThrow();
      for (String key : book.keys()) {
        book.show(key);
        Window.pump();
        String where = owner.eClass().getName() + ", " + key;
        seen[0] += columns(where, book, silent);
        seen[1] += key.equals("page.facts") ? fields(where, book, silent) : 0;
      }
      Window.page().closeAllEditors(false);
    }
    assertEquals(new TreeSet<>(), silent);
    assertTrue(seen[0] > 150 && seen[1] > 60, "columns " + seen[0] + ", fields " + seen[1]);
  }

  @Test
  void everyColumnOfEveryViewIsExplained() throws Exception {
    TreeSet<String> silent = new TreeSet<>();
    int seen = 0;
    for (String id : Parts.VIEWS) {
      Window.view(id, Object.class);
      Keys.rest(400);
      seen += columns(id, Window.shell(), silent);
    }
    assertEquals(new TreeSet<>(), silent);
    assertTrue(seen > 30, "columns " + seen);
  }

  private static int columns(String where, org.eclipse.swt.widgets.Composite parent, TreeSet<String> silent) {
    int seen = 0;
    for (Control control : new ArrayList<>(Window.all(parent))) {
      if (control instanceof NatTable && control.isVisible() && grid(control) != null) {
        GridModel model = grid(control).model();
        for (int column = 0; column < model.columns(); column++) {
          seen++;
          for (int row = 0; row < model.rows(); row++) {
            if (model.explain(column, row).stream().noneMatch(Explanation::isTelling)) {
              silent.add(where + ": " + model.heading(column) + (row == 0 ? "" : ", row " + row));
              break;
            }
          }
        }
      }
    }
    return seen;
  }

  private static int fields(String where, org.eclipse.swt.widgets.Composite parent, TreeSet<String> silent) {
    int seen = 0;
    for (Control control : Window.all(parent)) {
      if ((control instanceof Text || control instanceof Combo) && control.isVisible() && control.getData("id") instanceof String id) {
        control.notifyListeners(SWT.Help, new Event());
        Window.pump();
        seen++;
        Optional<StyledText> told = shown();
        if (told.isEmpty() || told.get().getLineCount() < 2) {
          silent.add(where + ": field " + id);
        }
        told.ifPresent(t -> t.getShell().close());
        Window.pump();
      }
    }
    return seen;
  }
}
