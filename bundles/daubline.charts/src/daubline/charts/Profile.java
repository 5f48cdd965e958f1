package daubline.charts;

import daubline.analysis.TrialData;
import daubline.base.Printed;
import daubline.base.Stage;
import daubline.base.Trail;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The section of a furnace in millimetres, heights above the floor; NaN for what is not known.
 *
 * @param diameter inside, at the base
 * @param wall thickness at the base
 * @param height to which it stands, or of the whole furnace
 * @param top inside diameter at the top
 * @param inlet height of the middle of the air inlet
 * @param bore of the air inlet
 * @param pit depth below the floor
 * @param from where each measure comes from, by its name here
 */
record Profile(double diameter, double wall, double height, double top, double inlet, double bore, double pit, Map<String, Trail> from) {

  /** The names of the measures beside their variables. */
  static final Map<String, String> VARIABLES = Map.of("diameter", "base_internal_diameter", "wall", "wall_thickness", "inlet", "inlet_height_above_floor", "bore", "inlet_bore", "pit", "pit_depth",
      "top", "top_internal_diameter");

  private static final double MM = 1000;

  /** What is left: excavated, or the remains of a trial. */
  static Profile found(SheetData sheet) {
    return of(sheet::about, "surviving_height", "none");
  }

  /** What was built. */
  static Profile built(TrialData trial) {
    return of(variable -> trial.at(Stage.AS_BUILT, variable).isEmpty() ? trial.at(Stage.PLANNED, variable) : trial.at(Stage.AS_BUILT, variable),
        "furnace_height", "top_internal_diameter");
  }

  private static Profile of(Function<String, List<Statement>> about, String height, String top) {
    return new Profile(mm(about, "base_internal_diameter"), mm(about, "wall_thickness"), mm(about, height), mm(about, top),
        mm(about, "inlet_height_above_floor"), mm(about, "inlet_bore"), mm(about, "pit_depth"), from(about, height));
  }

  private static Map<String, Trail> from(Function<String, List<Statement>> about, String height) {
    Map<String, Trail> from = new HashMap<>();
    VARIABLES.forEach((measure, variable) -> chosen(about.apply(variable)).ifPresent(s -> from.put(measure, s.trail())));
    chosen(about.apply(height)).ifPresent(s -> from.put("height", s.trail()));
    return Map.copyOf(from);
  }

  private static Optional<Statement> chosen(List<Statement> about) {
    List<Statement> numbers = about.stream().filter(s -> s.amount().isNumber()).toList();
    return numbers.stream().filter(Statement::picked).findFirst().or(() -> numbers.stream().findFirst());
  }

  /** Where a measure comes from; it is said to be worked out where no statement gives it. */
  Trail trail(String measure, double millimetres) {
    String value = Printed.number(millimetres, 3) + "\u00A0mm";
    Trail own = from.get(measure);
    return own == null ? Trail.reckoned(measure, value, "", from.values().stream().distinct().toList()) : own;
  }

  /** The picked statement, otherwise the first that gives a number. */
  private static double mm(Function<String, List<Statement>> about, String variable) {
    return chosen(about.apply(variable)).map(s -> s.amount().value() * MM).orElse(Double.NaN);
  }

  /** Whether there is enough to draw. */
  boolean isDrawable() {
    return diameter > 0;
  }

  double wallOr(double other) {
    return wall > 0 ? wall : other;
  }

  double outerDiameter() {
    return diameter + 2 * wallOr(0);
  }
}
