package daubline.criteria;

import daubline.base.Material;
import daubline.base.Trail;
import daubline.engine.inference.AnalysisData;
import daubline.engine.inference.SheetData;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The slag analyses of one sheet, recast, as replicates of one slag.
 *
 * @param analyses in an order that does not depend on the sheet's
 */
record SlagSample(List<Recast> analyses) {

  /** The slag analyses whose specimen contains a text; all of them when it is empty. */
  static SlagSample of(SheetData sheet, String specimen) {
    return new SlagSample(sheet.analyses().stream().filter(a -> a.material() == Material.SLAG)
        .filter(a -> a.specimen().toLowerCase(Locale.ROOT).contains(specimen.strip().toLowerCase(Locale.ROOT)))
        .sorted(Comparator.comparing(AnalysisData::id)).map(Recast::of).toList());
  }

  /** The analyses that report every one of some parts. */
  SlagSample with(Set<String> parts) {
    return new SlagSample(analyses.stream().filter(a -> a.parts().keySet().containsAll(parts)).toList());
  }

  /** Mean of the logarithms of one part. */
  double meanLog(String part) {
    return analyses.stream().mapToDouble(a -> Math.log(a.parts().get(part))).average().orElse(Double.NaN);
  }

  /** Geometric mean of one part. */
  double mean(String part) {
    return Math.exp(meanLog(part));
  }

  /** Whether one part is below the limit in every analysis. */
  boolean isBelow(String part) {
    return analyses.stream().allMatch(a -> a.below().get(part));
  }

  /**
   * Variance of the mean logarithm of one part: that of measuring, and with two or more analyses the scatter between them.
   *
   * @param relative relative uncertainty of an analysis that states none
   * @param absolute absolute uncertainty of an analysis that states none, mass fraction
   */
  double variance(String part, double relative, double absolute) {
    int n = analyses.size();
    double measuring = 0;
    for (Recast analysis : analyses) {
      double value = analysis.parts().get(part);
      double stated = analysis.sigmas().get(part) / value;
      double square = Double.isNaN(stated) ? relative * relative + Math.pow(absolute / value, 2) : stated * stated;
      measuring += (analysis.below().get(part) ? 1 : square) / ((double) n * n);
    }
    return n < 2 ? measuring : Math.max(measuring, covariance(part, part) / n);
  }

  /** Sample covariance of the logarithms of two parts; at least two analyses. */
  double covariance(String a, String b) {
    double meanA = meanLog(a);
    double meanB = meanLog(b);
    double sum = 0;
    for (Recast analysis : analyses) {
      sum += (Math.log(analysis.parts().get(a)) - meanA) * (Math.log(analysis.parts().get(b)) - meanB);
    }
    return sum / (analyses.size() - 1);
  }

  /** The trail of every analysis under a heading. */
  Trail trail(Side side, String value) {
    return new Trail(side == Side.EVIDENCE ? "Evidence" : "As found", value, "", analyses.stream().map(Recast::trail).toList());
  }
}
