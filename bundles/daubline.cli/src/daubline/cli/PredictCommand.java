package daubline.cli;

import daubline.analysis.deposit.HiddenNames;
import daubline.analysis.forecast.Overlay;
import daubline.analysis.forecast.TrialForecast;
import daubline.analysis.forecast.TrialPlan;
import daubline.analysis.forecast.TrialPlans;
import daubline.export.Discretion;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Before the fire: what physics, chemistry and published smelts say of trials, as planned or with other values. */
@Command(name = "predict", mixinStandardHelpOptions = true,
    description = "Before the fire: air, fuel, heat, slag, iron and when the slag reaches the air inlet, with how sure that is; "
        + "for one trial, a series, or a grid of values.")
final class PredictCommand implements Callable<Integer> {

  private static final int MOST = 2_000;

  @Mixin
  private StudyArgument study;

  @Option(names = {"--trial", "--series"}, paramLabel = "NAME", description = "only this trial or series, by name or id; may be repeated")
  private List<String> wanted = List.of();

  @Option(names = "--vary", paramLabel = "VARIABLE=A,B,…",
      description = "try these values instead of the study's, such as \"air_flow=400,600,800 L/min\"; repeated, every combination is tried")
  private List<String> vary = List.of();

  @Option(names = "--draws", paramLabel = "N", defaultValue = "300", description = "courses to draw; 0 for the middle course alone (default: ${DEFAULT-VALUE})")
  private int draws;

  @Option(names = "--seed", paramLabel = "N", defaultValue = "20260101", description = "seed of the random numbers (default: ${DEFAULT-VALUE})")
  private long seed;

  @Option(names = "--log", description = "take the burn rate from the charge log where it has three timed charges, also of trials that are over")
  private boolean log;

  @Option(names = "--used", description = "list the values that went in, and what each figure depends on")
  private boolean used;

  @Option(names = "--json", description = "as JSON")
  private boolean json;

  @Override
  public Integer call() throws Exception {
    if (draws < 0 || draws > 100_000) {
      throw new IllegalArgumentException("--draws must lie between 0 and 100000, is " + draws);
    }
    try (StudySession session = study.read()) {
      Map<String, List<TrialForecast>> all = forecasts(session);
      if (json) {
        ForecastJson.write(all, new Discretion(HiddenNames.of(session.study())), System.out);
      } else if (vary.isEmpty()) {
        ForecastText.print(all.get(""), used);
      } else {
        ForecastText.printGrid(all);
      }
      boolean any = all.values().stream().flatMap(List::stream).anyMatch(f -> f.forecast().isPresent());
      if (!any && all.values().stream().allMatch(List::isEmpty)) {
        System.err.println("error: no trial to predict" + (wanted.isEmpty() ? "; plan one in a series" : " is called " + String.join(", ", wanted)));
      }
      return any ? Out.DONE : Out.WRONG;
    }
  }

  /** The forecasts by what was tried; under the empty text as the study stands. */
  private Map<String, List<TrialForecast>> forecasts(StudySession session) {
    Map<String, List<TrialForecast>> all = new LinkedHashMap<>();
    for (Map.Entry<String, Overlay> tried : grid(session).entrySet()) {
      all.put(tried.getKey(), TrialPlans.of(session.study(), tried.getValue()).all().stream().filter(this::isWanted)
          .map(p -> p.forecast(draws, seed, log || p.followsLog())).toList());
    }
    return all;
  }

  private boolean isWanted(TrialPlan plan) {
    return wanted.isEmpty() || wanted.contains(plan.trial()) || wanted.contains(plan.name()) || wanted.contains(plan.series());
  }

  private Map<String, Overlay> grid(StudySession session) {
    Map<String, Overlay> grid = new LinkedHashMap<>(Map.of("", Overlay.NONE));
    for (String axis : vary) {
      Map<String, Overlay> next = new LinkedHashMap<>();
      for (Map.Entry<String, Overlay> before : grid.entrySet()) {
        for (String value : values(axis)) {
          String variable = variable(axis);
          String name = (before.getKey().isEmpty() ? "" : before.getKey() + ", ") + variable + " " + value;
          next.put(name, before.getValue().with(variable, Overlay.value(StudyVariables.of(session.study()), variable, value)));
        }
      }
      grid = next;
      if (grid.size() > MOST) {
        throw new IllegalArgumentException("the grid has more than " + MOST + " points; try fewer values");
      }
    }
    return grid;
  }

  private static String variable(String axis) {
    int equals = axis.indexOf('=');
    if (equals < 1 || equals == axis.length() - 1) {
      throw new IllegalArgumentException("--vary needs VARIABLE=VALUE,VALUE… and got “" + axis + "”");
    }
    return axis.substring(0, equals).strip();
  }

  /** The values of one axis; the unit after the last stands for all that have none. */
  private static List<String> values(String axis) {
    variable(axis);
    List<String> values = new ArrayList<>(List.of(axis.substring(axis.indexOf('=') + 1).split(",")));
    String last = values.getLast().strip();
    String unit = last.replaceFirst("^[-+0-9.eE]+", "").strip();
    return values.stream().map(String::strip).map(v -> v.matches("[-+0-9.eE]+") && !unit.isEmpty() ? v + " " + unit : v)
        .collect(Collectors.toList());
  }
}
