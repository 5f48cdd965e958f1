package daubline.engine.inference.kernel;

import daubline.engine.stats.RandomStream;
import java.util.HashMap;
import java.util.Map;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * The random numbers of one trial and one criterion, the same for every evidence sheet it is compared with, and those of
 * one sheet and criterion, the same for every trial. What several criteria read of the same record, such as the oxides of
 * one slag, is drawn once for all of them by its name. Not for use by several threads at once.
 */
public final class Draws {

  private static final long UNIFORM = 1L << 32;
  private static final long PART = 1L << 40;

  private final int count;
  private final long trialKey;
  private final LongSupplier sheetKey;
  private final Shared shared;
  private final Map<Long, double[]> made;
  private final Map<Integer, Map<Long, double[]>> parts;
  private final Map<Object, double[][]> kept;

  /**
   * New draws that share nothing with other criteria.
   *
   * @param count how many
   * @param trialKey key of trial and criterion
   * @param sheetKey key of sheet and criterion
   */
  public Draws(int count, long trialKey, long sheetKey) {
    this(count, trialKey, () -> sheetKey, new Shared(trialKey), new HashMap<>(), new HashMap<>(), new HashMap<>());
  }

  private Draws(int count, long trialKey, LongSupplier sheetKey, Shared shared, Map<Long, double[]> made,
      Map<Integer, Map<Long, double[]>> parts, Map<Object, double[][]> kept) {
    this.count = count;
    this.trialKey = trialKey;
    this.sheetKey = sheetKey;
    this.shared = shared;
    this.made = made;
    this.parts = parts;
    this.kept = kept;
  }

  /** Draws of one criterion of a trial, which share with those of its other criteria what is {@link #named}. */
  public static Draws of(int count, String criterion, Shared shared) {
    return new Draws(count, RandomStream.key(shared.key, criterion), () -> 0, shared, new HashMap<>(), new HashMap<>(), new HashMap<>());
  }

  /** The same trial against another sheet, whose key is asked for only when needed; the trial's draws are shared. */
  public Draws against(LongSupplier otherSheetKey) {
    return new Draws(count, trialKey, otherSheetKey, shared, made, parts, kept);
  }

  /** Draws for one part of a criterion, independent of those of other parts. */
  public Draws part(int part) {
    return new Draws(count, RandomStream.key(trialKey, PART + part), () -> RandomStream.key(sheetKey.getAsLong(), PART + part),
        shared, parts.computeIfAbsent(part, p -> new HashMap<>()), new HashMap<>(), new HashMap<>());
  }

  /** Draws of something that several criteria of a trial may read, the same for all of them. */
  public Draws named(String name) {
    return shared.named.computeIfAbsent(name, n -> new Draws(count, RandomStream.key(shared.key, "named", n), 0));
  }

  /** How many draws. */
  public int count() {
    return count;
  }

  /** Standard normal deviates of one dimension of the trial; not to be changed. */
  public double[] normals(int dimension) {
    return made.computeIfAbsent((long) dimension, d -> new RandomStream(RandomStream.key(trialKey, d)).normals(count));
  }

  /**
   * What a kernel works out of these draws for every sheet alike; worked out once, not to be changed.
   *
   * @param what what it is, with everything it depends on besides the draws
   */
  public double[][] kept(Object what, Supplier<double[][]> make) {
    double[][] known = kept.get(what);
    if (known == null) {
      known = make.get();
      kept.put(what, known);
    }
    return known;
  }

  /** Uniform deviates of one dimension of the trial; not to be changed. */
  public double[] uniforms(int dimension) {
    return made.computeIfAbsent(UNIFORM + dimension, d -> new RandomStream(RandomStream.key(trialKey, d)).uniforms(count));
  }

  /** Uniform deviates of the sheet, for choosing among contradictory claims. */
  public double[] sheetUniforms() {
    return new RandomStream(sheetKey.getAsLong()).uniforms(count);
  }

  /** What the criteria of one trial share. */
  public static final class Shared {

    private final long key;
    private final Map<String, Draws> named = new HashMap<>();

    /** Nothing is drawn yet; the key is that of the trial. */
    public Shared(long key) {
      this.key = key;
    }
  }
}
