package daubline.analysis.design;

import daubline.analysis.EvidenceData;
import daubline.analysis.StudySnapshot;
import daubline.analysis.TrialData;
import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Stage;
import daubline.base.Unit;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.engine.design.next.Contest;
import daubline.engine.design.next.NextTrial;
import daubline.engine.inference.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The trial that would tell most about which surviving reconstruction an excavated value belongs to: by what the trials of each left so
 * far. What was built on purpose tells nothing, nor does a limit.
 */
final class TellingTrial {

  private static final int LEAST_FREEDOM = 2;
  private static final double SHOWN = 0.001;
  /** Less than this of one bit hardly moves a belief (common practice, no source). */
  private static final double LITTLE = 0.05;

  private final StudySnapshot study;
  private final DesignBrief brief;
  private final BurntTrials burnt;
  private final Map<String, List<Integer>> tried = new LinkedHashMap<>();

  private TellingTrial(StudySnapshot study, DesignBrief brief, BurntTrials burnt) {
    this.study = study;
    this.brief = brief;
    this.burnt = burnt;
    for (int i = 0; i < burnt.trials().size(); i++) {
      String id = burnt.trials().get(i).id();
      int place = i;
      study.record().trials().stream().filter(t -> t.id().equals(id) && study.record().reconstructions().contains(t.reconstruction()))
          .forEach(t -> tried.computeIfAbsent(t.reconstruction(), k -> new ArrayList<>()).add(place));
    }
  }

  /** One trait of one sheet, and what a trial after one of the reconstructions would teach of it. */
  private record Candidate(EvidenceData sheet, Variable trait, Contest contest, int which, Contest.Lesson lesson) {
  }

  /** The suggestion; empty when no two surviving reconstructions have trials with a trait that a sheet has too. */
  static Optional<NextTrial.Suggestion> of(StudySnapshot study, DesignBrief brief, BurntTrials burnt, String cost) {
    TellingTrial telling = new TellingTrial(study, brief, burnt);
    List<Candidate> all = Outcome.possible(study, brief, burnt.trials()).stream().flatMap(o -> telling.candidates(o).stream())
        .sorted(Comparator.comparingDouble((Candidate c) -> -c.lesson.bits())).toList();
    return all.stream().findFirst().filter(c -> c.lesson.bits() > SHOWN).map(c -> telling.suggestion(c, all, cost));
  }

  private List<Candidate> candidates(Outcome outcome) {
    Variable trait = study.variables().get(outcome.id());
    if (trait.type() != daubline.base.ValueType.NUMBER || burnt.trials().stream().anyMatch(t -> isBuilt(t, trait.id()))) {
      return List.of();
    }
    List<Contest.Claimant> claimants = new ArrayList<>();
    double squares = 0;
    int freedom = 0;
    for (Map.Entry<String, List<Integer>> of : tried.entrySet()) {
      double[] left = of.getValue().stream().mapToDouble(i -> outcome.values()[i]).filter(Double::isFinite).toArray();
      if (left.length > 0) {
        double mean = IntStream.range(0, left.length).mapToDouble(i -> left[i]).average().orElseThrow();
        squares += IntStream.range(0, left.length).mapToDouble(i -> (left[i] - mean) * (left[i] - mean)).sum();
        freedom += left.length - 1;
        claimants.add(new Contest.Claimant(of.getKey(), left.length, mean));
      }
    }
    return claimants.size() < 2 || freedom < LEAST_FREEDOM || !(squares > 0) ? List.of() : weighed(trait, claimants, Math.sqrt(squares / freedom));
  }

  private static boolean isBuilt(TrialData trial, String variable) {
    return !trial.at(Stage.PLANNED, variable).isEmpty() || !trial.at(Stage.AS_BUILT, variable).isEmpty();
  }

  private List<Candidate> weighed(Variable trait, List<Contest.Claimant> claimants, double scatter) {
    List<Candidate> weighed = new ArrayList<>();
    for (EvidenceData sheet : study.sheets()) {
      claim(sheet, trait).ifPresent(amount -> {
        Unit unit = trait.unit();
        double doubt = unit.differenceFromCanonical(amount.kind() == ValueKind.RANGE ? (amount.high() - amount.low()) / Math.sqrt(12) : amount.sigmaOr(0));
        Contest contest = new Contest(unit.fromCanonical(amount.value()), doubt, scatter, claimants);
        IntStream.range(0, claimants.size()).forEach(i -> weighed.add(new Candidate(sheet, trait, contest, i, contest.lesson(i))));
      });
    }
    return weighed;
  }

