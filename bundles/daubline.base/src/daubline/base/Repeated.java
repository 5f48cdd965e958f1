package daubline.base;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What repeated measurements of the same thing say together. */
public final class Repeated {

  private Repeated() {
  }

  /**
   * One value for several measurements: the mean of numbers with the standard uncertainty of a mean, s/√n (JCGM 100:2008,
   * 4.2.3), or with what the measurements state themselves where that is more; the largest limit where all are below theirs;
   * the reason where all give the same one.
   *
   * @param all measurements in one unit, at least one
   * @return empty when numbers stand beside limits or reasons: no mean can be told of these
   */
  public static Optional<Amount> mean(List<Amount> all) {
    if (all.size() == 1) {
      return Optional.of(all.get(0));
    }
    if (all.stream().allMatch(Amount::isEstimate)) {
      return Optional.of(ofNumbers(all));
    }
    Set<ValueKind> kinds = all.stream().map(Amount::kind).collect(Collectors.toSet());
    if (kinds.equals(Set.of(ValueKind.BELOW_LIMIT))) {
      return Optional.of(Amount.belowLimit(all.stream().mapToDouble(Amount::high).max().orElseThrow()));
    }
    return kinds.size() == 1 && all.get(0).isMissing() ? Optional.of(all.get(0)) : Optional.empty();
  }

  private static Amount ofNumbers(List<Amount> all) {
    int n = all.size();
    double mean = all.stream().mapToDouble(Amount::value).average().orElseThrow();
    double squares = all.stream().mapToDouble(a -> (a.value() - mean) * (a.value() - mean)).sum();
    double scatter = Math.sqrt(squares / (n - 1) / n);
    double stated = Math.sqrt(all.stream().mapToDouble(a -> Math.pow(sigma(a), 2)).sum()) / n;
    double sigma = Math.max(scatter, stated);
    return sigma > 0 ? Amount.plusMinus(mean, sigma) : Amount.exact(mean);
  }

  /** A range counts as evenly spread (JCGM 100:2008, 4.3.7). */
  private static double sigma(Amount a) {
    return a.kind() == ValueKind.RANGE ? (a.high() - a.low()) / Math.sqrt(12) : a.sigmaOr(0);
  }
}
