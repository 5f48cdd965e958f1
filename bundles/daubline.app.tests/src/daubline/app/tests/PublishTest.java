package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.ui.Words;
import daubline.ui.publish.PublishWizard;
import daubline.ui.study.OpenStudy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The wizard writes what the command writes, shows before what it will be, and can be stopped. */
class PublishTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  /** Does something in the wizard as soon as it is there. */
  private static void inWizard(java.util.function.Consumer<Shell> act) {
    Display.getCurrent().timerExec(100, new Runnable() {
      @Override
      public void run() {
        Optional<Shell> wizard = Stream.of(Display.getCurrent().getShells()).filter(s -> s.getText().equals(Words.of("publish.title"))).findFirst();
        if (wizard.isPresent()) {
          act.accept(wizard.get());
        } else {
          Display.getCurrent().timerExec(100, this);
        }
      }
    });
  }

  private static <C extends Control> C field(Shell shell, String id, Class<C> type) {
    return Window.all(shell).stream().filter(type::isInstance).filter(c -> id.equals(c.getData("id"))).map(type::cast).findFirst().orElseThrow();
  }

  private static Button button(Shell shell, String key) {
    return Window.all(shell).stream().filter(c -> c instanceof Button b && b.getText().equals(Words.of(key))).map(Button.class::cast).findFirst().orElseThrow();
  }

  private static void press(Button button) {
    button.notifyListeners(SWT.Selection, new Event());
  }

  private static List<String> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).map(f -> folder.relativize(f).toString().replace('\\', '/')).sorted().toList();
    }
  }

  @Test
  void itShowsWhatItWillWriteAndWritesTheWholeSet() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    Path folder = Files.createTempDirectory("publish").resolve("out");
    int[] previewed = new int[1];
    inWizard(shell -> {
      field(shell, "publish.folder", Text.class).setText(study.folder().resolve("inside").toString());
      assertFalse(button(shell, "publish.do").isEnabled(), "a folder inside the study is refused");
      field(shell, "publish.folder", Text.class).setText(folder.toString());
      field(shell, "publish.oxides", Text.class).setText("iron first");
      assertFalse(button(shell, "publish.do").isEnabled(), "words that are no formulas are refused");
      field(shell, "publish.oxides", Text.class).setText("FeO, SiO2");
      field(shell, "publish.iron", org.eclipse.swt.widgets.Combo.class).select(1);
      field(shell, "publish.template", Text.class).setText(folder.resolve("nowhere.xlsx").toString());
      assertFalse(button(shell, "publish.do").isEnabled(), "a template that is not there is refused");
      field(shell, "publish.template", Text.class).setText("");
      press(button(shell, "publish.next"));
      press(button(shell, "publish.next"));
      previewed[0] = field(shell, "publish-preview-list", org.eclipse.swt.widgets.List.class).getItemCount();
      press(button(shell, "publish.do"));
    });
    Window.answer(Words.of("publish.done"), "OK");
    PublishWizard.open(Window.shell(), study);
    List<String> files = files(folder);
    assertTrue(previewed[0] > 30, "previewed " + previewed[0]);
    for (String file : List.of("tables.xlsx", "report.docx", "report.html", "figures/ranking.pdf", "deposit/datapackage.json", "SHA256SUMS")) {
      assertTrue(files.contains(file), file + " is missing of " + files);
    }
    List<String> chemistry = Files.readAllLines(folder.resolve("archive/chemistry.csv"));
    assertTrue(chemistry.get(0).contains("form,feo,sio2,"), chemistry.get(0));
    assertTrue(chemistry.stream().anyMatch(l -> l.contains("all iron as FeO,measured")), "iron as it was chosen");
    assertEquals(files.size() - 1, Files.readAllLines(folder.resolve("SHA256SUMS")).size(), "every file is listed");
  }

  @Test
  void stoppingLeavesNothingBehind() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    Path folder = Files.createDirectories(Files.createTempDirectory("publish").resolve("out"));
    Files.writeString(folder.resolve("mine.txt"), "mine");
    inWizard(shell -> {
      field(shell, "publish.folder", Text.class).setText(folder.toString());
      // the stop button of the progress line is pressed as soon as it can be
      Display.getCurrent().timerExec(300, () -> stop(shell));
      press(button(shell, "publish.do"));
      shell.close();
    });
    PublishWizard.open(Window.shell(), study);
    assertEquals(List.of("mine.txt"), files(folder));
  }

  private static void stop(Shell shell) {
    if (shell.isDisposed()) {
      return;
    }
    Window.all(shell).stream().filter(ToolBar.class::isInstance).map(ToolBar.class::cast).flatMap(t -> Stream.of(t.getItems()))
        .filter(i -> i.isEnabled()).forEach(i -> i.notifyListeners(SWT.Selection, new Event()));
    button(shell, "publish.cancel").notifyListeners(SWT.Selection, new Event());
  }
}
