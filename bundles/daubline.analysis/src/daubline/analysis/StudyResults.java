package daubline.analysis;

import daubline.base.Finding;
import daubline.engine.inference.Comparison;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What was worked out from one snapshot; tables and figures are made of it.
 *
 * @param snapshot the study as it stood
 * @param options what was compared, and how exactly
 * @param comparisons every compared trial against every evidence sheet
 * @param checks what the integrity checks found
 */
public record StudyResults(StudySnapshot snapshot, ComparisonOptions options, List<Comparison> comparisons, List<Finding> checks) {

  public StudyResults {
    comparisons = List.copyOf(comparisons);
    checks = List.copyOf(checks);
  }

  /** The comparison of one trial with one sheet. */
  public Optional<Comparison> comparison(String trial, String sheet) {
    return comparisons.stream().filter(c -> c.trial().equals(trial) && c.sheet().equals(sheet)).findFirst();
  }

  /** The comparisons with one target, the highest agreement first and what could not be tested last. */
  public List<Comparison> ranked(String sheet) {
    return comparisons.stream().filter(c -> c.sheet().equals(sheet)).sorted(Comparator.comparing((Comparison c) -> !c.isTested())
        .thenComparing(c -> -c.agreement()).thenComparing(Comparison::trialName).thenComparing(Comparison::trial)).toList();
  }
}
