package daubline.ui.compare;

import daubline.criteria.Criteria;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.model.EvidenceSheet;
import daubline.model.Trial;
import daubline.ui.study.OpenStudy;
import java.util.List;
import java.util.Optional;

/** Which evidence stands beside which trial. */
public final class Beside {

  private Beside() {
  }

  /** All evidence sheets of a study in its order. */
  public static List<EvidenceSheet> sheets(OpenStudy study) {
    return study.session().study().getSites().stream().flatMap(s -> s.getContexts().stream()).flatMap(c -> c.getSheets().stream()).toList();
  }

  /** The sheet that stands beside a trial at first: one that its reconstruction rests on, otherwise the first. */
  public static Optional<EvidenceSheet> first(Trial trial, List<EvidenceSheet> sheets) {
    Optional<EvidenceSheet> own = trial.getReconstruction() == null ? Optional.empty()
        : trial.getReconstruction().getSheets().stream().filter(sheets::contains).findFirst();
    return own.or(() -> sheets.stream().findFirst());
  }

  /** The result of the first criterion that reads a variable. */
  public static Optional<CriterionResult> aboutVariable(Comparison comparison, String variable) {
    List<String> criteria = Criteria.all().stream().filter(c -> c.inputs().contains(variable)).map(c -> c.id()).toList();
    return comparison.criteria().stream().filter(r -> criteria.contains(r.criterion())).findFirst();
  }
}
