package daubline.ui.sheet;

import daubline.base.Finding;
import daubline.base.TrialStatus;
import daubline.model.Trial;
import daubline.session.team.Readiness;
import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.study.OpenStudy;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;

/** A trial is called ready when nothing stands against it, or with a reason why it is ready all the same. */
final class ReadyQuestion implements ChoiceField.Guard {

  private final OpenStudy study;

  ReadyQuestion(OpenStudy study) {
    this.study = study;
  }

  @Override
  public Optional<List<Runnable>> along(EObject subject, Object chosen) {
    Trial trial = (Trial) subject;
    List<Finding> obstacles = chosen == TrialStatus.READY ? Readiness.obstacles(study.session().study(), trial, LocalDate.now().toString()) : List.of();
    if (obstacles.isEmpty() || Readiness.isOverridden(trial)) {
      return Optional.of(List.of());
    }
    String against = obstacles.stream().map(f -> "• " + Words.said(f)).collect(Collectors.joining("\n"));
    InputDialog dialog = new InputDialog(Over.shell(), Words.of("ready.title"), Words.of("ready.about", against), "",
        text -> text.isBlank() ? "" : null);
    return dialog.open() == Window.OK ? Optional.of(List.of(() -> trial.setReadyBecause(dialog.getValue().strip()))) : Optional.empty();
  }
}
