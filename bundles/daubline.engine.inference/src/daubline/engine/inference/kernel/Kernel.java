package daubline.engine.inference.kernel;

/** The agreement of one trial with one piece of evidence on one criterion; logarithms, so that they can be pooled. */
public interface Kernel {

  /** Logarithm of the point agreement at the values as recorded, 0 or less. */
  double log();

  /** Difference in combined standard uncertainties, signed where it has a sign; 0 when the evidence allows the value. */
  double sigmas();

  /** Two-sided probability of a difference this large or larger if the trial were a true reproduction. */
  double compatibility();

  /**
   * Logarithms of the agreement when the trial is drawn within its uncertainty.
   *
   * @param draws random numbers of this trial and criterion
   * @param into filled, one per draw
   */
  void logs(Draws draws, double[] into);

  /**
   * Adds weight × log agreement, floored, of every draw to sums; a kernel may do it in one pass.
   *
   * @param scratch as long as the sums, overwritten
   */
  default void addTo(Draws draws, double weight, double floor, double[] sums, double[] scratch) {
    logs(draws, scratch);
    for (int m = 0; m < sums.length; m++) {
      sums[m] += weight * (scratch[m] >= floor ? scratch[m] : floor);
    }
  }

  /** Logarithms of the agreement when trial and evidence are drawn from one common truth: a true reproduction. */
  void reproduce(Draws draws, double[] into);
}
