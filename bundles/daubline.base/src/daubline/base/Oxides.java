package daubline.base;

import java.util.Comparator;
import java.util.List;

/** Oxides as tables of analyses print them, and iron in its three forms. */
public final class Oxides {

  /** Oxides in the order in which tables print them (common practice, no source), then loss on ignition. */
  public static final List<String> USUAL = List.of("SiO2", "TiO2", "Al2O3", "FeO", "Fe2O3", "MnO", "MgO", "CaO", "Na2O", "K2O", "P2O5", "SO3", "BaO",
      "V2O5", "Cr2O3", "LOI");
  /** The usual ones first, others after them in the order of their symbols. */
  public static final Comparator<String> ORDER = Comparator.comparingInt((String s) -> USUAL.contains(s) ? USUAL.indexOf(s) : USUAL.size())
      .thenComparing(Comparator.naturalOrder());

  /** FeO that holds one part of iron: 1.2865. */
  public static final double FEO_OF_FE = OxideFactors.factor("Fe", "FeO").orElseThrow();
  /** FeO that holds the iron of one part of Fe2O3: 0.8998. */
  public static final double FEO_OF_FE2O3 = FEO_OF_FE / OxideFactors.factor("Fe", "Fe2O3").orElseThrow();

  private Oxides() {
  }
}
