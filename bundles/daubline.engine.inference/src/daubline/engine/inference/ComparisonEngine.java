package daubline.engine.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Compares trials with evidence sheets. The result depends on the sheets, the criteria and the settings alone: neither
 * the order of rows nor the number of threads nor other trials change it.
 */
public final class ComparisonEngine {

  private final List<Criterion> criteria;
  private final ComparisonSettings settings;

  /**
   * An engine.
   *
   * @param criteria the criteria in the order of the results
   * @throws IllegalArgumentException when a setting cannot be read; {@link ComparisonSettings#check} says all that is wrong
   */
  public ComparisonEngine(List<Criterion> criteria, ComparisonSettings settings) {
    this.criteria = List.copyOf(criteria);
    this.settings = settings;
    this.criteria.forEach(settings::of);
  }

  /**
   * Compares every trial with every sheet, trial by trial in the order given.
   *
   * @param trials the remains of each trial, with the trial's id and name
   * @param sheets the evidence sheets
   */
  public static List<Comparison> compare(List<SheetData> trials, List<SheetData> sheets, List<Criterion> criteria,
      ComparisonSettings settings) {
    return new ComparisonEngine(criteria, settings).compare(trials, sheets, Progress.NONE);
  }

  /**
   * Compares every trial with every sheet, trial by trial in the order given.
   *
   * @throws java.util.concurrent.CancellationException when the progress asks to stop
   */
  public List<Comparison> compare(List<SheetData> trials, List<SheetData> sheets, Progress progress) {
    return compare(trials, sheets, (trial, sheet) -> Optional.empty(), progress);
  }

  /**
   * The same, where some comparisons are known already.
   *
   * @param known the comparison of a trial with a sheet by this engine's criteria and settings, where there is one
   * @throws java.util.concurrent.CancellationException when the progress asks to stop
   */
  public List<Comparison> compare(List<SheetData> trials, List<SheetData> sheets, BiFunction<SheetData, SheetData, Optional<Comparison>> known,
      Progress progress) {
    Comparison[][] rows = new Comparison[trials.size()][sheets.size()];
    List<Integer> open = new ArrayList<>();
    for (int t = 0; t < rows.length; t++) {
      for (int s = 0; s < sheets.size(); s++) {
        rows[t][s] = known.apply(trials.get(t), sheets.get(s)).orElse(null);
      }
      if (Arrays.asList(rows[t]).contains(null)) {
        open.add(t);
      }
    }
    Parallel.run(open.size(), settings.threads(), progress, this::scorer, (scorer, i) -> {
      int t = open.get(i);
      scorer.take(trials.get(t));
      for (int s = 0; s < sheets.size(); s++) {
        rows[t][s] = rows[t][s] == null ? result(trials.get(t), sheets.get(s), scorer) : rows[t][s];
      }
    });
    List<Comparison> results = new ArrayList<>();
    Arrays.stream(rows).forEach(row -> results.addAll(Arrays.asList(row)));
    return results;
  }

  /**
   * Agreement and coverage of every trial with every sheet, for many of both; the same numbers as {@link #compare}.
   *
   * @throws java.util.concurrent.CancellationException when the progress asks to stop
   */
  public ScoreTable scores(List<SheetData> trials, List<SheetData> sheets, Progress progress) {
    ScoreTable table = ScoreTable.empty(trials.size(), sheets.size());
    Parallel.run(trials.size(), settings.threads(), progress, this::scorer, (scorer, t) -> {
      scorer.take(trials.get(t));
      for (int s = 0; s < sheets.size(); s++) {
        double[] quantiles = scorer.pooled(sheets.get(s));
        table.low()[t][s] = quantiles[0];
        table.agreement()[t][s] = quantiles[1];
        table.high()[t][s] = quantiles[2];
        table.coverage()[t][s] = quantiles[3];
      }
    });
    return table;
  }

  PairScorer scorer() {
    return new PairScorer(criteria, settings);
  }

  private Comparison result(SheetData trial, SheetData sheet, PairScorer scorer) {
    return new ResultWriter(criteria, settings, scorer.weights()).write(trial, sheet, scorer.score(sheet));
  }
}
