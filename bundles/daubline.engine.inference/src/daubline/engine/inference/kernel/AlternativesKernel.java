package daubline.engine.inference.kernel;

import java.util.List;

/**
 * Contradictory claims, each tried: every draw takes one claim of the evidence and one of the trial at random, so the
 * spread between the claims is in the interval. The trial is called not consistent only when every claim says so.
 */
public final class AlternativesKernel implements Kernel {

  private static final int PICK = 1 << 20;

  private final List<List<Kernel>> kernels;

  private AlternativesKernel(List<List<Kernel>> kernels) {
    this.kernels = kernels;
  }

  /** A kernel for claims of the evidence, each against claims of the trial; no more than needed. */
  public static Kernel of(List<List<Kernel>> byEvidenceThenFound) {
    boolean single = byEvidenceThenFound.size() == 1 && byEvidenceThenFound.get(0).size() == 1;
    return single ? byEvidenceThenFound.get(0).get(0) : new AlternativesKernel(byEvidenceThenFound);
  }

  private Kernel best() {
    return kernels.stream().flatMap(List::stream)
        .reduce((a, b) -> b.compatibility() > a.compatibility() ? b : a).orElseThrow();
  }

  @Override
  public double log() {
    return Math.log(kernels.stream().flatMap(List::stream).mapToDouble(k -> Math.exp(k.log())).average().orElseThrow());
  }

  @Override
  public double sigmas() {
    return best().sigmas();
  }

  @Override
  public double compatibility() {
    return best().compatibility();
  }

  @Override
  public void logs(Draws draws, double[] into) {
    mix(draws, into, false);
  }

  @Override
  public void reproduce(Draws draws, double[] into) {
    mix(draws, into, true);
  }

  private void mix(Draws draws, double[] into, boolean reproduction) {
    double[] evidencePick = draws.sheetUniforms();
    double[] foundPick = draws.uniforms(PICK);
    double[] one = new double[into.length];
    int rows = kernels.size();
    for (int e = 0; e < rows; e++) {
      int columns = kernels.get(e).size();
      for (int f = 0; f < columns; f++) {
        fill(kernels.get(e).get(f), draws, one, reproduction);
        for (int m = 0; m < into.length; m++) {
          if ((int) (evidencePick[m] * rows) == e && (int) (foundPick[m] * columns) == f) {
            into[m] = one[m];
          }
        }
      }
    }
  }

  private static void fill(Kernel kernel, Draws draws, double[] into, boolean reproduction) {
    if (reproduction) {
      kernel.reproduce(draws, into);
    } else {
      kernel.logs(draws, into);
    }
  }
}
