package daubline.record.runday;

import daubline.model.Setting;
import daubline.model.Trial;
import daubline.record.Desk;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The steps of the extraction, each stamped by one key; the study may set its own ({@code checklist.extraction}, with semicolons). */
public final class Checklist {

  /** Key of the setting that holds the study's own steps. */
  public static final String SETTING = "checklist.extraction";

  private final Desk desk;
  private final Trial trial;

  /** The list of a trial. */
  public Checklist(Desk desk, Trial trial) {
    this.desk = desk;
    this.trial = trial;
  }

  /** All steps in order. */
  public List<String> steps() {
    String own = desk.session().study().getSettings().stream().filter(s -> SETTING.equals(s.getKey())).map(Setting::getValue).filter(v -> v != null && !v.isBlank())
        .findFirst().orElseGet(() -> desk.words().of("checklist"));
    return Arrays.stream(own.split(";")).map(String::strip).filter(s -> !s.isEmpty()).toList();
  }

  /** Whether a step is stamped. */
  public boolean isDone(String step) {
    return trial.getLog().stream().anyMatch(e -> "extraction".equals(e.getKind()) && step.equals(e.getText()));
  }

  /** The first step that is not stamped. */
  public Optional<String> next() {
    return steps().stream().filter(s -> !isDone(s)).findFirst();
  }
}
