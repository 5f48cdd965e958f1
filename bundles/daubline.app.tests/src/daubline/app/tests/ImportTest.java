package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.IronBasis;
import daubline.model.Analysis;
import daubline.model.Trial;
import daubline.ui.Words;
import daubline.ui.study.FileDrop;
import daubline.ui.study.OpenStudy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.selection.command.SelectCellCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A table dropped on the window is previewed, taken over as one change, and undone to the same bytes. */
class ImportTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  @Test
  void aDroppedTableIsOneUndoableChange() throws Exception {
    OpenStudy study = Window.demonstration();
    String before = study.session().digest();
    int trials = study.session().study().getSeries().get(0).getTrials().size();
    Path file = Files.createTempFile("trials", ".csv");
    String series = study.session().study().getSeries().get(0).getName();
    Files.writeString(file, "series,name,kind,status,planned:furnace_height (cm)\n" + series + ",Dropped 1,pilot,planned,95\n");
    Window.answer(Words.of("import.title"), Words.of("import.do"));
    FileDrop.take(List.of(file));
    Window.pump();
    assertEquals(trials + 1, study.session().study().getSeries().get(0).getTrials().size());
    assertTrue(study.session().undoLabel().orElseThrow().startsWith("Import"), study.session().undoLabel().orElseThrow());
    study.session().undo();
    assertEquals(before, study.session().digest());
    Files.delete(file);
  }

  /** What a laboratory's table leaves open is asked first; one guess is changed by keys, the others are confirmed, and undo takes all back. */
  @Test
  void aLaboratorysTableIsConfirmedBeforeItIsTakenOver() throws Exception {
    OpenStudy study = Window.demonstration();
    String before = study.session().digest();
    Trial trial = Window.firstTrial(study);
    int analyses = trial.getAnalyses().size();
    Path file = Files.createTempFile("lab", ".csv");
    Files.writeString(file, "Probe;SiO2 [%];FeO [%];Cr;Summe\n" + trial.getName() + " neu a;24,1;61,3;0,02;85,4\n" + trial.getName() + " neu b;25,1;60,3;n.n.;85,4\n");
    LabDialog dialog = new LabDialog();
    Display.getCurrent().timerExec(100, dialog);
    FileDrop.take(List.of(file));
    Window.pump();
    assertEquals(List.of("asked", "changed", "confirmed"), dialog.done);
    assertEquals(analyses + 2, trial.getAnalyses().size());
    Analysis first = trial.getAnalyses().get(analyses);
    assertEquals(IronBasis.FEO, first.getIronBasis());
    assertEquals(2e-4, first.getComponents().stream().filter(c -> c.getSymbol().equals("Cr")).findFirst().orElseThrow().getValue(), 1e-12);
    assertEquals(trial.getName() + " neu", first.getReplicate());
    study.session().undo();
    assertEquals(before, study.session().digest());
    Files.delete(file);
  }

  /** A person at the dialog: chooses analyses, types the unit of chromium, confirms the rest and imports. */
  private static final class LabDialog implements Runnable {

    private final List<String> done = new ArrayList<>();
    private boolean pressed;
    private final long end = System.currentTimeMillis() + 60_000;

    @Override
    public void run() {
      Optional<Shell> shell = Arrays.stream(Display.getCurrent().getShells()).filter(s -> s.getText().equals(Words.of("import.title"))).findFirst();
      try {
        shell.ifPresent(this::act);
      } catch (RuntimeException | AssertionError e) {
        // an open dialog would keep all tests waiting for ever
        done.add(e.toString());
        shell.orElseThrow().close();
        return;
      }
      if (shell.isPresent() && System.currentTimeMillis() > end) {
        shell.get().close();
      } else if (done.size() < 3) {
        Display.getCurrent().timerExec(100, this);
      }
    }

    private void act(Shell shell) {
      Button all = find(shell, "recognised.confirmall", Button.class);
      NatTable grid = find(shell, "import-recognised", NatTable.class);
      if (done.isEmpty()) {
        Combo target = find(shell, "import.target", Combo.class);
        target.select(target.indexOf(Words.of("target.ANALYSES")));
        target.notifyListeners(SWT.Selection, new Event());
        done.add("asked");
      } else if (done.size() == 1 && all.isEnabled()) {
        assertFalse(take(shell).isEnabled(), "nothing can be taken over while something is open");
        assertEquals("Cr", grid.getDataValueByPosition(0, 1).toString());
        grid.doCommand(new SelectCellCommand(grid, 2, 1, false, false));
        Window.enter(grid, "%");
        done.add("changed");
      } else if (done.size() == 2 && all.isEnabled() && !pressed && !"mg/kg".equals(String.valueOf(grid.getDataValueByPosition(2, 1)))) {
        pressed = true;
        all.notifyListeners(SWT.Selection, new Event());
        assertFalse(all.isEnabled(), "nothing more is confirmed while the file is read again");
      } else if (done.size() == 2 && take(shell).isEnabled()) {
        done.add("confirmed");
        take(shell).notifyListeners(SWT.Selection, new Event());
      }
    }

    private static Button take(Shell shell) {
      return Window.all(shell).stream().filter(c -> c instanceof Button b && b.getText().replace("&", "").equals(Words.of("import.do"))).map(Button.class::cast)
          .findFirst().orElseThrow();
    }

    private static <C extends Control> C find(Shell shell, String id, Class<C> type) {
      return Window.all(shell).stream().filter(c -> id.equals(c.getData("id"))).map(type::cast).findFirst().orElseThrow();
    }
  }
}
