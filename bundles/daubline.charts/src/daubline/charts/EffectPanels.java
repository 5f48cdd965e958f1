package daubline.charts;

import daubline.analysis.Origins;
import daubline.analysis.TrialData;
import daubline.analysis.design.SeriesEffects;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.design.Factor;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Small plots side by side, in rows of a few. */
final class EffectPanels {

  static final int ACROSS = 3;
  static final double HEIGHT = 146;
  private static final double LEFT = 38;
  private static final double BOTTOM = 30;
  /** Room above a panel, for a key of two lines. */
  private static final double TOP = 24;

  private EffectPanels() {
  }

  /** Where a trial's mark comes from: its outcome and its settings. */
  static Trail trial(SeriesEffects effects, int i, String what, double value) {
    TrialData t = effects.burnt().trials().get(i);
    String[] variables = Stream.concat(Stream.of(effects.outcome().id()), effects.burnt().design().factors().stream().map(Factor::id)).toArray(String[]::new);
    String unit = effects.outcome().unit();
    return Trail.reckoned(what + " of " + t.name(), Printed.number(value, 4) + (unit.isEmpty() ? "" : " " + unit), "", List.of(new Trail("Trial " + t.name(), "", t.id(), Origins.stated(t, variables))));
  }

  /** How high so many panels are. */
  static double height(int count) {
    return HEIGHT * ((count + ACROSS - 1) / ACROSS);
  }

  /** The plotting areas of so many panels inside an area. */
  static List<Rectangle2D> areas(Rectangle2D area, int count) {
    int across = Math.min(ACROSS, Math.max(1, count));
    double width = area.getWidth() / across;
    List<Rectangle2D> areas = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      areas.add(new Rectangle2D.Double(area.getX() + i % across * width + LEFT, area.getY() + i / across * HEIGHT + TOP, width - LEFT - 8, HEIGHT - TOP - BOTTOM));
    }
    return areas;
  }
}
