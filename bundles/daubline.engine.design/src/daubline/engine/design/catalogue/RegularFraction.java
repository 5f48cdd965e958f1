package daubline.engine.design.catalogue;

import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A full two-level factorial or a regular fraction of one. The first factors are free, each further one is the product
 * of some of them. Words are bit sets of factors; products are exclusive-ors. Sources: Box, Hunter &amp; Hunter 2005,
 * chapter 6; NIST/SEMATECH e-Handbook 5.3.3.4; minimum aberration after Fries &amp; Hunter 1980 (from memory).
 */
public final class RegularFraction {

  private static final String LETTERS = "ABCDEFGHJKLMNOPQRSTUVWXYZ";
  private static final int MOST_SETS = 1_000_000;

  private final int free;
  private final int[] generators;
  private final int[] words;

  /**
   * A fraction with these generators.
   *
   * @param free how many factors are set freely, 1 to 20; the runs are 2 to that power
   * @param generators for each further factor the free ones it is the product of, as bits
   */
  public RegularFraction(int free, int... generators) {
    if (free < 1 || free > 20 || free + generators.length > LETTERS.length()) {
      throw new IllegalArgumentException("a two-level fraction takes 1 to 20 free factors and at most 25 in all, not "
          + free + " and " + generators.length);
    }
    this.free = free;
    this.generators = generators.clone();
    words = group(free, generators);
  }

  /**
   * The fraction of least aberration: the longest shortest word, and fewest words of that length, then of the next.
   *
   * @param runs a power of two, 4 to 128
   * @param factors two or more, fewer than the runs
   * @throws IllegalArgumentException when there is none or the search would take too long
   */
  public static RegularFraction best(int runs, int factors) {
    int free = Integer.numberOfTrailingZeros(runs);
    if (runs < 2 || runs != 1 << free || factors < 2 || factors >= runs) {
      throw new IllegalArgumentException("no two-level fraction has " + runs + " trials for " + factors
          + " factors; the trials must be a power of two above the number of factors");
    }
    if (factors <= free) {
      return new RegularFraction(factors);
    }
    int[] columns = java.util.stream.IntStream.range(1, runs).filter(c -> Integer.bitCount(c) > 1).toArray();
    int added = factors - free;
    if (combinations(columns.length, added) > MOST_SETS) {
      throw new IllegalArgumentException("a fraction of " + runs + " trials for " + factors + " factors has too many "
          + "sets of generators to search; take fewer factors or search a D-optimal design");
    }
    return new Search(free, columns, added).run();
  }

  private static double combinations(int n, int k) {
    double c = 1;
    for (int i = 1; i <= k; i++) {
      c = c * (n - k + i) / i;
    }
    return c;
  }

  private static int[] group(int free, int[] generators) {
    int[] words = new int[1 << generators.length];
    for (int g = 0; g < generators.length; g++) {
      int word = generators[g] | 1 << free + g;
      for (int i = 0; i < 1 << g; i++) {
        words[i | 1 << g] = words[i] ^ word;
      }
    }
    return words;
  }

  /** Tries every set of generators in rising order and keeps the first of the best. */
  private static final class Search {
    private final int free;
    private final int[] columns;
    private final int[] chosen;
    private int[] best;
    private int[] bestPattern;

    Search(int free, int[] columns, int added) {
      this.free = free;
      this.columns = columns;
      chosen = new int[added];
    }

    RegularFraction run() {
      choose(0, 0);
      return new RegularFraction(free, best);
    }

    private void choose(int depth, int from) {
      if (depth == chosen.length) {
        int[] pattern = pattern(group(free, chosen), free + chosen.length);
        if (best == null || Arrays.compare(pattern, bestPattern) < 0) {
          best = chosen.clone();
          bestPattern = pattern;
        }
        return;
      }
      for (int c = from; c <= columns.length - (chosen.length - depth); c++) {
        chosen[depth] = columns[c];
        choose(depth + 1, c + 1);
      }
    }
  }

  private static int[] pattern(int[] words, int factors) {
    int[] lengths = new int[factors + 1];
    for (int i = 1; i < words.length; i++) {
      lengths[Integer.bitCount(words[i])]++;
    }
    return lengths;
  }

  /** How many factors. */
  public int factors() {
    return free + generators.length;
  }

