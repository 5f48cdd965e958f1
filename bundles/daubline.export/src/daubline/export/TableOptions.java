package daubline.export;

import java.util.List;
import java.util.Locale;

/**
 * What whoever publishes chooses about the content of tables.
 *
 * @param oxides the formulas that stand first in tables of chemistry, such as SiO2, FeO; the others follow in the customary order
 * @param iron how iron is given
 */
public record TableOptions(List<String> oxides, Iron iron) {

  /** How iron is given in tables of chemistry. What the laboratory printed stands in a row of its own in any case. */
  public enum Iron {
    /** As the laboratory printed it. */
    AS_PRINTED("as printed"),
    /** All iron as FeO. */
    FEO("all iron as FeO"),
    /** All iron as Fe2O3. */
    FE2O3("all iron as Fe2O3");

    private final String word;

    Iron(String word) {
      this.word = word;
    }

    /** The words that tables and screens print. */
    public String word() {
      return word;
    }
  }

  /** Customary order, iron as printed. */
  public static final TableOptions STANDARD = new TableOptions(List.of(), Iron.AS_PRINTED);

  /** @throws IllegalArgumentException when a formula is none, or stands twice */
  public TableOptions {
    oxides = oxides.stream().map(String::strip).filter(o -> !o.isEmpty()).toList();
    for (String oxide : oxides) {
      if (!oxide.matches("[A-Z][A-Za-z0-9]{0,11}")) {
        throw new IllegalArgumentException("Oxides are given as formulas, such as SiO2 or FeO, not as " + oxide);
      }
    }
    if (oxides.stream().map(o -> o.toLowerCase(Locale.ROOT)).distinct().count() < oxides.size()) {
      throw new IllegalArgumentException("An oxide stands twice in the order " + String.join(", ", oxides));
    }
  }
}
