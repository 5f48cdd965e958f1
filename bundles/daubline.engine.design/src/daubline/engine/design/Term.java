package daubline.engine.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One term of a model: a product of factors.
 *
 * @param factors the indices of the factors, rising, one repeated for a square; empty for the mean
 */
public record Term(List<Integer> factors) implements Comparable<Term> {

  /** The mean. */
  public static final Term MEAN = new Term(List.of());

  public Term {
    factors = factors.stream().sorted().toList();
  }

  /** The product of these factors. */
  public static Term of(Integer... factors) {
    return new Term(Arrays.asList(factors));
  }

  /** How many factors are multiplied. */
  public int order() {
    return factors.size();
  }

  /** The name in words, such as "height × blast" or "blast²". */
  public String name(List<Factor> all) {
    if (factors.isEmpty()) {
      return "mean";
    }
    List<String> parts = new ArrayList<>();
    for (int f : factors.stream().distinct().toList()) {
      long power = factors.stream().filter(x -> x == f).count();
      parts.add(all.get(f).name() + (power == 1 ? "" : power == 2 ? "²" : "^" + power));
    }
    return parts.stream().collect(Collectors.joining(" × "));
  }

  @Override
  public int compareTo(Term other) {
    int byOrder = Integer.compare(order(), other.order());
    return byOrder != 0 ? byOrder : factors.toString().compareTo(other.factors.toString());
  }
}
