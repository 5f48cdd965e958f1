package daubline.criteria;

import daubline.base.Source;

/** The sources that several criteria cite. */
final class Literature {

  /** What to record of a furnace and its residues. */
  static final Source RECORDING = Source.published(
      "Bayley, Dungworth & Paynter 2001, Archaeometallurgy, Centre for Archaeology Guidelines 2001/01, English Heritage");
  /** Log-ratios. */
  static final Source LOG_RATIOS = Source.fromMemory("Aitchison 1986, The statistical analysis of compositional data");
  /** Values below a limit of detection. */
  static final Source ZEROS = Source.fromMemory("Martín-Fernández, Barceló-Vidal & Pawlowsky-Glahn 2003, Mathematical Geology 35, 253–278");
  /** Iron and slag recipes. */
  static final Source RECIPES = Source.published(
      "Charlton, Crew, Rehren & Shennan 2010, Journal of Anthropological Archaeology 29, 352–367, doi 10.1016/j.jaa.2010.05.001");
  /** The agreement kernel. */
  static final Source KERNEL = Source.derived("normal likelihood over its maximum, exp(−z²/2)");
  /** The agreement with a limit. */
  static final Source LIMIT = Source.derived("probability that the value behind it lies on the allowed side, Φ(z)");

  private Literature() {
  }
}
