package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.EvidenceSheet;
import daubline.model.Site;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.session.StudySession;
import daubline.ui.Parts;
import daubline.ui.Words;
import daubline.ui.evidence.ArcDialog;
import daubline.ui.look.PageBook;
import daubline.ui.publish.PublishWizard;
import daubline.ui.record.LoggersPage;
import daubline.ui.study.FileDrop;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Seeds;
import daubline.ui.study.Start;
import daubline.ui.table.MergingStart;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Every screen by the keyboard alone, with keys pressed on the display: each control that can be used is come to by Tab and by
 * Shift+Tab, none keeps the focus, the focus is to be seen on each, and each says its name.
 */
class KeyboardWalkTest {

  private final List<String> complaints = new ArrayList<>();
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

  private EvidenceSheet sheet() {
    return all().getSites().get(0).getContexts().get(0).getSheets().get(0);
  }

  /** One of each kind of object that has a sheet of its own. */
  private Map<String, EObject> kinds() {
    Map<String, EObject> kinds = new LinkedHashMap<>();
    Site site = all().getSites().get(0);
    kinds.put("study", all());
    kinds.put("site", site);
    kinds.put("context", site.getContexts().get(0));
    kinds.put("evidence sheet", sheet());
    kinds.put("citation", all().getCitations().get(0));
    kinds.put("person", all().getPeople().get(0));
    kinds.put("reconstruction", all().getReconstructions().get(0));
    kinds.put("build", all().getBuilds().get(0));
    kinds.put("lot", all().getLots().get(0));
    kinds.put("residue class", all().getResidueClasses().get(0));
    kinds.put("series", all().getSeries().get(0));
    return kinds;
  }

  private static void pages(String kind, EObject object, List<String> complaints) {
    Window.sheet(object);
    PageBook book = (PageBook) Window.all(Window.shell()).stream().filter(c -> c instanceof PageBook && c.isVisible()).findFirst().orElseThrow();
    for (String key : book.keys()) {
      book.show(key);
      Keys.rest(300);
      new Walk(kind + ", " + key, book, complaints).go();
    }
    Window.page().closeAllEditors(false);
  }

  @Test
  void everyPageOfEverySheet() {
    kinds().forEach((kind, object) -> pages(kind, object, complaints));
    assertTrue(complaints.isEmpty(), () -> Walk.told(complaints));
  }

  @Test
  void everyPageOfATrialAndWhatItHolds() {
    Trial logged = all().getSeries().stream().flatMap(s -> s.getTrials().stream()).filter(t -> !t.getLoggers().isEmpty()).findFirst().orElseThrow();
    pages("trial", logged, complaints);
    assertTrue(complaints.isEmpty(), () -> Walk.told(complaints));
  }

  @Test
  void theStartPageAndEveryView() throws Exception {
    Start.hearthside();
    new Walk("start page", area(), complaints).go();
    Window.page().closeAllEditors(false);
    for (String id : Parts.VIEWS) {
      var reference = Window.page().showView(id).getSite();
      Window.page().toggleZoom(Window.page().getReference(reference.getPart()));
      Keys.rest(400);
      new Walk("view " + id, area(), complaints).go();
      Window.page().toggleZoom(Window.page().getReference(reference.getPart()));
      Window.pump();
    }
    assertTrue(complaints.isEmpty(), () -> Walk.told(complaints));
  }

  /** What stands in the window. */
  private static Composite area() {
    Window.pump();
    return Window.shell();
  }

  /** Walks through a dialog as soon as it is there, and closes it. */
  private void inDialog(String title) {
    Display.getCurrent().timerExec(300, new Runnable() {
      @Override
      public void run() {
        Shell dialog = Arrays.stream(Display.getCurrent().getShells()).filter(s -> s.getText().equals(title) && s.isVisible()).findFirst().orElse(null);
        if (dialog == null) {
          Display.getCurrent().timerExec(200, this);
          return;
        }
        walk(title, dialog);
        dialog.close();
      }
    });
  }

  private void walk(String title, Shell dialog) {
    dialog.forceActive();
    Keys.rest(600);
    new Walk("dialog " + title, dialog, complaints).go();
  }

