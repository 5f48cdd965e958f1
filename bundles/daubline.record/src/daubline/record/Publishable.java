package daubline.record;

import daubline.base.IronBasis;
import daubline.model.Analysis;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether readers could judge an analysis: method, instrument and its settings, standards and accuracy, number of areas,
 * and the basis of its iron (compare Johnson and others 2024, Advances in Archaeological Practice, on reporting practice).
 */
public final class Publishable {

  private Publishable() {
  }

  /** The ids of what is not stated yet, in the order of the columns; empty when it can be published. */
  public static List<String> missing(Analysis analysis) {
    List<String> missing = new ArrayList<>();
    need(missing, "method", analysis.getMethod());
    need(missing, "instrument", analysis.getInstrument());
    need(missing, "conditions", analysis.getConditions());
    need(missing, "standards", analysis.getStandards());
    need(missing, "accuracy", analysis.getAccuracy());
    need(missing, "areas", analysis.getAreas() == null ? "" : "stated");
    boolean iron = analysis.getComponents().stream().anyMatch(c -> List.of("FeO", "Fe2O3").contains(String.valueOf(c.getSymbol())));
    boolean stated = analysis.getIronBasis() != null && analysis.getIronBasis() != IronBasis.NOT_STATED;
    need(missing, "ironBasis", !iron || stated ? "stated" : "");
    return missing;
  }

  private static void need(List<String> missing, String id, String value) {
    if (value == null || value.isBlank()) {
      missing.add(id);
    }
  }
}