  /** How many trials. */
  public int runs() {
    return 1 << free;
  }

  /** The length of the shortest word of the defining relation; 0 for a full factorial, which has none. */
  public int resolution() {
    int shortest = 0;
    for (int i = 1; i < words.length; i++) {
      int length = Integer.bitCount(words[i]);
      shortest = shortest == 0 ? length : Math.min(shortest, length);
    }
    return shortest;
  }

  /** How many words of the defining relation have each length; the index is the length. */
  public int[] wordLengths() {
    return pattern(words, factors());
  }

  /** The generators, such as "E=ABC". */
  public List<String> generatorText() {
    List<String> text = new ArrayList<>();
    for (int g = 0; g < generators.length; g++) {
      text.add(LETTERS.charAt(free + g) + "=" + letters(generators[g]));
    }
    return text;
  }

  /** The defining relation, such as "I=ABCE=ABDF=CDEF"; "I" for a full factorial. */
  public String definingRelation() {
    return "I" + Arrays.stream(words).filter(w -> w != 0).boxed()
        .sorted(java.util.Comparator.<Integer>comparingInt(Integer::bitCount).thenComparing(RegularFraction::letters))
        .map(w -> "=" + letters(w)).collect(Collectors.joining());
  }

  /** Factors as letters; I is left out because it stands for the mean. */
  public static String letters(int word) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < LETTERS.length(); i++) {
      if ((word >> i & 1) == 1) {
        text.append(LETTERS.charAt(i));
      }
    }
    return text.toString();
  }

  /**
   * Which main effects and interactions of two cannot be told apart, each set once, such as "AB=CE=DF"; sets of one are
   * left out.
   */
  public List<String> aliases() {
    TreeMap<Integer, List<Integer>> sets = new TreeMap<>();
    for (int size = 1; size <= 2; size++) {
      for (int effect = 1; effect < 1 << factors(); effect++) {
        if (Integer.bitCount(effect) == size) {
          sets.computeIfAbsent(key(effect), k -> new ArrayList<>()).add(effect);
        }
      }
    }
    return sets.values().stream().filter(s -> s.size() > 1)
        .sorted(java.util.Comparator.<List<Integer>>comparingInt(s -> Integer.bitCount(s.get(0)))
            .thenComparing(s -> letters(s.get(0))))
        .map(s -> s.stream().map(RegularFraction::letters).sorted(java.util.Comparator.<String>comparingInt(String::length)
            .thenComparing(t -> t)).collect(Collectors.joining("="))).toList();
  }

  private int key(int effect) {
    int least = effect;
    for (int word : words) {
      least = Math.min(least, effect ^ word);
    }
    return least;
  }

  /** The signs by rows, free factors in standard order with the first changing fastest. */
  public int[][] signs() {
    int[][] signs = new int[runs()][factors()];
    for (int r = 0; r < signs.length; r++) {
      for (int f = 0; f < factors(); f++) {
        int word = f < free ? 1 << f : generators[f - free];
        int minus = Integer.bitCount(word) - Integer.bitCount(word & r);
        signs[r][f] = minus % 2 == 0 ? 1 : -1;
      }
    }
    return signs;
  }

  /** The design for these factors, each of two categories or between its limits, with centre trials added. */
  public Design design(List<Factor> on, int centres) {
    List<String> notes = new ArrayList<>();
    String name = generators.length == 0 ? "full factorial of " + runs() + " trials"
        : "two-level fraction of " + runs() + " trials, resolution " + roman(resolution());
    if (generators.length > 0) {
      notes.add("Letters: " + java.util.stream.IntStream.range(0, on.size())
          .mapToObj(i -> LETTERS.charAt(i) + " " + on.get(i).name()).collect(Collectors.joining(", ")) + ".");
      notes.add("Generators " + String.join(", ", generatorText()) + "; defining relation " + definingRelation() + ".");
      notes.add("Cannot be told apart: " + (aliases().isEmpty() ? "no two of the main effects and interactions of two"
          : String.join("; ", aliases())) + ".");
    }
    return TwoLevel.design(name, on, signs(), centres, notes);
  }

  private static String roman(int n) {
    String[] small = {"", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X"};
    return n < small.length ? small[n] : Integer.toString(n);
  }
}
