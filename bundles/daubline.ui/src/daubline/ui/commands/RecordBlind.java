package daubline.ui.commands;

import daubline.model.BlindRecording;
import daubline.session.BlindRecordings;
import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.record.BlindDialog;
import daubline.ui.sheet.Pending;
import daubline.ui.study.Chosen;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Start;
import daubline.ui.study.Studies;
import daubline.ui.views.Veil;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.window.Window;
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
    if (study.blind().map(on -> end(study, on)).orElseGet(() -> begin(study))) {
      Start.save(study);
    }
  }

  private static List<String> people(OpenStudy study) {
    return study.session().study().getPeople().stream().map(OpenStudy::nameOf).toList();
  }

  private static boolean begin(OpenStudy study) {
    BlindDialog dialog = BlindDialog.toBegin(Over.shell(), people(study));
    boolean wanted = dialog.open() == Window.OK;
    if (wanted) {
      Chosen.set(null);
      BlindRecordings.begin(study.session(), Words.of("blind.begin"), dialog.name(), Instant.now());
    }
    return wanted;
  }

  private static boolean end(OpenStudy study, BlindRecording on) {
    String who = on.getBy() == null ? "" : OpenStudy.nameOf(on.getBy());
    String about = Words.of("blind.end.text", who, Veil.when(on), BlindRecordings.written(on).size());
    BlindDialog dialog = BlindDialog.toEnd(Over.shell(), about, people(study), who);
    boolean wanted = dialog.open() == Window.OK;
    if (wanted) {
      BlindRecordings.end(study.session(), Words.of("blind.end"), dialog.name(), Instant.now());
    }
    return wanted;
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
