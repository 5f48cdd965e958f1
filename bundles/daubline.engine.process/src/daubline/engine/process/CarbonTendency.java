package daubline.engine.process;

import daubline.engine.process.air.CarbonUptake;
import daubline.engine.process.air.Carburising;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.process.shaft.ShaftSolution;
import java.util.List;

/**
 * How much carbon the gas gives to the iron on its way down, from where half of the iron that forms in the shaft is metal:
 * gas and temperature of each height set the carbon of the surface, diffusion takes it in. A tendency: charcoal that lies
 * against the bloom adds carbon, slag rich in FeO takes it away, and neither is reckoned.
 *
 * @param carbon mean carbon of the iron as it comes to the air inlet, mass share
 * @param aboveInlet carbon that the gas allows where the iron forms, mass share
 * @param atInlet carbon that the gas allows at the air inlet, mass share
 * @param coShare CO/(CO + CO2) where the iron forms
 * @param formed temperature where the iron forms, K
 * @param hot time of the iron as austenite on its way down, s
 */
record CarbonTendency(double carbon, double aboveInlet, double atInlet, double coShare, double formed, double hot) {

  private static final double SOFT = .001;
  private static final double STEEL = .008;
  private static final double CAST = .02;

  /**
   * The tendency in a shaft.
   *
   * @param residence time from mouth to inlet, s
   */
  static CarbonTendency of(ShaftSolution shaft, double residence) {
    List<ShaftSolution.Level> levels = shaft.profile();
    double half = levels.getFirst().toMetal() / 2;
    double slowness = residence / levels.getLast().height();
    CarbonUptake piece = new CarbonUptake(shaft.inputs().get(ShaftParameter.ORE_SIZE) / 2);
    ShaftSolution.Level first = levels.getFirst();
    double hot = 0;
    for (int i = levels.size() - 2; i >= 0; i--) {
      ShaftSolution.Level level = levels.get(i);
      if (level.toMetal() >= half && level.solid() > Carburising.AUSTENITE) {
        first = hot == 0 ? level : first;
        double time = (levels.get(i + 1).height() - level.height()) * slowness;
        hot += time;
        piece.hold(allowed(level), Carburising.diffusivity(level.solid()), time);
      }
    }
    return new CarbonTendency(piece.mean(), allowed(first), allowed(levels.getFirst()), first.coShare(), first.solid(), hot);
  }

  private static double allowed(ShaftSolution.Level level) {
    return Carburising.surface(Carburising.activity(level.coShare(), level.solid()), level.solid());
  }

  /** What a smith would call it; steel from about 0.1 %, hard from about 0.8 % (common practice, no source). */
  String word() {
    return carbon < SOFT ? "soft iron" : carbon < STEEL ? "steely iron" : carbon < CAST ? "hard steel" : "iron that may melt as cast iron";
  }
}
