package daubline.record;

import daubline.base.Amount;
import daubline.base.HowGot;
import daubline.base.Printed;
import daubline.base.ValueKind;
import daubline.model.Claim;
import daubline.model.ClaimInput;
import daubline.model.DataFile;
import daubline.model.Measurement;
import daubline.model.ModelFactory;
import daubline.model.Sheet;
import daubline.session.Readings;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What is measured on a picture of a study: the scale is the first line drawn; the length of every other line, and the
 * claim that rests on it, follow whenever a point, the known length or a pointing changes. Everything that changes
 * something is for use inside a change of the study.
 */
public final class Pictures {

  /** Standard uncertainty of a point in pixels until somebody states another one. */
  public static final double USUAL_POINTING = 1;

  private static final String PIXELS = "px";

  private Pictures() {
  }

  /** Whether a file is a picture, by its kind of content or its name. */
  public static boolean isPicture(DataFile file) {
    String type = Columns.text(file.getMediaType()).toLowerCase(Locale.ROOT);
    return type.isEmpty() ? Columns.text(file.getPath()).toLowerCase(Locale.ROOT).matches(".*\\.(jpe?g|png|tiff?|gif|bmp)") : type.startsWith("image/");
  }

  /** Whether a file is a scanned paper that is no picture. */
  public static boolean isPaper(DataFile file) {
    return "application/pdf".equals(file.getMediaType()) || Columns.text(file.getPath()).toLowerCase(Locale.ROOT).endsWith(".pdf");
  }

  /** The scale of a picture; empty when none is drawn. */
  public static Optional<Measurement> scale(DataFile file) {
    return file.getMeasurements().stream().filter(Measurement::isScale).findFirst();
  }

  /** The points of a measurement. */
  public static PictureLength.Line line(Measurement m) {
    return new PictureLength.Line(number(m.getX1()), number(m.getY1()), number(m.getX2()), number(m.getY2()),
        m.getPointing() == null ? USUAL_POINTING : m.getPointing());
  }

  private static double number(Double value) {
    return value == null ? 0 : value;
  }

  /** The length of a measurement; empty while the picture has no scale of known length, or for the scale itself. */
  public static Optional<PictureLength> length(DataFile file, Measurement m) {
    Optional<Measurement> scale = scale(file).filter(s -> PictureLength.isKnown(Readings.amount(s)) && line(s).pixels() > 0);
    return m.isScale() || !(line(m).pixels() > 0) ? Optional.empty() : scale.map(s -> PictureLength.of(Readings.amount(s), line(s), line(m)));
  }

  /** Adds a line; the first becomes the scale. The pointing is that of the line before. */
  public static Measurement add(DataFile file, double x1, double y1, double x2, double y2) {
    List<Measurement> before = file.getMeasurements();
    Measurement made = ModelFactory.eINSTANCE.createMeasurement();
    made.setPointing(before.isEmpty() ? Double.valueOf(USUAL_POINTING) : before.get(before.size() - 1).getPointing());
    made.setScale(scale(file).isEmpty());
    made.setKind(ValueKind.NOT_RECORDED);
    file.getMeasurements().add(made);
    move(made, x1, y1, x2, y2);
    return made;
  }

  /** Puts the points of a line elsewhere; points are kept to a tenth of a pixel. */
  public static void move(Measurement m, double x1, double y1, double x2, double y2) {
    m.setX1(tenth(x1));
    m.setY1(tenth(y1));
    m.setX2(tenth(x2));
    m.setY2(tenth(y2));
    follow((DataFile) m.eContainer());
  }

  private static double tenth(double pixels) {
    return Math.round(pixels * 10) / 10.0;
  }

  /** Works the lengths out again, and the claims that rest on them. */
  public static void follow(DataFile file) {
    for (Measurement m : file.getMeasurements()) {
      if (!m.isScale()) {
        Amount amount = length(file, m).map(PictureLength::amount).orElse(Amount.of(ValueKind.NOT_RECORDED));
        Readings.put(m, amount);
        claims(m).forEach(claim -> state(claim, m, amount));
      }
    }
  }

  /** The claims that rest on a measurement. */
  public static List<Claim> claims(Measurement m) {
    java.util.List<Claim> found = new java.util.ArrayList<>();
    org.eclipse.emf.ecore.util.EcoreUtil.getRootContainer(m).eAllContents().forEachRemaining(o -> {
      if (o instanceof Claim claim && claim.getMeasurement() == m) {
        found.add(claim);
      }
    });
    return found;
  }

  /** Makes what was measured a claim about a property, or the claim it made one about another property. */
  public static void claim(Measurement m, String variable, Sheet sheet) {
    m.setVariable(variable);
    List<Claim> there = claims(m);
    Claim claim = there.isEmpty() ? ModelFactory.eINSTANCE.createClaim() : there.get(0);
    if (there.isEmpty()) {
      sheet.getClaims().add(claim);
    }
    claim.setVariable(variable);
    state(claim, m, Readings.amount(m));
  }

  /** The claim says what was measured, by which formula and from what; it can be traced even where the picture is withheld. */
  private static void state(Claim claim, Measurement m, Amount amount) {
    Readings.put(claim, amount);
    claim.setHow(HowGot.CALCULATED);
    claim.setMeasurement(m);
    scale((DataFile) m.eContainer()).filter(s -> amount.isNumber()).ifPresent(scale -> {
      claim.setFormula(PictureLength.FORMULA);
      ClaimInput known = ModelFactory.eINSTANCE.createClaimInput();
      known.setSymbol("S");
      Readings.put(known, Readings.amount(scale));
      known.setTyped(scale.getTyped());
      known.setUnit(scale.getUnit());
      claim.getInputs().add(known);
      claim.getInputs().add(pixels("s", line(scale)));
      claim.getInputs().add(pixels("d", line(m)));
    });
  }

  private static ClaimInput pixels(String symbol, PictureLength.Line line) {
    ClaimInput input = ModelFactory.eINSTANCE.createClaimInput();
    input.setSymbol(symbol);
    Readings.put(input, line.sigma() > 0 ? Amount.plusMinus(line.pixels(), line.sigma()) : Amount.exact(line.pixels()));
    input.setTyped(line.sigma() > 0 ? Printed.plusMinus(line.pixels(), line.sigma()) : Printed.number(line.pixels()));
    input.setUnit(PIXELS);
    return input;
  }
}
