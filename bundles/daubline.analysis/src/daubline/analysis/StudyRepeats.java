package daubline.analysis;

import daubline.base.Unit;
import daubline.criteria.Criteria;
import daubline.criteria.Repeats;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Setting;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The repeats of a study: trials that repeat one another, and how far their remains differ.
 *
 * @param recipes the trials of each recipe that was tried twice or more, the first one first
 * @param spreads the spread within recipes, by criterion
 */
public record StudyRepeats(List<List<TrialData>> recipes, List<Repeats> spreads) {

  public StudyRepeats {
    recipes = recipes.stream().map(List::copyOf).toList();
    spreads = List.copyOf(spreads);
  }

  /** The repeats among the trials that the options ask for. */
  public static StudyRepeats of(StudySnapshot snapshot, ComparisonOptions options) {
    Map<String, List<TrialData>> byFirst = new LinkedHashMap<>();
    options.comparedTrials(snapshot).forEach(t -> byFirst.computeIfAbsent(first(snapshot, t), f -> new ArrayList<>()).add(t));
    List<List<TrialData>> recipes = byFirst.values().stream().filter(r -> r.size() > 1).toList();
    return new StudyRepeats(recipes, Repeats.of(recipes.stream().map(r -> r.stream().map(TrialData::found).toList()).toList()));
  }

  /** The id of the trial that a chain of repeats goes back to. */
  private static String first(StudySnapshot snapshot, TrialData trial) {
    TrialData first = trial;
    for (int step = 0; step < snapshot.trials().size() && !first.repeatOf().isEmpty(); step++) {
      first = snapshot.trial(first.repeatOf()).orElse(first);
    }
    return first.id();
  }

  /** Settings in which the spread of the repeats is the tolerance; a spread of zero teaches nothing and changes nothing. */
  public ComparisonSettings applyTo(ComparisonSettings settings) {
    List<Repeats> known = spreads.stream().filter(r -> r.spread() > 0).toList();
    Map<String, String> sources = new LinkedHashMap<>();
    known.forEach(r -> sources.put(ComparisonSettings.key(r.criterion(), Repeats.SETTING), source(r)));
    return settings.withMore(Repeats.asSettings(known), sources);
  }

  /** The spreads in the units of the tolerances, beside the tolerances of the study. */
  public List<RepeatSpread> toPrint(ComparisonSettings settings) {
    return spreads.stream().map(r -> RepeatSpread.of(r, settings)).toList();
  }

  /** The trials of one recipe compared with each other, each as though the other had been dug up. */
  public static List<Comparison> among(StudySnapshot snapshot, ComparisonOptions options, List<TrialData> recipe, Progress progress) {
    List<String> ids = recipe.stream().map(TrialData::id).toList();
    ComparisonOptions among = new ComparisonOptions(options.withDemonstrations(), ids, ids, options.draws(), options.seed(), options.threads(), Against.TRIAL, false);
    return StudyComparison.of(snapshot, List.of(), among, progress).comparisons();
  }

  /** The setting of a criterion that the spread of repeats can be. */
  public static Setting toleranceOf(Criterion criterion) {
    return criterion.settings().stream().filter(s -> s.key().equals(Repeats.SETTING)).findFirst().orElseThrow();
  }

  /**
   * Keeps spreads as tolerances of the study, as one undoable change.
   *
   * @param label the name of the change, as undo shows it
   * @param chosen spreads above zero
   */
  public static void keep(SettingEditor editor, String label, List<Repeats> chosen) {
    editor.set(label, chosen.stream().map(r -> {
      Unit unit = toleranceOf(Criteria.find(r.criterion()).orElseThrow()).unit().orElseThrow();
      return new SettingEditor.Entry(StudySettings.CRITERION + r.criterion() + "." + Repeats.SETTING, Double.toString(unit.differenceFromCanonical(r.tolerance())),
          source(r));
    }).toList());
  }

  /** Where a tolerance taken from repeats comes from, in words. */
  public static String source(Repeats repeats) {
    return "spread of repeats within " + repeats.recipes() + (repeats.recipes() == 1 ? " recipe, " : " recipes, ") + repeats.freedom()
        + (repeats.freedom() == 1 ? " degree" : " degrees") + " of freedom, widened for so few";
  }
}
