package daubline.ui.commands;

import daubline.model.BlindRecording;
import daubline.session.BlindRecordings;
import daubline.ui.Words;
import daubline.ui.record.BlindDialog;
import daubline.ui.sheet.Pending;
import daubline.ui.study.Chosen;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Start;
import daubline.ui.study.Studies;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** Begins to record remains without seeing run and evidence, or ends it. Either is saved at once, so that closing does not take it back. */
public final class RecordBlind extends StudyHandler implements IElementUpdater {

  @Override
  boolean can(OpenStudy study) {
    return !study.session().isReadOnly();
  }

  @Override
  void run(OpenStudy study) {
    Pending.commit();
    study.blind().ifPresentOrElse(on -> end(study, on), () -> begin(study));
    Start.save(study);
  }

  private static void begin(OpenStudy study) {
    BlindDialog dialog = new BlindDialog(Display.getDefault().getActiveShell(), study.session().study().getPeople().stream().map(OpenStudy::nameOf).toList());
    if (dialog.open() == Window.OK) {
      Chosen.set(null);
      BlindRecordings.begin(study.session(), Words.of("blind.begin"), dialog.name(), Instant.now());
    }
  }

  private static void end(OpenStudy study, BlindRecording on) {
    String who = on.getBy() == null ? "?" : OpenStudy.nameOf(on.getBy());
    if (MessageDialog.openQuestion(Display.getDefault().getActiveShell(), Words.of("blind.end"), Words.of("blind.end.text", who, on.getBegun(), BlindRecordings.written(on).size()))) {
      BlindRecordings.end(study.session(), Words.of("blind.end"), Instant.now());
    }
  }

  @Override
  void noticeState() {
    Optional.ofNullable(PlatformUI.getWorkbench().getService(ICommandService.class)).ifPresent(c -> c.refreshElements("daubline.ui.recordBlind", null));
  }

  @Override
  @SuppressWarnings("rawtypes")
  public void updateElement(UIElement element, Map parameters) {
    element.setText(Words.of(Studies.get().current().flatMap(OpenStudy::blind).isPresent() ? "blind.end" : "blind.begin") + "…");
  }
}
