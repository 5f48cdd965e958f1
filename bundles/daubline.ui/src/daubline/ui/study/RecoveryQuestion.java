package daubline.ui.study;

import daubline.ui.Words;
import daubline.ui.look.Over;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import org.eclipse.jface.dialogs.MessageDialog;

/** Asks what to do with the unsaved changes that an earlier session left. */
final class RecoveryQuestion {

  /** What the person wants. */
  enum Answer { RECOVER, AS_SAVED, NOT_NOW }

  private RecoveryQuestion() {
  }

  static Answer ask(Path folder, Instant time, String summary) {
    String when = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM).withLocale(Locale.getDefault()).format(time.atZone(ZoneId.systemDefault()));
    MessageDialog dialog = new MessageDialog(Over.shell(), Words.of("recover.title"), null,
        Words.of("recover.text", folder.getFileName(), when, summary), MessageDialog.QUESTION, 0,
        Words.of("recover.yes"), Words.of("recover.no"), Words.of("recover.later"));
    return switch (dialog.open()) {
      case 0 -> Answer.RECOVER;
      case 1 -> Answer.AS_SAVED;
      default -> Answer.NOT_NOW;
    };
  }
}
