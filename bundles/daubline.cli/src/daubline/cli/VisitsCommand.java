package daubline.cli;

import daubline.analysis.Snapshots;
import daubline.analysis.record.DecayCurve;
import daubline.base.Printed;
import daubline.engine.stats.DecayFit;
import daubline.model.Trial;
import daubline.session.StudySession;
import daubline.session.Visits;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The visits to furnaces left to decay: due, made, missed, ended, and how fast the walls go. */
@Command(name = "visits", mixinStandardHelpOptions = true, description = {
    "List the visits to furnaces left to decay and what is due, and how fast each wall goes.",
    "With --plan, plan visits to the furnace of a trial some months after a day, and save."})
final class VisitsCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Option(names = "--on", paramLabel = "DATE", description = "the day on which it is asked (default: today)")
  private LocalDate on;

  @Option(names = "--due", description = "only what is due")
  private boolean due;

  @Option(names = "--plan", paramLabel = "TRIAL", description = "name or id of a trial whose furnace is to be visited")
  private String plan;

  @Option(names = "--after", split = ",", paramLabel = "MONTHS", description = "months after the day of the trial, or after --from; with --plan")
  private List<Integer> months = new ArrayList<>();

  @Option(names = "--from", paramLabel = "DATE", description = "the day from which months are counted (default: that of the trial)")
  private LocalDate from;

  @Override
  public Integer call() throws Exception {
    if (plan != null) {
      return plan();
    }
    try (StudySession session = study.read()) {
      List<List<String>> rows = new ArrayList<>(List.of(List.of("trial", "due", "visited", "state", "because")));
      LocalDate day = on == null ? LocalDate.now() : on;
      Visits.of(session.study(), day).stream().filter(p -> !due || p.state() == Visits.State.DUE)
          .forEach(p -> rows.add(List.of(text(p.trial().getName()), text(p.visit().getDueOn()), text(p.visit().getVisitedOn()),
              p.state().name().toLowerCase(Locale.ROOT).replace('_', ' '), (text(p.visit().getNotVisitedBecause()) + " " + text(p.visit().getEndedBecause())).strip())));
      if (rows.size() == 1) {
        Out.line(due ? "no visit is due on %s" : "no visit is planned; plan some with --plan", day);
      } else {
        Page.table(0, 5, rows);
      }
      if (!due) {
        DecayCurve.of(Snapshots.of(session)).forEach(VisitsCommand::say);
      }
      return Out.DONE;
    }
  }

  private static void say(DecayCurve curve) {
    Out.line("%s: %d observations of the standing wall over %s years", curve.name(), curve.points().size(), Printed.number(curve.points().get(curve.points().size() - 1).years(), 3));
    Stream.of(curve.share(), curve.amount()).flatMap(Optional::stream).forEach(f -> Out.line("  goes by %s", rate(f)));
  }

  private static String rate(DecayFit f) {
    double factor = f.exponential() ? 100 : 1000;
    return Printed.number(factor * f.goes(f.rate()), 3) + (f.exponential() ? " % of what is left per year" : " mm per year")
        + (Double.isFinite(f.low()) ? ", 95 % range " + Printed.number(factor * f.goes(f.low()), 3) + " to " + Printed.number(factor * f.goes(f.high()), 3) : "; two observations give no range");
  }

  private int plan() throws Exception {
    if (months.isEmpty() || months.stream().anyMatch(m -> m < 0)) {
      throw new IllegalArgumentException("--plan needs --after with whole months, such as 1,3,6,12");
    }
    try (StudySession session = study.open()) {
      Trial trial = Named.only(session, Trial.class, plan, "trial");
      LocalDate start = from != null ? from : Visits.day(trial.getOn()).orElseThrow(() -> new IllegalArgumentException("“" + trial.getName() + "” has no day; state one with --from"));
      int[] made = new int[1];
      session.edit("Plan of visits", () -> made[0] = Visits.plan(trial, start, months).size());
      session.save();
      Out.line("%d visits planned, %d were there already", made[0], months.size() - made[0]);
      return Out.DONE;
    }
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }
}
