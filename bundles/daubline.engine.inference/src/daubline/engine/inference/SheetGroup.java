package daubline.engine.inference;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Probabilities;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.engine.stats.Student;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The sheets of several features – of a site, a phase or a region – as one sheet that says what a further feature of the
 * group would look like. Numbers become mean and prediction spread; words become probabilities by frequency; limits, and
 * present beside absent, stand side by side and are each tried. Residues and analyses of all features are kept together,
 * and the features beside them, so that a criterion can tell the spread between features from that within one.
 */
public final class SheetGroup {

  private static final double NORMAL = 1.959963984540054;
  private static final double COVERAGE = 0.975;

  private SheetGroup() {
  }

  /**
   * One sheet for the group; the order of the features changes nothing.
   *
   * @param id id of the group
   * @param name its name as printed
   * @param features one sheet or more
   */
  public static SheetData of(String id, String name, List<SheetData> features) {
    List<SheetData> ordered = features.stream().sorted(Comparator.comparing(SheetData::id)).toList();
    TreeSet<String> variables = new TreeSet<>();
    ordered.forEach(f -> variables.addAll(f.statements().keySet()));
    Map<String, List<Statement>> statements = new LinkedHashMap<>();
    variables.forEach(v -> statements.put(v, merge(v, ordered)));
    double sampling = ordered.stream().mapToDouble(SheetData::samplingFraction).filter(f -> !Double.isNaN(f)).min().orElse(Double.NaN);
    return new SheetData(id, name, sampling, statements, ordered.stream().flatMap(f -> f.residues().stream()).toList(),
        ordered.stream().flatMap(f -> f.analyses().stream()).toList(), ordered.size() < 2 ? List.of() : ordered);
  }

  private static List<Statement> merge(String variable, List<SheetData> features) {
    return merged(variable, features.stream().map(f -> f.about(variable)).toList());
  }

  /** What a group says of one variable, of which each feature says something or nothing. */
  public static List<Statement> merged(String variable, List<List<Statement>> features) {
    List<List<Statement>> each = features.stream().map(SheetGroup::considered).filter(l -> !l.isEmpty()).toList();
    List<List<Statement>> numbers = each.stream().filter(l -> l.stream().allMatch(SheetGroup::isMeasured)).toList();
    if (numbers.size() >= 2) {
      return List.of(prediction(variable, numbers));
    }
    List<List<Statement>> words = each.stream().filter(l -> l.stream().allMatch(s -> s.amount().kind() == ValueKind.CATEGORY)).toList();
    return words.size() >= 2 ? List.of(frequencies(variable, words)) : each.stream().flatMap(List::stream).toList();
  }

  /** What a feature says: the pick, or every statement that is not missing, or the reasons why there is none. */
  private static List<Statement> considered(List<Statement> statements) {
    List<Statement> picked = statements.stream().filter(Statement::picked).toList();
    List<Statement> said = (picked.isEmpty() ? statements : picked).stream().filter(s -> !s.amount().isMissing()).toList();
    return said.isEmpty() ? statements : said;
  }

  private static boolean isMeasured(Statement statement) {
    return switch (statement.amount().kind()) {
      case EXACT, PLUS_MINUS, RANGE -> true;
      default -> false;
    };
  }

  /** Mean of the features; as spread half the 95 % prediction interval for one more over 1.96, by Student's t. */
  private static Statement prediction(String variable, List<List<Statement>> features) {
    double[] values = features.stream().mapToDouble(SheetGroup::middle).toArray();
    int n = values.length;
    double mean = 0;
    for (double v : values) {
      mean += v / n;
    }
    double squares = 0;
    for (double v : values) {
      squares += (v - mean) * (v - mean);
    }
    double measuring = features.stream().mapToDouble(f -> Math.pow(measuring(f), 2)).average().orElse(0);
    double between = Math.max(squares / (n - 1), measuring);
    double sigma = Math.sqrt(between * oneMore(n));
    return statement(variable, Amount.plusMinus(mean, sigma), "One more feature of " + n + " like these, between-feature spread "
        + Printed.number(Math.sqrt(between), 2) + " widened for so few", features);
  }

  /**
   * What the variance between features is multiplied with to predict one more: 1 + 1/n, and the square of Student's 97.5 %
   * point over the normal one, because few features show little of the spread.
   *
   * @param features two or more
   */
  public static double oneMore(int features) {
    return Math.pow(Student.quantile(COVERAGE, features - 1) / NORMAL, 2) * (1 + 1.0 / features);
  }

  private static double middle(List<Statement> claims) {
    return (claims.stream().mapToDouble(s -> lower(s.amount())).min().orElseThrow()
        + claims.stream().mapToDouble(s -> upper(s.amount())).max().orElseThrow()) / 2;
  }

  /** Measuring uncertainty of a feature; that of a range and of contradictory claims is the width over √12. */
  private static double measuring(List<Statement> claims) {
    double width = claims.stream().mapToDouble(s -> upper(s.amount())).max().orElseThrow()
        - claims.stream().mapToDouble(s -> lower(s.amount())).min().orElseThrow();
    double stated = claims.stream().mapToDouble(s -> s.amount().sigmaOr(0)).max().orElse(0);
    return Math.hypot(width / Math.sqrt(12), stated);
  }

  private static double lower(Amount amount) {
    return amount.kind() == ValueKind.RANGE ? amount.low() : amount.value();
  }

  private static double upper(Amount amount) {
    return amount.kind() == ValueKind.RANGE ? amount.high() : amount.value();
  }

  private static Statement frequencies(String variable, List<List<Statement>> features) {
    Map<String, Double> shares = new TreeMap<>();
    for (List<Statement> claims : features) {
      claims.forEach(s -> Probabilities.of(s.amount()).forEach((word, p) -> shares.merge(word, p / claims.size() / features.size(), Double::sum)));
    }
    List<String> parts = new ArrayList<>();
    shares.forEach((word, p) -> parts.add(word + ":" + Printed.number(p, 6)));
    return statement(variable, Amount.category(shares.size() == 1 ? shares.keySet().iterator().next() : String.join("; ", parts)),
        "Frequency over " + features.size() + " features", features);
  }

  private static Statement statement(String variable, Amount amount, String what, List<List<Statement>> features) {
    List<Statement> all = features.stream().flatMap(List::stream).toList();
    double sampling = all.stream().mapToDouble(Statement::samplingFraction).filter(f -> !Double.isNaN(f)).min().orElse(Double.NaN);
    return new Statement("group." + variable, amount, sampling, Double.NaN, false, all.stream().anyMatch(Statement::doubtful),
        new Trail(what, "", "", all.stream().map(Statement::trail).toList()));
  }
}