  /** The one value that a sheet gives, or the one picked; limits and contradictions are no value. */
  private static Optional<Amount> claim(EvidenceData sheet, Variable trait) {
    List<Statement> values = sheet.sheet().about(trait.id()).stream().filter(s -> s.amount().isEstimate() && Double.isFinite(s.amount().value())).toList();
    return values.size() == 1 ? Optional.of(values.get(0).amount()) : values.stream().filter(Statement::picked).map(Statement::amount).findFirst();
  }

  private NextTrial.Suggestion suggestion(Candidate best, List<Candidate> all, String cost) {
    String name = best.contest.claimants().get(best.which).name();
    int like = tried.get(name).get(tried.get(name).size() - 1);
    double[] setting = burnt.design().settings().get(like);
    String text = "after " + name + ", as " + burnt.trials().get(like).name() + ": " + IntStream.range(0, setting.length)
        .mapToObj(j -> brief.factors().get(j).name() + " " + brief.factors().get(j).show(setting[j])).collect(Collectors.joining(", "));
    Contest.Lesson lesson = best.lesson;
    String unit = best.trait.unit().symbol().isEmpty() ? "" : " " + best.trait.unit().symbol();
    String separates = "by the " + best.trait.name().toLowerCase(java.util.Locale.ROOT) + ", " + Printed.plusMinus(best.contest.evidence(), best.contest.doubt()) + unit + " at "
        + best.sheet.sheet().name() + ", it separates " + left(best.contest, unit) + "; if it leaves " + Printed.number(lesson.low(), 3) + unit + ", belief becomes "
        + shares(best.contest, lesson.afterLow()) + ", if " + Printed.number(lesson.high(), 3) + unit + ", " + shares(best.contest, lesson.afterHigh());
    String certainty = "one in ten falls below the first of these outcomes and one in ten above the second; another reconstruction than now would be believed most with a chance of about "
        + Printed.number(100 * lesson.overturns(), 2) + " %; expected information " + Printed.number(lesson.bits(), 2) + " bit" + (lesson.bits() < LITTLE
        ? ", which is little: more trials alike hardly separate them, another trait of the excavated furnace may" : "") + ". On this trait alone, from equal belief, with a scatter of "
        + Printed.number(best.contest.scatter(), 2) + unit + " that holds the effects of the settings too" + second(best, all);
    return new NextTrial.Suggestion(NextTrial.Aim.DISCRIMINATE, setting, text, lesson.bits(), separates, cost.isEmpty() ? cost : cost + "; a furnace of this reconstruction, unless one stands",
        certainty, List.of());
  }

  private static String left(Contest contest, String unit) {
    double[] now = contest.beliefs();
    return IntStream.range(0, now.length).mapToObj(i -> contest.claimants().get(i).name() + " (left " + Printed.number(contest.claimants().get(i).mean(), 3) + unit + " in "
        + contest.claimants().get(i).trials() + (contest.claimants().get(i).trials() == 1 ? " trial, " : " trials, ") + Printed.fixed(100 * now[i], 0) + " % of the belief now)")
        .collect(Collectors.joining(" from "));
  }

  private static String shares(Contest contest, double[] beliefs) {
    return IntStream.range(0, beliefs.length).mapToObj(i -> contest.claimants().get(i).name() + " " + Printed.fixed(100 * beliefs[i], 0) + " %").collect(Collectors.joining(", "));
  }

  private static String second(Candidate best, List<Candidate> all) {
    return all.stream().filter(c -> c.which != best.which || c.trait != best.trait).findFirst().map(c -> "; next best: a trial after " + c.contest.claimants().get(c.which).name()
        + " by the " + c.trait.name().toLowerCase(java.util.Locale.ROOT) + " at " + c.sheet.sheet().name() + ", " + Printed.number(c.lesson.bits(), 2) + " bit").orElse("");
  }
}
