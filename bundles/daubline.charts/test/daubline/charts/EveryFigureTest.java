package daubline.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.base.Amount;
import daubline.model.ModelFactory;
import daubline.model.Sheet;
import daubline.model.SpreadSquare;
import daubline.model.Trial;
import daubline.model.WallZone;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColorSpace;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceGrayColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceRGBColor;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every figure at the size at which it is printed, measured in its PDF by another library's reader. */
class EveryFigureTest {

  /** The smallest lettering at finished size that a large publisher accepts (elsevier.com, artwork sizing). */
  private static final double SMALLEST = 7;
  /** WCAG 2.1, 1.4.3: contrast of text. */
  private static final double CONTRAST = 4.5;

  private static StudyResults results;

  @BeforeAll
  static void read() throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      session.study().eAllContents().forEachRemaining(o -> {
        if (o instanceof Trial trial && trial.getRemains() != null) {
          map(trial.getRemains());
        }
      });
      ComparisonOptions usual = ComparisonOptions.standard();
      results = StudyComparison.of(session, new ComparisonOptions(false, List.of(), List.of(), 100, usual.seed(), 2));
    }
  }

  /** A wall and a ground as somebody could have mapped them, with a state that no list foresees and a square that was not weighed. */
  private static void map(Sheet sheet) {
    List<String> states = List.of("vitrified", "reduced", "oxidised", "unchanged", "Glazed");
    for (int clock = 1; clock <= 12; clock++) {
      for (int i = 0; i < 4; i++) {
        WallZone zone = ModelFactory.eINSTANCE.createWallZone();
        zone.setClock(clock);
        zone.setLow(i * 0.12 + clock * 0.004);
        zone.setHigh((i + 1) * 0.12 + clock * 0.004);
        zone.setState(states.get((i + clock / 6) % states.size()));
        sheet.getZones().add(zone);
      }
    }
    for (int i = 0; i < 9; i++) {
      SpreadSquare square = ModelFactory.eINSTANCE.createSpreadSquare();
      square.setEast(i % 3 - 1.0);
      square.setNorth(i / 3 - 1.0);
      square.setSide(1.0);
      Readings.put(square, i == 4 ? Amount.of(daubline.base.ValueKind.NOT_WEIGHED) : Amount.exact(0.2 * i + 0.05));
      sheet.getSpread().add(square);
    }
  }

  private static List<NamedFigure> all() {
    return Figures.all().stream().flatMap(spec -> spec.all(results).stream()).toList();
  }

  @Test
  void everyKindOfFigureIsDrawnFromThisStudy() {
    assertEquals(List.of(), Figures.all().stream().filter(spec -> spec.all(results).isEmpty()).map(FigureSpec::id).toList());
    List<String> ids = all().stream().map(NamedFigure::id).toList();
    assertEquals(ids.size(), ids.stream().distinct().count(), ids.toString());
  }

  @Test
  void letteringIsLegibleAtPrintSizeStandsInsideAndIsDarkEnough() throws Exception {
    List<String> wrong = new ArrayList<>();
    for (NamedFigure figure : all()) {
      new Measure(figure.id(), wrong).of(figure);
    }
    assertEquals(List.of(), wrong.stream().distinct().toList());
  }

  /** Reads lettering of a PDF with its place, size and colour. */
  private static final class Measure extends PDFTextStripper {

    private final String id;
    private final List<String> wrong;
    private int letters;

    Measure(String id, List<String> wrong) throws IOException {
      this.id = id;
      this.wrong = wrong;
      addOperator(new SetNonStrokingColorSpace(this));
      addOperator(new SetNonStrokingColor(this));
      addOperator(new SetNonStrokingDeviceRGBColor(this));
      addOperator(new SetNonStrokingDeviceGrayColor(this));
    }

    void of(NamedFigure figure) throws IOException {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      new PdfWriter(Instant.EPOCH).write(figure.figure(), figure.title(), figure.figure().widthMm(), out);
      try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
        getText(document);
      }
      if (letters == 0) {
        wrong.add(id + " has no lettering");
      }
    }

    @Override
    protected void processTextPosition(TextPosition text) {
      if (text.getUnicode().isBlank()) {
        return;
      }
      letters++;
      double size = text.getFontSizeInPt();
      if (size < SMALLEST - 0.01) {
        wrong.add(id + ": lettering of " + size + " pt");
      }
      double x = text.getTextMatrix().getTranslateX();
      double y = text.getTextMatrix().getTranslateY();
      if (x < -0.5 || y < -0.5 || x > text.getPageWidth() + 0.5 || y > text.getPageHeight() - 3) {
        wrong.add(id + ": “" + text.getUnicode() + "” stands at " + Math.round(x) + ", " + Math.round(y) + " of " + Math.round(text.getPageWidth()) + " × "
            + Math.round(text.getPageHeight()));
      }
      try {
        int rgb = getGraphicsState().getNonStrokingColor().toRGB();
        if (rgb != 0xFFFFFF && contrast(new Color(rgb)) < CONTRAST) {
          wrong.add(id + ": lettering in #" + Integer.toHexString(rgb) + " of contrast " + contrast(new Color(rgb)));
        }
      } catch (IOException e) {
        throw new java.io.UncheckedIOException(e);
      }
    }
  }

  /** Contrast with white paper (WCAG 2.1, relative luminance). */
  private static double contrast(Color color) {
    double luminance = 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    return 1.05 / (luminance + 0.05);
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  @Test
  void aFigureMadeForNarrowColumnsKeepsItsLettering() throws Exception {
    // 90 mm is the single column of a large publisher; figures keep their lettering and give way elsewhere
    List<String> small = new ArrayList<>();
    for (NamedFigure figure : all()) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      new PdfWriter(Instant.EPOCH).write(figure.figure(), figure.title(), 90, out);
      try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition text) {
            if (text.getFontSizeInPt() < SMALLEST - 0.01) {
              small.add(figure.id());
            }
          }
        }.getText(document);
      }
    }
    assertTrue(small.isEmpty(), small.stream().distinct().toList().toString());
  }
}
