package daubline.engine.inference.kernel;

import daubline.engine.stats.RandomStream;
import java.util.HashMap;
import java.util.Map;

/**
 * The random numbers of one trial and one criterion, the same for every evidence sheet it is compared with, and those of
 * one sheet and criterion, the same for every trial. Not for use by several threads at once.
 */
public final class Draws {

  private static final long UNIFORM = 1L << 32;
  private static final long PART = 1L << 40;

  private final int count;
  private final long trialKey;
  private final long sheetKey;
  private final Map<Long, double[]> made;
  private final Map<Integer, Map<Long, double[]>> parts;

  /**
   * New draws.
   *
   * @param count how many
   * @param trialKey key of trial and criterion
   * @param sheetKey key of sheet and criterion
   */
  public Draws(int count, long trialKey, long sheetKey) {
    this(count, trialKey, sheetKey, new HashMap<>(), new HashMap<>());
  }

  private Draws(int count, long trialKey, long sheetKey, Map<Long, double[]> made,
      Map<Integer, Map<Long, double[]>> parts) {
    this.count = count;
    this.trialKey = trialKey;
    this.sheetKey = sheetKey;
    this.made = made;
    this.parts = parts;
  }

  /** The same trial against another sheet; what was drawn for the trial is shared. */
  public Draws against(long otherSheetKey) {
    return new Draws(count, trialKey, otherSheetKey, made, parts);
  }

  /** Draws for one part of a criterion, independent of those of other parts. */
  public Draws part(int part) {
    return new Draws(count, RandomStream.key(trialKey, PART + part), RandomStream.key(sheetKey, PART + part),
        parts.computeIfAbsent(part, p -> new HashMap<>()), new HashMap<>());
  }

  /** How many draws. */
  public int count() {
    return count;
  }

  /** Standard normal deviates of one dimension of the trial; not to be changed. */
  public double[] normals(int dimension) {
    return made.computeIfAbsent((long) dimension, d -> new RandomStream(RandomStream.key(trialKey, d)).normals(count));
  }

  /** Uniform deviates of one dimension of the trial; not to be changed. */
  public double[] uniforms(int dimension) {
    return made.computeIfAbsent(UNIFORM + dimension, d -> new RandomStream(RandomStream.key(trialKey, d)).uniforms(count));
  }

  /** Uniform deviates of the sheet, for choosing among contradictory claims. */
  public double[] sheetUniforms() {
    return new RandomStream(sheetKey).uniforms(count);
  }
}
