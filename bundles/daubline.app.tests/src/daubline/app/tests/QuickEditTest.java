package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.charts.FigureSpec;
import daubline.charts.Figures;
import daubline.export.Tables;
import daubline.model.ModelFactory;
import daubline.model.Series;
import daubline.model.Trial;
import daubline.ui.Parts;
import daubline.ui.Words;
import daubline.ui.study.FileDrop;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import daubline.ui.views.FigureView;
import daubline.ui.views.PropertiesView;
import daubline.ui.views.StudyView;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Quick changes beside the sheets, finding in the study, and the views of the platform that the work needs. */
class QuickEditTest {

  /** A picture of four points. */
  private static byte[] png() {
    ImageLoader loader = new ImageLoader();
    loader.data = new ImageData[] {new ImageData(2, 2, 24, new PaletteData(0xFF0000, 0xFF00, 0xFF))};
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    loader.save(out, SWT.IMAGE_PNG);
    return out.toByteArray();
  }

  @AfterEach
  void clear() {
    Window.clear();
  }

  @Test
  void severalTrialsAreChangedTogetherAsOneChange() throws Exception {
    OpenStudy study = Window.demonstration();
    List<Trial> trials = study.session().study().getSeries().get(0).getTrials().subList(0, 3);
    String before = study.session().digest();
    StudyView tree = Window.view(Parts.STUDY, StudyView.class);
    Window.view(Parts.PROPERTIES, PropertiesView.class);
    tree.getSite().getSelectionProvider().setSelection(new StructuredSelection(trials));
    Window.pump();
    Text note = Window.find("note", Text.class);
    note.setText("fired under the new roof – naïve “Ænglisc”");
    note.notifyListeners(SWT.DefaultSelection, new Event());
    trials.forEach(t -> assertEquals("fired under the new roof – naïve “Ænglisc”", t.getNote()));
    Combo leader = Window.find("leader", Combo.class);
    leader.select(1);
    leader.notifyListeners(SWT.Selection, new Event());
    assertEquals(1, trials.stream().map(Trial::getLeader).distinct().count());
    while (study.session().undoLabel().isPresent()) {
      study.session().undo();
    }
    assertEquals(before, study.session().digest());
  }

  @Test
  void somethingIsFoundInTheStudyThoughItsBranchIsClosed() throws Exception {
    OpenStudy study = Window.demonstration();
    StudyView tree = Window.view(Parts.STUDY, StudyView.class);
    tree.tree().forceFocus();
    Keys.rest(300);
    Keys.plainly(() -> Keys.chord(SWT.CTRL, 'f'));
    Text text = Window.find("tree-find", Text.class);
    String wanted = study.session().study().getPeople().get(0).getName();
    text.setText(wanted.substring(1).toUpperCase(java.util.Locale.ROOT));
    Window.pump();
    assertEquals(wanted, tree.tree().getSelection()[0].getText().split("  ")[0]);
    Window.key(text, SWT.ESC, SWT.ESC);
    assertTrue(tree.tree().isFocusControl(), "Esc goes back to the tree");
  }

  /** A list that had the keyboard and is emptied passes it on, or Ctrl+Z would go nowhere. */
  @Test
  void aChoiceThatBecomesEmptyLosesNoKeys() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    Window.view(Parts.FIGURES, FigureView.class);
    Combo figures = Window.find("figure", Combo.class);
    Window.waitFor("the figures", () -> figures.getItemCount() > 0);
    Window.front();
    Window.waitFor("the keyboard in the list", () -> figures.setFocus() && figures.isFocusControl());
    Studies.get().close(study);
    Window.waitFor("the list to be empty", () -> figures.getItemCount() == 0);
    assertNotNull(figures.getDisplay().getFocusControl());
  }

  @Test
  void progressIsAViewAndSaysWhatRuns() throws Exception {
    assertTrue(Window.page().showView(Parts.PROGRESS) != null);
    Job job = Job.create("Searching a design", monitor -> {
      while (!monitor.isCanceled()) {
        Thread.onSpinWait();
      }
      return org.eclipse.core.runtime.Status.CANCEL_STATUS;
    });
    job.schedule();
    Keys.rest(1500);
    job.cancel();
    Window.waitFor("the job to end", () -> job.getState() == Job.NONE);
  }

  @Test
  void theDataBehindEachFigureIsATableThatThereIs() {
    List<String> tables = Figures.all().stream().map(FigureSpec::table).filter(t -> !t.isEmpty()).toList();
    assertTrue(tables.size() > 10, tables.toString());
    tables.forEach(t -> assertTrue(Tables.find(t).isPresent(), t));
  }

  @Test
  void thousandsOfTrialsAreAFewLinesInTheTreeAndEachIsFound() throws Exception {
    OpenStudy study = Window.demonstration();
    Series series = study.session().study().getSeries().get(0);
    study.session().edit("Many", () -> {
      for (int i = 0; i < 5000; i++) {
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setName("Flut " + i);
        series.getTrials().add(trial);
      }
    });
    StudyView tree = Window.view(Parts.STUDY, StudyView.class);
    Window.pump();
    tree.reveal(series.getTrials().get(4321));
    Window.pump();
    assertEquals("Flut 4311", tree.tree().getSelection()[0].getText().split("  ")[0]);
    TreeItem above = tree.tree().getSelection()[0].getParentItem();
    assertTrue(above.getItemCount() <= 200, above.getItemCount() + " in " + above.getText());
    assertTrue(above.getParentItem().getItemCount() < 40, above.getParentItem().getItemCount() + " spans");
  }

  @Test
  void aPictureDroppedOnTheWindowGoesToTheSheetInFrontAndElsewhereSaysWhatToDo(@TempDir Path folder) throws Exception {
    OpenStudy study = Window.demonstration();
    Path picture = Files.write(folder.resolve("Ofen – früh.png"), png());
    String before = study.session().digest();
    Window.page().closeAllEditors(false);
    Window.answer(Words.of("notice.title"), "OK");
    FileDrop.take(List.of(picture));
    assertEquals(before, study.session().digest());
    Trial trial = Window.firstTrial(study);
    int files = trial.getFiles().size();
    Window.sheet(trial);
    FileDrop.take(List.of(picture));
    Window.pump();
    assertEquals(files + 1, trial.getFiles().size());
    study.session().undo();
    assertEquals(before, study.session().digest());
  }
}
