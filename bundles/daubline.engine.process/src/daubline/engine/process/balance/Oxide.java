package daubline.engine.process.balance;

/** An oxide of an analysis. Molar masses from the IUPAC standard atomic weights. */
public enum Oxide {
  /** Silica. */
  SIO2("SiO2", 0.060084, 1),
  /** Titania. */
  TIO2("TiO2", 0.079866, 1),
  /** Alumina. */
  AL2O3("Al2O3", 0.101961, 2),
  /** Ferrous oxide, or all iron told so. */
  FEO("FeO", 0.071844, 1),
  /** Ferric oxide, or all iron told so. */
  FE2O3("Fe2O3", 0.159687, 2),
  /** Manganese monoxide. */
  MNO("MnO", 0.070937, 1),
  /** Magnesia. */
  MGO("MgO", 0.040304, 1),
  /** Lime. */
  CAO("CaO", 0.056077, 1),
  /** Soda. */
  NA2O("Na2O", 0.061979, 2),
  /** Potash. */
  K2O("K2O", 0.094196, 2),
  /** Phosphorus pentoxide. */
  P2O5("P2O5", 0.141943, 2);

  private final String formula;
  private final double molarMass;
  private final int cations;

  Oxide(String formula, double molarMass, int cations) {
    this.formula = formula;
    this.molarMass = molarMass;
    this.cations = cations;
  }

  /** The formula as printed. */
  public String formula() {
    return formula;
  }

  /** Molar mass, kg/mol. */
  public double molarMass() {
    return molarMass;
  }

  /** Cations in one formula unit. */
  public int cations() {
    return cations;
  }

  /** Whether it holds iron. */
  public boolean isIron() {
    return this == FEO || this == FE2O3;
  }

  /** Mass of iron in a unit mass of the oxide, 0 when it holds none. */
  public double ironShare() {
    return isIron() ? cations * 0.055845 / molarMass : 0;
  }
}
