package daubline.criteria;

import daubline.base.Amount;
import daubline.base.ValueKind;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.engine.stats.Student;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How far repeats of one recipe differ: the reproducibility of a smelt. It becomes the tolerance of a criterion when the
 * user says so, never by itself.
 *
 * @param criterion id of the criterion
 * @param spread pooled standard deviation within recipes; canonical units, or relative where the criterion goes by ratio
 * @param freedom degrees of freedom behind it
 * @param low lower end of its 90 % interval
 * @param high upper end of its 90 % interval
 * @param recipes number of recipes with two repeats or more
 */
public record Repeats(String criterion, double spread, int freedom, double low, double high, int recipes) {

  /** Key of the setting that the spread may become. */
  public static final String SETTING = NumberCriterion.TOLERANCE;

  private static final double COVERAGE = 0.90;
  private static final double NORMAL = 1.959963984540054;

  /**
   * The spread of every criterion on a number that was repeated.
   *
   * @param byRecipe remains of the repeats of each recipe
   */
  public static List<Repeats> of(List<List<SheetData>> byRecipe) {
    List<Repeats> all = new ArrayList<>();
    for (Criterion criterion : Criteria.all()) {
      if (criterion instanceof NumberCriterion number) {
        of(number, byRecipe).ifPresent(all::add);
      }
    }
    return all;
  }

  private static Optional<Repeats> of(NumberCriterion criterion, List<List<SheetData>> byRecipe) {
    double squares = 0;
    int freedom = 0;
    int recipes = 0;
    for (List<SheetData> repeats : byRecipe) {
      double[] values = repeats.stream().map(r -> value(criterion, r)).flatMap(Optional::stream).mapToDouble(Double::doubleValue).sorted().toArray();
      double mean = Arrays.stream(values).average().orElse(0);
      for (double v : values) {
        squares += (v - mean) * (v - mean);
      }
      freedom += Math.max(0, values.length - 1);
      recipes += values.length > 1 ? 1 : 0;
    }
    if (freedom == 0) {
      return Optional.empty();
    }
    double spread = Math.sqrt(squares / freedom);
    double[] ends = Student.sigmaInterval(spread, freedom, COVERAGE);
    return Optional.of(new Repeats(criterion.id(), spread, freedom, ends[0], ends[1], recipes));
  }

  /** One measured value; contradictory claims without a pick give none. */
  private static Optional<Double> value(NumberCriterion criterion, SheetData sheet) {
    List<Statement> usable = Claims.of(criterion.statements(sheet, Side.TRIAL, SettingValues.standard(criterion)), Side.TRIAL, Repeats::isMeasured).usable();
    if (usable.size() != 1 || criterion.isByRatio() && usable.get(0).amount().value() <= 0) {
      return Optional.empty();
    }
    double value = usable.get(0).amount().value();
    return Optional.of(criterion.isByRatio() ? Math.log(value) : value);
  }

  private static boolean isMeasured(Amount amount) {
    return amount.kind() == ValueKind.EXACT || amount.kind() == ValueKind.PLUS_MINUS || amount.kind() == ValueKind.RANGE;
  }

  /** The tolerance that the spread makes: widened by Student's 97.5 % point over the normal one, for few repeats show little of it. */
  public double tolerance() {
    return spread * Student.quantile(0.975, freedom) / NORMAL;
  }

  /** Settings of the criteria in which the tolerance is that of the repeats that the user chose. */
  public static Map<String, Map<String, String>> asSettings(List<Repeats> chosen) {
    Map<String, Map<String, String>> settings = new LinkedHashMap<>();
    chosen.forEach(r -> settings.put(r.criterion(), Map.of(NumberCriterion.TOLERANCE, Double.toString(r.tolerance()))));
    return settings;
  }
}
