package daubline.engine.process.thermo;

import daubline.base.Units;

/** Physical constants and molar masses. */
public final class Constants {

  /** Molar gas constant, J/(mol K). Source: CODATA 2018, exact. */
  public static final double R = 8.314462618;
  /** Standard atmosphere, Pa. */
  public static final double ATM = 101325;
  /** Reference temperature of the enthalpies, K. */
  public static final double T0 = 298.15;
  /** Ice point, K. */
  public static final double ZERO_C = Units.ZERO_CELSIUS;
  /** Temperature to which blower volumes refer here, 20 °C in K. */
  public static final double BLOWER_T = 293.15;
  /** Mole share of oxygen in dry air. Source: US Standard Atmosphere 1976 (rounded). */
  public static final double O2_IN_AIR = 0.2095;
  /** Molar mass of carbon, kg/mol. Source of all: IUPAC standard atomic weights. */
  public static final double M_C = 0.012011;
  /** Molar mass of iron, kg/mol. */
  public static final double M_FE = 0.055845;
  /** Molar mass of oxygen atoms, kg/mol. */
  public static final double M_O = 0.015999;
  /** Molar mass of hydrogen atoms, kg/mol. */
  public static final double M_H = 0.001008;
  /** Molar mass of water, kg/mol. */
  public static final double M_H2O = 0.018015;
  /** Molar mass of nitrogen gas, kg/mol. */
  public static final double M_N2 = 0.028014;
  /** Molar mass of carbon monoxide, kg/mol. */
  public static final double M_CO = 0.028010;
  /** Molar mass of carbon dioxide, kg/mol. */
  public static final double M_CO2 = 0.044009;

  private Constants() {
  }
}
