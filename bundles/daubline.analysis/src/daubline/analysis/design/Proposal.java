package daubline.analysis.design;

import daubline.base.Finding;
import daubline.engine.design.Design;
import daubline.engine.design.Progress;
import daubline.engine.design.Randomiser;
import daubline.engine.design.Run;
import daubline.engine.design.Strata;
import daubline.engine.design.advise.DesignAdvisor;
import daubline.engine.design.advise.Extras;
import daubline.engine.design.advise.Question;
import daubline.engine.design.judge.DesignReview;
import daubline.engine.design.stock.Timetable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A design proposed for a series, in its order of burning.
 *
 * @param brief what was asked
 * @param season what can be afforded
 * @param strata how alike the trials of a furnace were thought to be
 * @param done the trials burnt already that it adds to
 * @param advice the design recommended and those beside it
 * @param chosen the design taken, the recommended one unless another was asked for
 * @param plan its new trials in random order, their furnaces numbered from 0
 * @param timetable when they are built and burnt
 * @param findings of the brief, the season and the review
 */
public record Proposal(DesignBrief brief, Season season, Strata strata, List<Run> done, DesignAdvisor.Advice advice, DesignAdvisor.Option chosen,
    Randomiser.Plan plan, Timetable timetable, List<Finding> findings) {

  /** Trials planned for when nothing limits them: eight in four furnaces is a usual season (common practice, no source). */
  static final int USUAL_TRIALS = 8;
  private static final int MOST = 60;

  /**
   * What is asked for.
   *
   * @param trials the most trials; 0 for as many as are assured to succeed within stock and season
   * @param kind the kind of design to take; empty for the recommended one
   * @param strata how alike the trials of a furnace and of a day are thought to be
   * @param extras centre trials and repeats asked for
   * @param perDay how many trials may share a day, each in another furnace, 1 or more
   * @param done trials burnt already that are to be added to; none to begin anew
   * @param starts random starts of each search
   * @param seed the seed of the searches and of the order
   */
  public record Options(int trials, String kind, Strata strata, Extras extras, int perDay, List<Run> done, int starts, long seed) {
  }

  /**
   * Proposes a design.
   *
   * @throws IllegalArgumentException when there is none, saying why and what to do
   */
  public static Proposal of(DesignBrief brief, Season season, Options options, Progress progress) {
    if (!brief.isReady()) {
      throw new IllegalArgumentException(String.join("; ", brief.findings().stream().filter(Finding::isError).map(f -> f.where() + ": " + f.what() + " – " + f.remedy()).toList()));
    }
    List<Finding> findings = new ArrayList<>(brief.findings());
    DesignAdvisor.Advice advice = advice(brief, season, options, progress, findings);
    findings.addAll(season.findings());
    hands(season, options, findings);
    return taking(chosen(advice, options.kind), brief, season, options.strata, options.done, advice, options.seed, findings);
  }

  private static void hands(Season season, Options options, List<Finding> findings) {
    int needed = options.perDay * season.request().work().burnPeople();
    if (options.perDay > 1 && needed > season.request().work().team()) {
      findings.add(Finding.warning("design.hands", "stock and labour", options.perDay + " burns on one day want " + needed + " people, the team has "
          + season.request().work().team(), "the burns of a day fall on days one after the other then; ask for fewer a day or for more hands"));
    }
  }

  private static Proposal taking(DesignAdvisor.Option chosen, DesignBrief brief, Season season, Strata strata, List<Run> done, DesignAdvisor.Advice advice, long seed,
      List<Finding> findings) {
    Randomiser.Plan plan = added(Randomiser.order(chosen.design(), seed), done);
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(chosen.review().findings());
    return new Proposal(brief, season, strata, done, advice, chosen, plan, season.timetable(plan.design().furnaces(), plan.design().days()), List.copyOf(all));
  }

  /** The same proposal with another of its designs, by name. @throws IllegalArgumentException when it cannot be made, saying why */
  public Proposal taking(String kind) {
    List<Finding> other = findings.stream().filter(f -> !chosen.review().findings().contains(f)).toList();
    return taking(chosen(advice, kind), brief, season, strata, done, advice, plan.seed(), other);
  }

  private static int furnacesBefore(List<Run> done) {
    return done.stream().mapToInt(Run::furnace).max().orElse(-1) + 1;
  }

  /** The trials to be burnt alone, their furnaces numbered from 0. */
  private static Randomiser.Plan added(Randomiser.Plan whole, List<Run> done) {
    int before = furnacesBefore(done);
    List<Run> runs = whole.design().runs().stream().filter(r -> !r.done()).map(r -> new Run(r.setting(), r.furnace() - before, r.day(), false)).toList();
    Design design = new Design(whole.design().name(), whole.design().factors(), runs, whole.design().notes());
    return new Randomiser.Plan(design, Arrays.copyOfRange(whole.from(), done.size(), whole.from().length), whole.seed(), whole.algorithm(), whole.version(), whole.restriction());
  }

  /** The brief with what the process engine forbids; a rule that would forbid everything is said and not heeded. */
  public static DesignBrief heedingForecast(DesignBrief brief, Foreseen foreseen) {
    return foreseen.rule().map(rule -> {
      DesignBrief heeding = brief.with(rule);
      boolean nothingLeft = heeding.space().findings().stream().anyMatch(Finding::isError);
      return nothingLeft ? brief.with(Finding.warning("design.forecast", brief.series().name(), "the forecast says that every setting allowed would choke before the "
          + "third hour or find no steady heat; it is not heeded", "look at the forecast of a trial before you commit: more air, a deeper pit, or tapping")) : heeding;
    }).orElse(brief);
  }

  /** The question as asked, with spares for failed trials; then without spares; then which factors matter at all; then without an error to judge by. */
  private static DesignAdvisor.Advice advice(DesignBrief brief, Season season, Options options, Progress progress, List<Finding> findings) {
    int sure = trials(season, options);
    int most = options.trials > 0 || !season.isStated() ? sure : Math.min(MOST, season.capacity().trials());
    List<Question> questions = brief.question().model(brief.factors()).size() > Question.WHICH_MATTER.model(brief.factors()).size()
        ? List.of(brief.question(), Question.WHICH_MATTER) : List.of(brief.question());
    IllegalArgumentException refused = null;
    for (boolean unjudged : new boolean[] {false, true}) {
      for (Question question : questions) {
        for (int trials : most > sure ? new int[] {sure, most} : new int[] {sure}) {
          try {
            DesignAdvisor.Advice advice = DesignAdvisor.recommend(new DesignAdvisor.Request(brief.space(), question, season.budget(trials), options.strata, options.extras, options.perDay, options.done,
                unjudged, options.starts, options.seed), progress);
            fallenBack(brief, question, trials, sure, refused, findings);
            return advice;
          } catch (IllegalArgumentException e) {
            refused = refused == null ? e : refused;
          }
        }
      }
    }
    throw refused;
  }

  private static void fallenBack(DesignBrief brief, Question question, int trials, int sure, IllegalArgumentException refused, List<Finding> findings) {
    if (question != brief.question()) {
      findings.add(Finding.warning("design.lesser-question", brief.series().name(), refused.getMessage(), "this design asks only " + question.word()));
    }
    if (trials > sure) {
      findings.add(Finding.warning("design.no-spares", brief.series().name(), "with " + sure + " trials, the number assured to succeed, no design answers the question; "
          + "this one takes all " + trials + " that stock and season allow", "a failed trial cannot be repeated then; the review says what each loss would cost"));
    }
  }

  private static int trials(Season season, Options options) {
    if (options.trials > 0) {
      return options.trials;
    }
    int most = season.isStated() ? season.capacity().assured() : USUAL_TRIALS;
    if (season.isStated() && season.capacity().trials() < 1) {
      throw new IllegalArgumentException("stock and season allow no trial: " + String.join("; ", season.capacity().binding().stream()
          .map(l -> l.name() + " (" + l.text() + ")").toList()) + "; raise what binds, or say how many trials you want");
    }
    return Math.max(1, Math.min(most, MOST));
  }

  private static DesignAdvisor.Option chosen(DesignAdvisor.Advice advice, String kind) {
    if (kind.isBlank() || advice.recommended().name().equals(kind)) {
      return advice.recommended();
    }
    DesignAdvisor.Option found = advice.rejected().stream().filter(o -> o.name().equals(kind)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no design “" + kind + "”; there are " + advice.recommended().name() + ", "
            + String.join(", ", advice.rejected().stream().map(DesignAdvisor.Option::name).toList())));
    if (found.design() == null) {
      throw new IllegalArgumentException(kind + " cannot be made: " + found.verdict());
    }
    return found;
  }

  /** The review of the design in its order of burning, after the trials burnt already. */
  public DesignReview review() {
    return DesignReview.of(whole(), advice.model(), brief.space(), strata);
  }

  /** The trials burnt already, then those planned. */
  public Design whole() {
    int before = furnacesBefore(done);
    List<Run> runs = new ArrayList<>(done);
    plan.design().runs().forEach(r -> runs.add(new Run(r.setting(), r.furnace() + before, r.day(), false)));
    return new Design(plan.design().name(), plan.design().factors(), runs, plan.design().notes());
  }
}
