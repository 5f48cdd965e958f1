package daubline.charts;

import daubline.base.Units;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.slag.Liquidus;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lines of equal liquidus in the triangle of FeO, SiO2 and Al2O3, from the estimate of the process engine. They end where
 * that estimate is too unsure to be drawn.
 */
final class LiquidusField {

  /** Standard uncertainty beyond which no line is drawn, K. */
  static final double WORST_SIGMA = 100;

  private static final List<Integer> LEVELS = List.of(1100, 1200, 1300, 1400);
  private static final int STEPS = 90;

  private LiquidusField() {
  }

  /** A line of equal liquidus in degrees Celsius. */
  record Contour(int celsius, List<OxideShares> points) {
  }

  /** Worked out when the first figure needs them; they are the same for every study. */
  private static final class Once {
    static final List<Contour> CONTOURS = List.copyOf(worked());
  }

  /** Every line long enough to be drawn. */
  static List<Contour> contours() {
    return Once.CONTOURS;
  }

  private static List<Contour> worked() {
    double[][] field = field();
    List<Contour> contours = new ArrayList<>();
    for (int level : LEVELS) {
      chains(crossings(field, level)).stream().filter(chain -> chain.size() > 4).forEach(chain -> contours.add(new Contour(level, chain)));
    }
    return contours;
  }

  /** The liquidus in °C at shares of FeO and SiO2 in steps; NaN where nothing is said. */
  private static double[][] field() {
    double[][] field = new double[STEPS + 1][STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      for (int j = 0; j <= STEPS; j++) {
        field[i][j] = i == 0 || j == 0 || i + j > STEPS ? Double.NaN : celsius((double) i / STEPS, (double) j / STEPS);
      }
    }
    return field;
  }

  private static double celsius(double feo, double sio2) {
    Liquidus liquidus = Liquidus.of(new Analysis(Map.of(Oxide.FEO, feo, Oxide.SIO2, sio2, Oxide.AL2O3, Math.max(0, 1 - feo - sio2))));
    return liquidus.sigma() <= WORST_SIGMA ? liquidus.temperature() - Units.ZERO_CELSIUS : Double.NaN;
  }

  private static List<OxideShares[]> crossings(double[][] field, int level) {
    List<OxideShares[]> segments = new ArrayList<>();
    for (int i = 0; i < STEPS; i++) {
      for (int j = 0; i + j < STEPS; j++) {
        segment(field, level, segments, i, j, i + 1, j, i, j + 1);
        if (i + j + 2 <= STEPS) {
          segment(field, level, segments, i + 1, j, i, j + 1, i + 1, j + 1);
        }
      }
    }
    return segments;
  }

  /** Where a level crosses one small triangle given by three corners. */
  private static void segment(double[][] field, int level, List<OxideShares[]> segments, int... corners) {
    List<OxideShares> ends = new ArrayList<>();
    for (int c = 0; c < 3; c++) {
      int i = corners[2 * c];
      int j = corners[2 * c + 1];
      int k = corners[(2 * c + 2) % 6];
      int l = corners[(2 * c + 3) % 6];
      double a = field[i][j];
      double b = field[k][l];
      if (a < level != b < level && Double.isFinite(a) && Double.isFinite(b)) {
        double t = (level - a) / (b - a);
        double feo = (i + t * (k - i)) / STEPS;
        double sio2 = (j + t * (l - j)) / STEPS;
        ends.add(new OxideShares(feo, sio2, 1 - feo - sio2));
      }
    }
    if (ends.size() == 2) {
      segments.add(new OxideShares[] {ends.get(0), ends.get(1)});
    }
  }

  /** Joins segments that share an end. */
  private static List<List<OxideShares>> chains(List<OxideShares[]> segments) {
    Map<String, List<OxideShares[]>> at = new HashMap<>();
    segments.forEach(s -> {
      for (OxideShares end : s) {
        at.computeIfAbsent(key(end), k -> new ArrayList<>()).add(s);
      }
    });
    List<List<OxideShares>> chains = new ArrayList<>();
    for (OxideShares[] first : segments) {
      if (at.get(key(first[0])).remove(first)) {
        at.get(key(first[1])).remove(first);
        Deque<OxideShares> chain = new ArrayDeque<>(List.of(first));
        for (OxideShares next = next(at, first[1]); next != null; next = next(at, next)) {
          chain.addLast(next);
        }
        for (OxideShares next = next(at, first[0]); next != null; next = next(at, next)) {
          chain.addFirst(next);
        }
        chains.add(List.copyOf(chain));
      }
    }
    return chains;
  }

  /** The other end of an unused segment that begins here, which is used up; null when there is none. */
  private static OxideShares next(Map<String, List<OxideShares[]>> at, OxideShares here) {
    List<OxideShares[]> here0 = at.get(key(here));
    if (here0.isEmpty()) {
      return null;
    }
    OxideShares[] segment = here0.remove(0);
    OxideShares other = key(segment[0]).equals(key(here)) ? segment[1] : segment[0];
    at.get(key(other)).remove(segment);
    return other;
  }

  private static String key(OxideShares s) {
    return Math.round(s.feo() * 1e7) + " " + Math.round(s.sio2() * 1e7);
  }
}
