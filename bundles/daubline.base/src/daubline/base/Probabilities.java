package daubline.base;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Words with probabilities, written "round:0.7; oval:0.3". */
public final class Probabilities {

  private Probabilities() {
  }

  /**
   * Reads words with probabilities; they are scaled to sum to one.
   *
   * @return empty when the text has another form, a negative share, or no positive one
   */
  public static Optional<Map<String, Double>> parse(String text, DecimalSign decimal) {
    Map<String, Double> shares = new LinkedHashMap<>();
    for (String part : text.split(";")) {
      int colon = part.lastIndexOf(':');
      Optional<Double> share = colon < 0 ? Optional.empty() : Numbers.parse(part.substring(colon + 1), decimal);
      if (share.isEmpty() || share.get() < 0) {
        return Optional.empty();
      }
      shares.merge(part.substring(0, colon).strip(), share.get(), Double::sum);
    }
    double sum = shares.values().stream().mapToDouble(Double::doubleValue).sum();
    if (!(sum > 0)) {
      return Optional.empty();
    }
    shares.replaceAll((word, share) -> share / sum);
    return Optional.of(shares);
  }

  /** The probabilities of a category amount; a single word has probability one. */
  public static Map<String, Double> of(Amount amount) {
    return parse(amount.category(), DecimalSign.POINT).or(() -> parse(amount.category(), DecimalSign.COMMA))
        .orElseGet(() -> Map.of(amount.category(), 1.0));
  }
}
