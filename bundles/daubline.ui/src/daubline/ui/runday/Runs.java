package daubline.ui.runday;

import daubline.model.Trial;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Which trial a day belongs to. */
final class Runs {

  private Runs() {
  }

  /** The trial of this day; otherwise the first without a log, otherwise the last. */
  static Optional<Trial> today(List<Trial> trials) {
    String day = LocalDate.now().toString();
    return trials.stream().filter(t -> t.getOn() != null && t.getOn().startsWith(day)).findFirst()
        .or(() -> trials.stream().filter(t -> t.getLog().isEmpty()).findFirst())
        .or(() -> trials.isEmpty() ? Optional.empty() : Optional.of(trials.get(trials.size() - 1)));
  }
}
