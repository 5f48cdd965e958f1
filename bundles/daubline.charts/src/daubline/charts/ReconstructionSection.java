package daubline.charts;

import daubline.analysis.forecast.FurnaceShape;
import daubline.analysis.record.ReconstructionData;
import daubline.base.Basis;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.Variable;
import daubline.base.Variables;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The furnace of one reconstruction to scale: solid up to the height to which there is evidence, dotted above it. */
public final class ReconstructionSection implements Figure {

  private static final double MM = 1000;
  private static final double HEAD = 20;
  private static final double FOOT = 34;
  private static final double MARGIN = 170;
  /** Points of the width at which head and foot keep their share of the height. */
  private static final double USUAL = 255;
  /** Points of the width below which the lettering would be cut and is left to the caption. */
  private static final double LEGIBLE = 115;

  private final Profile built;
  private final Profile found;
  private final String caption;

  private ReconstructionSection(ReconstructionData r, Variables variables) {
    FurnaceShape s = r.shape();
    double height = s.height() * MM;
    double preserved = s.preserved() * MM;
    Map<String, Trail> from = from(r, variables);
    built = new Profile(s.diameter() * MM, s.wall() * MM, height, s.top() * MM, s.inlet() * MM, s.bore() * MM, s.pit() * MM, from);
    found = new Profile(s.diameter() * MM, s.wall() * MM, height > 0 && preserved > height ? height : preserved, Double.NaN, s.inlet() * MM, s.bore() * MM, s.pit() * MM, preserved(r, from));
    caption = "Reconstruction “" + r.name() + "” to scale, base Ø " + Printed.number(built.diameter(), 3) + " mm" + (height > 0 ? ", " + Printed.number(height, 3)
        + " mm high. " : ". ") + (preserved > 0 ? "Solid up to " + Printed.number(preserved, 3) + " mm, the height to which the wall stands ("
        + s.evidence() + ")" : "None of its sheets says how high the wall stands, so the solid part is a stub")
        + (height > 0 ? "; dotted above it." : "; no height of the furnace is chosen, so nothing is drawn above it.")
        + (s.inlet() >= 0 ? " The circle is the air inlet." : "") + guesses(r, variables);
  }

  private static String guesses(ReconstructionData r, Variables variables) {
    List<String> names = r.choices().stream().filter(c -> c.basis() == null || c.basis() == Basis.GUESS)
        .map(c -> variables.find(c.variable()).map(Variable::name).orElse(c.variable())).distinct().toList();
    return names.isEmpty() ? "" : " Guessed: " + names.stream().map(n -> n.toLowerCase(java.util.Locale.ROOT)).collect(Collectors.joining(", ")) + ".";
  }

  /** The section; empty when no inside diameter of the base is chosen. */
  public static Optional<Figure> of(ReconstructionData reconstruction, Variables variables) {
    ReconstructionSection section = new ReconstructionSection(reconstruction, variables);
    return section.built.isDrawable() ? Optional.of(section) : Optional.empty();
  }

  /** The choices that give the measures. */
  private static Map<String, Trail> from(ReconstructionData r, Variables variables) {
    Map<String, Trail> from = new HashMap<>();
    Map<String, String> all = new HashMap<>(Profile.VARIABLES);
    all.put("height", "furnace_height");
    all.forEach((measure, variable) -> r.about(variable).stream().findFirst().ifPresent(c -> from.put(measure, c.trail())));
    return from;
  }

  /** The height to which the wall stands is of a sheet and not chosen. */
  private static Map<String, Trail> preserved(ReconstructionData r, Map<String, Trail> chosen) {
    Map<String, Trail> from = new HashMap<>(chosen);
    from.put("height", Trail.of("Height to which the wall stands", Printed.number(r.shape().preserved() * MM, 3) + "\u00A0mm", Trail.entry("stated by", r.shape().evidence(), r.id())));
    return from;
  }

  @Override
  public String caption() {
    return caption;
  }

  @Override
  public double widthMm() {
    return 90;
  }

  private double tall() {
    double stub = 150;
    return Math.max(Math.max(built.height() > 0 ? built.height() : 0, found.height() > 0 ? found.height() : 0), stub);
  }

  private double pit() {
    return built.pit() > 0 ? built.pit() : 0;
  }

  @Override
  public double aspect() {
    return Math.clamp((tall() + pit()) / wide() + (HEAD + FOOT) / USUAL, 0.5, 1.9);
  }

  private double wide() {
    return Math.max(built.outerDiameter(), (built.top() > 0 ? built.top() : 0) + 2 * built.wallOr(0)) + MARGIN;
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    boolean written = area.getWidth() >= LEGIBLE;
    double head = written ? HEAD : 4;
    double scale = Math.min((area.getHeight() - head - (written ? FOOT : 4)) / (tall() + pit()), area.getWidth() / wide());
    double floor = area.getY() + head + tall() * scale;
    double middle = area.getCenterX();
    SectionDrawing drawing = new SectionDrawing(pen, middle, floor, scale);
    drawing.conjectured(built, found);
    drawing.excavated(found);
    drawing.floor(built.outerDiameter() / 2 + 50);
    if (!written) {
      return;
    }
    String high = built.height() > 0 ? ", " + Printed.number(built.height(), 3) + " mm high" : "";
    pen.spot(middle, floor + pit() * scale + 11, 40, () -> built.trail("diameter", built.diameter()));
    pen.color(palette.ink()).text("Ø " + Printed.number(built.diameter(), 3) + " mm" + high, middle, floor + pit() * scale + 13, Pen.SMALL, Pen.At.CENTRE);
    pen.text("solid: evidenced  ·  dotted: chosen", middle, floor + pit() * scale + 24, Pen.SMALL, Pen.At.CENTRE);
  }
}
