package daubline.publication;

import daubline.analysis.StudyResults;
import daubline.analysis.record.SeriesData;
import daubline.base.Printed;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Verdict;
import daubline.export.Discretion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The headings of a report and what stands below each: as replicable as an excavation report, with reason, earlier work,
 * what varied from trial to trial, results and limits (headings after what Schmidt, Mathieu and Outram ask of published
 * experiments, EuroREA 2/2005).
 */
final class Outline {

  private final StudyResults results;

  Outline(StudyResults results) {
    this.results = results;
  }

  /**
   * One part of the report.
   *
   * @param heading its heading
   * @param paragraphs sentences made from the study
   * @param tables ids of the tables placed here
   * @param figures ids of the figures placed here
   */
  record Part(String heading, List<String> paragraphs, List<String> tables, List<String> figures) {

    /** The same in another language; what the study says itself stays. */
    Part in(UnaryOperator<String> wording) {
      return new Part(wording.apply(heading), paragraphs.stream().map(wording).toList(), tables, figures);
    }

    /** The same without the names of people who did not consent. */
    Part with(Discretion discretion) {
      return new Part(heading, paragraphs.stream().map(discretion::text).toList(), tables, figures);
    }
  }

  /** The parts in order. */
  List<Part> parts() {
    return List.of(
        new Part("Aims", aims(), List.of(), List.of()),
        new Part("Earlier Work", List.of("The evidence below is cited claim by claim; contradictory claims stand side by side."),
            List.of("citations", "evidence"), List.of()),
        new Part("Reconstructions", hypotheses(), List.of("reconstructions", "bases", "reconstruction-differences"), List.of("reconstruction")),
        new Part("Materials", List.of(), List.of("lots"), List.of()),
        new Part("Methods", methods(), List.of("design", "people", "analysis-methods", "samples"), List.of()),
        new Part("Differences between Trials", List.of("Every trial is listed, failed ones included."),
            List.of("trials", "dimensions", "conditions", "charging", "incidents", "time-line"), List.of("tried", "run")),
        new Part("Results", found(), List.of("products", "yields", "balance", "residues", "chemistry", "mineralogy", "predictions", "visits", "decay", "ranking", "ranks", "influence", "exclusions",
            "repeats", "comparison"),
            List.of("ranking", "agreement-map", "verdicts", "sections", "variables-by-agreement", "wall-map", "slag-spread", "residue-shares", "slag-ternary", "slag-biplot",
                "balance", "decay", "prediction-residuals", "shaft-profiles", "slag-inlet", "forecast-observed", "forecast-residuals", "effects")),
        new Part("Limits", limits(), List.of("checks"), List.of()));
  }

  private List<String> aims() {
    List<String> aims = new ArrayList<>();
    Stream.concat(Stream.of(results.snapshot().record().question()), results.snapshot().record().series().stream().map(SeriesData::question))
        .filter(q -> !q.isBlank()).forEach(aims::add);
    return aims.isEmpty() ? List.of("The study states no question.") : aims;
  }

  /** Each reconstruction with the share of guesses in it. */
  private List<String> hypotheses() {
    return results.snapshot().record().hypotheses().stream().filter(r -> !r.choices().isEmpty()).map(r -> r.name() + (r.retired() ? " (retired)" : "") + ": "
        + r.choices().size() + " choices, of them guesses " + Printed.fixed(100 * r.guesses(), 0) + " %. " + r.hypothesis()).toList();
  }

  private List<String> methods() {
    List<String> methods = new ArrayList<>();
    results.snapshot().record().series().stream().map(SeriesData::plan).filter(p -> !p.isBlank()).forEach(methods::add);
    methods.add("Remains were recorded in the same form as the excavated evidence, and only what was left after the fire is compared with what was dug up.");
    return methods;
  }

  /** For each sheet the trial that agrees best, in words that claim no more than that. */
  private List<String> found() {
    return results.snapshot().sheets().stream().map(s -> sentence(s.sheet().id(), s.sheet().name())).flatMap(Optional::stream).toList();
  }

  private Optional<String> sentence(String sheet, String name) {
    List<Comparison> tested = results.comparisons().stream().filter(c -> c.sheet().equals(sheet) && c.isTested()).toList();
    long fully = tested.stream().filter(c -> c.count(Verdict.NOT_CONSISTENT) == 0).count();
    return tested.stream().max(Comparator.comparingDouble(Comparison::agreement).thenComparing(Comparison::trial, Comparator.reverseOrder())).map(best ->
        name + ": " + tested.size() + " trials were compared; " + fully + " are consistent with it in every criterion that could be tested. The highest "
            + "agreement is that of " + best.trialName() + ", " + Printed.fixed(best.agreement(), 0) + " of 100 (5 to 95 %: " + Printed.fixed(best.low(), 0)
            + " to " + Printed.fixed(best.high(), 0) + ") at a coverage of " + Printed.fixed(best.coverage() * 100, 0) + " %; "
            + best.count(Verdict.NOT_CONSISTENT) + " criteria are not consistent and " + best.count(Verdict.NOT_TESTED) + " were not tested.");
  }

  private List<String> limits() {
    long untested = results.comparisons().stream().filter(c -> !c.isTested()).count();
    return List.of("Consistent with the evidence means that the difference is within what measuring, erosion and the scatter of smelts explain. Other "
        + "furnaces and recipes may leave the same remains; the superstructure above the line of preservation is not evidenced.",
        untested + " of " + results.comparisons().size() + " comparisons could not be tested at all. Agreement is to be read with its coverage.",
        "The checks below were open when this report was made.");
  }
}
