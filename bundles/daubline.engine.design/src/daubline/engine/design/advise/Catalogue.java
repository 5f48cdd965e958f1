package daubline.engine.design.advise;

import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Progress;
import daubline.engine.design.catalogue.DefinitiveScreening;
import daubline.engine.design.catalogue.LatinHypercube;
import daubline.engine.design.catalogue.PlackettBurman;
import daubline.engine.design.catalogue.RegularFraction;
import daubline.engine.design.catalogue.ResponseSurface;
import java.util.List;

/**
 * The designs with a closed construction that {@link DesignAdvisor} weighs beside the optimal one. A new design is one
 * entry in {@link #all()}; docs/howto/add-a-design.md says how.
 */
public final class Catalogue {

  private static final int STARTS = 12;

  private Catalogue() {
  }

  /** Makes a design for these factors within so many trials, or says why there is none. */
  @FunctionalInterface
  public interface Maker {

    /** The design. @throws IllegalArgumentException saying why these factors or trials do not suit */
    Design make(List<Factor> factors, int trials, long seed, Progress progress);
  }

  /**
   * One kind of design.
   *
   * @param name its name
   * @param when what it is good for, in a clause
   * @param maker how it is made
   */
  public record Kind(String name, String when, Maker maker) {
  }

  /** Every kind. */
  public static List<Kind> all() {
    return List.of(
        new Kind("full factorial", "few factors of two levels, every combination possible", Catalogue::factorial),
        new Kind("two-level fraction", "many factors of two levels, interactions read with care", Catalogue::fraction),
        new Kind("Plackett–Burman", "a first sieve of many factors", Catalogue::plackettBurman),
        new Kind("definitive screening", "a sieve of measured factors that may act along a bend", Catalogue::definitive),
        new Kind("central composite", "bent responses of two to five measured factors", Catalogue::composite),
        new Kind("Box–Behnken", "bent responses without extreme corners", Catalogue::boxBehnken),
        new Kind("Latin hypercube", "looking everywhere without a model", Catalogue::hypercube));
  }

  private static Design factorial(List<Factor> factors, int trials, long seed, Progress progress) {
    if (factors.size() > 20) {
      throw new IllegalArgumentException("2 to the power of " + factors.size() + " trials are beyond any series");
    }
    RegularFraction full = new RegularFraction(factors.size());
    fits(full.runs(), trials);
    return full.design(factors, Math.min(3, trials - full.runs()));
  }

  private static Design fraction(List<Factor> factors, int trials, long seed, Progress progress) {
    int runs = Integer.highestOneBit(Math.max(1, trials));
    while (runs >= 1 << factors.size()) {
      runs /= 2;
    }
    if (runs <= factors.size()) {
      throw new IllegalArgumentException("a fraction needs more trials than factors and a power of two; " + trials + " give " + runs
          + " for " + factors.size() + " factors");
    }
    return RegularFraction.best(runs, factors.size()).design(factors, Math.min(3, trials - runs));
  }

  private static Design plackettBurman(List<Factor> factors, int trials, long seed, Progress progress) {
    int runs = factors.size() < 12 ? 12 : factors.size() < 20 ? 20 : factors.size() < 24 ? 24 : 32;
    fits(runs, trials);
    return PlackettBurman.design(factors, runs, 0);
  }

  private static Design definitive(List<Factor> factors, int trials, long seed, Progress progress) {
    fits(2 * DefinitiveScreening.order(factors.size()) + 1, trials);
    return DefinitiveScreening.design(factors, 0);
  }

  private static Design composite(List<Factor> factors, int trials, long seed, Progress progress) {
    int k = factors.size();
    fits((1 << Math.min(k, 20)) + 2 * k + 1, trials);
    int centres = Math.min(4, trials - (1 << k) - 2 * k);
    return ResponseSurface.centralComposite(factors, ResponseSurface.Star.FACE, centres, 0);
  }

  private static Design boxBehnken(List<Factor> factors, int trials, long seed, Progress progress) {
    Design design = ResponseSurface.boxBehnken(factors, ResponseSurface.usualCentres(factors.size()));
    fits(design.size(), trials);
    return design;
  }

  private static Design hypercube(List<Factor> factors, int trials, long seed, Progress progress) {
    return LatinHypercube.design(factors, Math.max(2, Math.min(trials, 60)), STARTS, seed, progress);
  }

  private static void fits(int needed, int trials) {
    if (needed > trials) {
      throw new IllegalArgumentException("it needs " + needed + " trials, " + trials + " can be afforded");
    }
  }
}
