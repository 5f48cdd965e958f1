package daubline.analysis.record;

import daubline.base.Material;
import daubline.engine.inference.Statement;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A lot of material.
 *
 * @param moistureBasis of which mass its water is a share, “wet” or “dry”; empty when not said
 * @param values statements by variable id
 * @param treatments what was done to it, each as a sentence
 * @param from names of the lots it was made of, comma-separated
 */
public record LotData(String id, String name, Material material, String supplier, String origin, String deliveredOn, String from,
    String moistureBasis, Map<String, List<Statement>> values, List<String> treatments) {

  public LotData {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    treatments = List.copyOf(treatments);
  }
}
