package daubline.engine.process.slag;

import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import java.util.List;

/**
 * Measured viscosities of FeO–SiO2 and FeO–SiO2–Al2O3 melts: study, wt% SiO2, total iron as FeO, Al2O3, K, log10 Pa·s.
 *
 * <p>Sources: G. Kaiura, J. Toguri, G. Marchant, Can. Metall. Q. 16 (1977) 156; M. Chen, S. Raghunath, B. Zhao, Metall.
 * Mater. Trans. B 44 (2013) 820; both after the compilation of C. Ferraina, B. Baldoni, C. Le Losq 2024,
 * doi 10.18715/IPGP.2024.lycv4gsa. Compositions there are mole percent with a modelled redox state: total iron was put
 * back to FeO, and nine rows of Kaiura that lie a decade off were left out.
 */
final class MeasuredMelts {

  /**
   * One measurement.
   *
   * @param study first author
   * @param slag composition
   * @param t temperature, K
   * @param log10 decimal logarithm of the viscosity in Pa·s
   */
  record Row(String study, Analysis slag, double t, double log10) {
  }

  static final List<Row> ROWS = """
      Chen 27.13 68.43 4.43 1473 -1.17
      Chen 27.13 68.44 4.43 1523 -1.26
      Chen 27.13 68.44 4.43 1623 -1.41
      Chen 27.14 68.43 4.42 1573 -1.35
      Chen 31.01 62.49 6.5 1523 -0.91
      Chen 31.01 62.48 6.5 1573 -0.99
      Chen 31.01 62.49 6.5 1723 -1.21
      Chen 31.01 62.49 6.5 1773 -1.27
      Chen 31.01 62.49 6.51 1473 -0.79
      Chen 31.01 62.49 6.51 1623 -1.06
      Chen 31.01 62.49 6.51 1673 -1.14
      Chen 32.87 39.51 27.62 1725 -0.35
      Chen 32.87 39.5 27.62 1745 -0.42
      Chen 32.88 39.51 27.61 1678 -0.21
      Chen 32.88 39.51 27.61 1700 -0.28
      Chen 32.88 39.51 27.61 1770 -0.49
      Chen 34.34 49.32 16.34 1623 -0.43
      Chen 34.34 49.32 16.34 1673 -0.55
      Chen 34.34 49.32 16.34 1723 -0.66
      Chen 34.34 49.32 16.34 1773 -0.77
      Chen 34.34 49.31 16.35 1573 -0.27
      Chen 35.43 60.22 4.34 1473 -0.52
      Chen 35.43 60.22 4.35 1523 -0.64
      Chen 35.43 60.23 4.35 1623 -0.83
      Chen 35.43 60.22 4.35 1773 -1.1
      Chen 35.44 60.22 4.34 1573 -0.76
      Chen 35.44 60.22 4.34 1673 -0.93
      Chen 39.97 56.99 3.03 1623 -0.56
      Chen 39.97 56.99 3.04 1673 -0.68
      Chen 39.97 56.99 3.04 1723 -0.76
      Chen 39.98 56.99 3.03 1573 -0.44
      Chen 41.64 52.03 6.33 1673 -0.61
      Chen 41.64 52.03 6.34 1573 -0.35
      Chen 41.64 52.02 6.34 1623 -0.48
      Chen 41.64 52.02 6.34 1723 -0.7
      Chen 41.65 52.03 6.33 1523 -0.21
      Chen 41.97 34.2 23.83 1653 0.48
      Chen 41.97 34.2 23.83 1743 0.16
      Chen 41.97 34.19 23.83 1773 0.06
      Chen 41.97 34.2 23.84 1683 0.38
      Chen 41.97 34.2 23.84 1713 0.26
      Chen 43.44 42.35 14.21 1473 0.76
      Chen 43.44 42.35 14.21 1523 0.55
      Chen 43.44 42.35 14.21 1573 0.37
      Chen 43.44 42.35 14.21 1623 0.2
      Chen 43.44 42.35 14.21 1673 0.05
      Chen 43.44 42.35 14.21 1773 -0.21
      Chen 43.45 42.35 14.21 1723 -0.1
      Kaiura 22.46 77.54 0 1473.15 -1.38
      Kaiura 22.46 77.54 0 1573.15 -1.52
      Kaiura 22.46 77.54 0 1573.15 -1.49
      Kaiura 22.46 77.54 0 1623.15 -1.52
      Kaiura 22.47 77.53 0 1523.15 -1.43
      Kaiura 22.47 77.53 0 1623.15 -1.54
      Kaiura 24.95 75.05 0 1573.15 -1.36
      Kaiura 24.96 75.04 0 1473.15 -1.21
      Kaiura 24.96 75.04 0 1473.15 -1.28
      Kaiura 24.96 75.04 0 1473.15 -1.27
      Kaiura 24.96 75.04 0 1523.15 -1.26
      Kaiura 24.96 75.04 0 1523.15 -1.34
      Kaiura 24.96 75.04 0 1523.15 -1.32
      Kaiura 24.96 75.04 0 1573.15 -1.44
      Kaiura 24.96 75.04 0 1573.15 -1.36
      Kaiura 24.96 75.04 0 1573.15 -1.41
      Kaiura 24.96 75.04 0 1623.15 -1.46
      Kaiura 24.96 75.04 0 1623.15 -1.38
      Kaiura 24.96 75.04 0 1623.15 -1.43
      Kaiura 24.96 75.04 0 1623.15 -1.39
      Kaiura 27.47 72.53 0 1473.15 -1.24
      Kaiura 27.47 72.53 0 1473.15 -1.24
      Kaiura 27.47 72.53 0 1473.15 -1.22
      Kaiura 27.47 72.53 0 1523.15 -1.37
      Kaiura 27.47 72.53 0 1523.15 -1.32
      Kaiura 27.47 72.53 0 1523.15 -1.3
      Kaiura 27.47 72.53 0 1573.15 -1.39
      Kaiura 27.47 72.53 0 1573.15 -1.38
      Kaiura 27.47 72.53 0 1573.15 -1.37
      Kaiura 27.47 72.53 0 1573.15 -1.36
      Kaiura 27.47 72.53 0 1623.15 -1.4
      Kaiura 27.47 72.53 0 1623.15 -1.39
      Kaiura 27.48 72.52 0 1523.15 -1.31
      Kaiura 27.48 72.52 0 1623.15 -1.4
      Kaiura 27.48 72.52 0 1623.15 -1.38
      Kaiura 28.7 71.3 0 1573.15 -1.3
      Kaiura 28.7 71.3 0 1623.15 -1.4
      Kaiura 28.71 71.29 0 1473.15 -1.24
      Kaiura 28.71 71.29 0 1473.15 -1.21
      Kaiura 28.71 71.29 0 1523.15 -1.28
      Kaiura 28.71 71.29 0 1523.15 -1.31
      Kaiura 28.71 71.29 0 1523.15 -1.29
      Kaiura 28.71 71.29 0 1573.15 -1.33
      Kaiura 28.71 71.29 0 1573.15 -1.31
      Kaiura 28.71 71.29 0 1573.15 -1.34
      Kaiura 28.71 71.29 0 1623.15 -1.33
      Kaiura 28.71 71.29 0 1623.15 -1.36
      Kaiura 30 70 0 1473.15 -1.08
      Kaiura 30 70 0 1473.15 -0.93
      Kaiura 30 70 0 1523.15 -1.17
      Kaiura 30 70 0 1523.15 -1.04
      Kaiura 30 70 0 1573.15 -1.31
      Kaiura 30 70 0 1573.15 -1.28
      Kaiura 30 70 0 1573.15 -1.15
      Kaiura 30 70 0 1623.15 -1.39
      Kaiura 30 70 0 1623.15 -1.34
      Kaiura 30 70 0 1623.15 -1.26
      Kaiura 31.18 68.82 0 1473.15 -1.15
      Kaiura 31.18 68.82 0 1523.15 -1.24
      Kaiura 31.18 68.82 0 1573.15 -1.28
      Kaiura 31.18 68.82 0 1623.15 -1.34
      Kaiura 32.46 67.54 0 1473.15 -1.06
      Kaiura 32.46 67.54 0 1473.15 -1.06
      Kaiura 32.46 67.54 0 1473.15 -1.06
      Kaiura 32.46 67.54 0 1523.15 -1.12
      Kaiura 32.46 67.54 0 1523.15 -1.15
      Kaiura 32.46 67.54 0 1523.15 -1.16
      Kaiura 32.46 67.54 0 1523.15 -1.15
      Kaiura 32.46 67.54 0 1573.15 -1.22
      Kaiura 32.46 67.54 0 1573.15 -1.22
      Kaiura 32.46 67.54 0 1573.15 -1.21
      Kaiura 32.46 67.54 0 1573.15 -1.2
      Kaiura 32.46 67.54 0 1623.15 -1.28
      Kaiura 32.46 67.54 0 1623.15 -1.28
      Kaiura 32.46 67.54 0 1623.15 -1.27
      Kaiura 32.46 67.54 0 1623.15 -1.26
      Kaiura 34.98 65.02 0 1573.15 -1.02
      Kaiura 34.98 65.02 0 1573.15 -1
      Kaiura 34.98 65.02 0 1623.15 -1.09
      Kaiura 34.99 65.01 0 1473.15 -0.81
      Kaiura 34.99 65.01 0 1523.15 -0.98
      Kaiura 34.99 65.01 0 1523.15 -0.89
      Kaiura 34.99 65.01 0 1573.15 -1.02
      Kaiura 34.99 65.01 0 1573.15 -1.01
      Kaiura 34.99 65.01 0 1573.15 -0.99
      Kaiura 34.99 65.01 0 1623.15 -1.11
      Kaiura 34.99 65.01 0 1623.15 -1.08
      Kaiura 37.51 62.49 0 1523.15 -0.86
      Kaiura 37.51 62.49 0 1573.15 -0.98
      Kaiura 37.51 62.49 0 1573.15 -0.96
      Kaiura 37.51 62.49 0 1573.15 -0.94
      Kaiura 37.51 62.49 0 1623.15 -1.08
      Kaiura 37.51 62.49 0 1623.15 -1.05
      Kaiura 37.51 62.49 0 1623.15 -1.02
      """.lines().map(String::strip).map(MeasuredMelts::row).toList();

  private MeasuredMelts() {
  }

  private static Row row(String line) {
    String[] f = line.split(" ");
    double[] v = new double[6];
    for (int i = 1; i < 6; i++) {
      v[i] = Double.parseDouble(f[i]);
    }
    return new Row(f[0], Analysis.ofPercent(Oxide.SIO2, v[1], Oxide.FEO, v[2], Oxide.AL2O3, v[3]), v[4], v[5]);
  }
}