  @Test
  void everyDialogOfOurOwn() throws Exception {
    ArcDialog arc = new ArcDialog(Window.shell(), study, sheet());
    inDialog(Words.of("arc.title"));
    arc.open();
    Window.sheet(all().getLots().get(0)).show("record.steps");
    Window.pump();
    for (String move : List.of("split", "merge")) {
      inDialog(Words.of(move + ".title"));
      Window.find("store." + move, Button.class).notifyListeners(SWT.Selection, new Event());
    }
    Path table = Files.createTempFile("trials", ".csv");
    Files.writeString(table, "series,name,kind,status,planned:furnace_height (cm)\n" + all().getSeries().get(0).getName() + ",Dropped 1,pilot,planned,95\n");
    inDialog(Words.of("import.title"));
    FileDrop.take(List.of(table));
    Files.delete(table);
    merging();
    assertTrue(complaints.isEmpty(), () -> Walk.told(complaints));
  }

  private void merging() throws Exception {
    Path theirs = Seeds.home().resolve("theirs-" + System.nanoTime());
    study.session().saveCopy(theirs);
    try (StudySession other = StudySession.open(theirs)) {
      other.edit("work", () -> other.study().setNote("theirs"));
      other.save();
    }
    study.edit("change.field", "note", () -> all().setNote("mine"));
    boolean[] done = new boolean[1];
    MergingStart.start(study, theirs);
    inDialog(Words.of("merging.title"));
    Display.getCurrent().timerExec(200, () -> done[0] = true);
    Window.waitFor("the dialog of merging", () -> done[0] && Arrays.stream(Display.getCurrent().getShells()).noneMatch(s -> s.getText().equals(Words.of("merging.title"))));
  }

  @Test
  void theLoggerDialog() throws Exception {
    Trial trial = Window.firstTrial(study);
    Path file = Files.createTempFile("logger", ".csv");
    Files.writeString(file, "time;top;hearth\n2031-08-16 08:00:00;21,5;22,0\n2031-08-16 08:00:10;31,5;28,0\n");
    LoggersPage page = (LoggersPage) Window.sheet(trial).show("record.loggers");
    inDialog(Words.of("logger.title"));
    page.take(file);
    Files.delete(file);
    assertTrue(complaints.isEmpty(), () -> Walk.told(complaints));
  }

  @Test
  void theWizardOfPublishing() {
    Display.getCurrent().timerExec(300, new Runnable() {
      @Override
      public void run() {
        Shell wizard = Arrays.stream(Display.getCurrent().getShells()).filter(s -> s.getText().equals(Words.of("publish.title"))).findFirst().orElse(null);
        if (wizard == null) {
          Display.getCurrent().timerExec(200, this);
          return;
        }
        for (int page = 1; page <= 3; page++) {
          walk(Words.of("publish.title") + " " + page, wizard);
          Window.all(wizard).stream().filter(c -> c instanceof Button b && b.getText().equals(Words.of("publish.next")) && b.isEnabled()).findFirst()
              .ifPresent(b -> b.notifyListeners(SWT.Selection, new Event()));
        }
        wizard.close();
      }
    });
    PublishWizard.open(Window.shell(), study);
    assertTrue(complaints.isEmpty(), () -> Walk.told(complaints));
  }

  @Test
  void thePreferences() {
    for (String id : List.of("daubline.ui.prefs", "daubline.ui.prefs.units", "daubline.ui.prefs.backups")) {
      PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(Window.shell(), id, null, null);
      dialog.setBlockOnOpen(false);
      dialog.open();
      dialog.getShell().forceActive();
      Keys.rest(600);
      // the tree of pages beside it is the platform's
      Composite page = (Composite) ((PreferencePage) dialog.getSelectedPage()).getControl();
      new Walk("preferences " + id, page, complaints).go();
      dialog.close();
    }
    assertTrue(complaints.isEmpty(), () -> Walk.told(complaints));
  }

  @Test
  void theClockInAWindowOfItsOwn() throws Exception {
    PlatformUI.getWorkbench().showPerspective("daubline.app.runday", Window.page().getWorkbenchWindow());
    Window.view(Parts.RUN_DAY, Object.class);
    Window.find("run.window", Button.class).notifyListeners(SWT.Selection, new Event());
    Window.pump();
    Shell clock = Arrays.stream(Display.getCurrent().getShells()).filter(s -> s.getText().equals(Words.of("run.window.title"))).findFirst().orElseThrow();
    Control face = clock.getChildren()[0];
    Keys.rest(300);
    assertTrue(face.isFocusControl(), "its only control has the focus");
    assertTrue(SpokenName.of(face).equals(Words.of("run.window.title")));
    Keys.press(SWT.F11, (char) 0);
    assertTrue(clock.getFullScreen(), "F11 fills the screen");
    Keys.press(SWT.ESC, SWT.ESC);
    assertTrue(!clock.getFullScreen(), "Esc ends it");
    clock.close();
  }
}
