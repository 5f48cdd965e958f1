package daubline.charts;

import daubline.analysis.design.SeriesEffects;
import java.util.ArrayList;
import java.util.List;

/** The plots of an effects report. */
public final class EffectFigures {

  private EffectFigures() {
  }

  /**
   * A plot.
   *
   * @param id a stable short name
   * @param title its title, in headline case
   */
  public record Named(String id, String title, Figure figure) {
  }

  /** Every plot that these effects allow, the main effects first. */
  public static List<Named> of(SeriesEffects effects) {
    List<Named> figures = new ArrayList<>();
    int factors = effects.burnt().design().factors().size();
    if (factors > 0 && effects.outcome().known() > 0) {
      figures.add(new Named("main-effects", "Main Effects", new MainEffectsFigure(effects)));
    }
    if (factors > 1 && effects.outcome().known() > 0) {
      figures.add(new Named("interactions", "Interactions", new InteractionFigure(effects)));
    }
    effects.report().flatMap(r -> r.halfNormal()).ifPresent(h -> figures.add(new Named("half-normal", "Half-Normal Plot", new HalfNormalFigure(h, effects))));
    effects.report().ifPresent(r -> figures.add(new Named("residuals", "Residuals", new ResidualFigure(effects, r))));
    ContourFigure.of(effects).ifPresent(f -> figures.add(new Named("contour", "Response Surface", f)));
    MixtureFigure.of(effects).ifPresent(f -> figures.add(new Named("mixture", "Shares of a Whole", f)));
    return List.copyOf(figures);
  }
}
