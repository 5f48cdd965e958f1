package daubline.engine.inference;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.Trail;
import java.util.Map;
import java.util.Objects;

/**
 * One chemical analysis as printed.
 *
 * @param id id of the analysis
 * @param material what was analysed
 * @param specimen the residue class or specimen as text
 * @param ironBasis how iron is given
 * @param components mass fraction by formula, such as SiO2, as printed, in the order printed
 * @param total analytical total as printed, as fraction, NaN when not printed
 * @param trail where it came from
 */
public record AnalysisData(String id, Material material, String specimen, IronBasis ironBasis,
    Map<String, Amount> components, double total, Trail trail) {

  public AnalysisData {
    Objects.requireNonNull(material);
    components = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(components));
  }
}
