package daubline.engine.process.balance;

import java.util.List;

/**
 * What went in of one element, what was found again, and what was not. The remainder is never forced to zero.
 *
 * @param element the element or oxide balanced
 * @param in mass in, kg
 * @param out mass found, kg
 * @param remainder mass in less mass found, kg; negative when more was found than went in
 * @param sigma standard uncertainty of the remainder, kg
 * @param sources what it came in with, as given
 * @param finds what it was found in, as given
 */
public record ElementBalance(String element, double in, double out, double remainder, double sigma, List<Entry> sources, List<Entry> finds) {

  public ElementBalance {
    sources = List.copyOf(sources);
    finds = List.copyOf(finds);
  }

  /**
   * One side's entry.
   *
   * @param what material, in the user's words
   * @param mass mass, kg
   * @param massSigma its standard uncertainty, kg
   * @param share share of the element, 0 to 1
   * @param shareSigma its standard uncertainty
   */
  public record Entry(String what, double mass, double massSigma, double share, double shareSigma) {

    /** Mass of the element, kg. */
    public double amount() {
      return mass * share;
    }

    /** Variance of the product, with the second-order term. Source: JCGM 100:2008, 5.1.2 and note. */
    double variance() {
      return square(mass * shareSigma) + square(share * massSigma) + square(massSigma * shareSigma);
    }

    private static double square(double v) {
      return v * v;
    }
  }

  /** Balances independent entries. */
  public static ElementBalance of(String element, List<Entry> in, List<Entry> out) {
    double into = in.stream().mapToDouble(Entry::amount).sum();
    double found = out.stream().mapToDouble(Entry::amount).sum();
    double variance = in.stream().mapToDouble(Entry::variance).sum()
        + out.stream().mapToDouble(Entry::variance).sum();
    return new ElementBalance(element, into, found, into - found, Math.sqrt(variance), in, out);
  }

  /** Remainder as a share of what went in; NaN when nothing went in. */
  public double remainderShare() {
    return in > 0 ? remainder / in : Double.NaN;
  }

  /** Whether the remainder lies within twice its standard uncertainty of nothing. */
  public boolean closes() {
    return Math.abs(remainder) <= 2 * sigma;
  }
}
