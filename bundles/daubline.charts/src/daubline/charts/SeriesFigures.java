package daubline.charts;

import daubline.analysis.EvidenceData;
import daubline.analysis.StudyResults;
import daubline.analysis.design.BurntTrials;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.Outcome;
import daubline.analysis.design.SeriesEffects;
import daubline.analysis.record.SeriesData;
import daubline.base.Variable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What moved the bloom and the agreement in each series: every plot of its effects, response surface and triangle of shares among them. */
final class SeriesFigures implements FigureSpec {

  private static final List<String> OUTCOMES = List.of("bloom_mass");
  private static final double CONFIDENCE = 0.95;
  private static final long SEED = 20260101;

  @Override
  public String id() {
    return "effects";
  }

  @Override
  public String table() {
    return "design";
  }

  @Override
  public String title() {
    return "Effects of a Series";
  }

  /** The first plot. */
  @Override
  public Optional<Figure> build(StudyResults results) {
    return all(results).stream().map(NamedFigure::figure).findFirst();
  }

  @Override
  public List<NamedFigure> all(StudyResults results) {
    List<NamedFigure> figures = new ArrayList<>();
    for (SeriesData series : results.snapshot().record().series()) {
      DesignBrief brief = DesignBrief.of(results.snapshot(), series);
      BurntTrials burnt = BurntTrials.of(results.snapshot(), brief, false);
      if (!brief.factors().isEmpty()) {
        outcomes(results, burnt).forEach(outcome -> add(figures, results, series, brief, burnt, outcome));
      }
    }
    return figures;
  }

  private static List<Outcome> outcomes(StudyResults results, BurntTrials burnt) {
    List<Outcome> outcomes = new ArrayList<>();
    for (String id : OUTCOMES) {
      Optional<Variable> variable = results.snapshot().variables().find(id);
      variable.ifPresent(v -> outcomes.add(Outcome.of(results.snapshot(), v, burnt.trials())));
    }
    for (EvidenceData sheet : results.snapshot().sheets()) {
      outcomes.add(Outcome.agreement(results.comparisons(), sheet.sheet().id(), sheet.sheet().name(), burnt.trials()));
    }
    return outcomes;
  }

  private static void add(List<NamedFigure> figures, StudyResults results, SeriesData series, DesignBrief brief, BurntTrials burnt, Outcome outcome) {
    SeriesEffects effects = SeriesEffects.of(results.snapshot(), brief, burnt, outcome, SeriesEffects.Terms.USUAL, CONFIDENCE, SEED);
    if (effects.report().isPresent()) {
      String id = ("effects-" + series.id() + "-" + outcome.id() + "-").replaceAll("[:_]", "-");
      EffectFigures.of(effects).forEach(named -> figures.add(new NamedFigure(FileNames.of(id + named.id()),
          named.title() + ": " + series.name() + ", " + outcome.name(), named.figure())));
    }
  }
}
