package daubline.record.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import daubline.model.ModelFactory;
import daubline.record.Desk;
import daubline.record.Desks;
import daubline.record.LogTable;
import daubline.record.RecordWords;
import daubline.record.SampleTable;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Paper says what the screen asks for, in its order, large enough, in both languages and on both papers. */
class PrintTest {

  @TempDir
  Path folder;

  private Desk desk;

  @BeforeEach
  void open() throws Exception {
    desk = Desks.desk(folder);
  }

  @AfterEach
  void close() {
    desk.session().close();
  }

  private byte[] sheets(PaperSize size, Locale locale) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new FieldSheets(new Desk(desk.session(), desk.decimal(), new RecordWords(locale)), Desks.trial(desk)).write(size, out);
    return out.toByteArray();
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  /** Widths from ZXing core 3.5.3 (Apache-2.0), Code128Writer with code set B. */
  @Test
  void barsAreThoseOfAnIndependentEncoder() {
    assertEquals("2112142133112212311221322131131232212212132331112", Code128.widths("T4-S1").orElseThrow());
    assertEquals("2112141113232211141412211122141212414112121211242211141122142122223121311221322131131232212232111132222331112",
        Code128.widths("Aldervale 7-S12").orElseThrow());
    assertEquals("2112143131211121331121331232212232112211321313213113212331112", Code128.widths("PJJ123C").orElseThrow());
    assertTrue(Code128.widths("Größe").isEmpty());
  }

  /** ISO/IEC 15417: every symbol is eleven modules wide, its bars an even number of them, and no two are alike. */
  @Test
  void everySymbolIsOneOfItsOwn() {
    Set<String> seen = new HashSet<>();
    for (char c = ' '; c <= '~'; c++) {
      String symbol = Code128.widths(String.valueOf(c)).orElseThrow().substring(6, 12);
      assertEquals(11, Code128.modules(symbol), symbol);
      assertEquals(0, (symbol.charAt(0) + symbol.charAt(2) + symbol.charAt(4) - 3 * '0') % 2, symbol);
      assertTrue(seen.add(symbol), symbol);
    }
  }

  @Test
  void sheetsHaveTheColumnsOfTheScreenInTheirOrder() throws IOException {
    String text = text(sheets(PaperSize.A4, Locale.ENGLISH));
    LogTable log = new LogTable(desk, Desks.trial(desk));
    int at = text.indexOf("Run log");
    assertEquals(java.util.List.of("scan"), java.util.stream.IntStream.range(0, log.columns().size()).filter(i -> log.isTyped(i) && !log.isPrinted(i))
        .mapToObj(i -> log.columns().get(i)).toList(), "only the scan of the paper itself is not on it");
    for (int i = 0; i < log.columns().size() - 1; i++) {
      if (!log.isPrinted(i)) {
        continue;
      }
      String first = log.heading(i).split(" ")[0];
      int next = text.indexOf(first, at);
      assertTrue(next >= 0, "the sheet lacks " + log.heading(i));
    }
    assertTrue(text.contains("Tapped slag") && text.contains("Base internal diameter (mm)") && text.contains("Trial: T4"), "classes and properties are laid out");
    assertTrue(text.contains("Keys of the day") && text.contains("mark the moment"));
  }

  @Test
  void lettersAreElevenPointsOrMoreAndOnThePaper() throws IOException {
    for (PaperSize size : PaperSize.values()) {
      for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
        try (PDDocument document = Loader.loadPDF(sheets(size, locale))) {
          float wide = size.height();
          new PDFTextStripper() {
            @Override
            protected void writeString(String string, List<TextPosition> positions) {
              for (TextPosition p : positions) {
                assertTrue(p.getFontSizeInPt() >= 11, string);
                assertTrue(p.getXDirAdj() >= 0 && p.getXDirAdj() + p.getWidthDirAdj() <= wide, size + ", " + locale + ": " + string);
              }
            }
          }.getText(document);
        }
      }
    }
  }

  @Test
  void theBriefingSaysWhoWhatAndWhenToStopAndIsSigned() throws IOException {
    desk.session().edit("fill", () -> {
      daubline.model.Series series = (daubline.model.Series) Desks.trial(desk).eContainer();
      series.setStopCriteria("Wind above force 5");
      daubline.model.RoleAssignment role = ModelFactory.eINSTANCE.createRoleAssignment();
      role.setRole("safety watch");
      role.setFrom("09:00");
      role.setUntil("12:00");
      role.setPerson(ModelFactory.eINSTANCE.createPerson());
      role.getPerson().setName("Dor Lindt");
      desk.session().study().getPeople().add(role.getPerson());
      series.getRoles().add(role);
      for (int i = 1; i <= 40; i++) {
        daubline.model.Hazard hazard = ModelFactory.eINSTANCE.createHazard();
        hazard.setName("Hazard " + i);
        hazard.setControl("what is done against it");
        desk.session().study().getHazards().add(hazard);
      }
    });
    String english = text(sheets(PaperSize.A4, Locale.ENGLISH));
    String briefing = english.substring(english.indexOf("Briefing before the fire"));
    for (String said : List.of("T4 2031-08-16", "memory aid, not advice", "Wind above force 5", "safety watch: Dor Lindt, 09:00–12:00", "Hazard 40: what", "Carbon monoxide", "Signature")) {
      assertTrue(briefing.contains(said), said);
    }
    assertTrue(text(sheets(PaperSize.LETTER, Locale.GERMAN)).contains("Sicherheitswache: Dor Lindt"));
    lettersAreElevenPointsOrMoreAndOnThePaper();
  }

  @Test
  void theSameSheetsAreTheSameBytes() throws IOException {
    assertArrayEquals(sheets(PaperSize.LETTER, Locale.GERMAN), sheets(PaperSize.LETTER, Locale.GERMAN));
    assertThrows(IllegalArgumentException.class, () -> {
      try (Paper paper = new Paper(PaperSize.A4, false, "small")) {
        paper.sheet();
        paper.text("too small", 40, 40, 9);
      }
    });
  }

  @Test
  void labelsSayWhatTheyAreEvenWithoutCode() throws IOException {
    SampleTable table = new SampleTable(desk, Desks.trial(desk));
    Desks.row(table, "name", "T4-S1", "material", "slag", "takenOn", "2031-08-17");
    Desks.row(table, "name", "Größe 12");
    for (int i = 0; i < 12; i++) {
      Desks.row(table, "material", "metal");
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Labels.write(Desks.trial(desk).getSamples(), desk.words(), PaperSize.A4, out);
    String text = text(out.toByteArray());
    assertTrue(text.contains("T4-S1 T4 2031-08-17 slag") && text.contains("Größe 12 (no code for these letters)"), text);
    try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
      assertEquals(2, document.getNumberOfPages());
    }
    Labels.write(List.of(ModelFactory.eINSTANCE.createSample()), desk.words(), PaperSize.A4, new ByteArrayOutputStream());
  }

  /** Where ink lies on a page drawn at 72 dots to the inch, within a band from top to bottom. */
  private static int ink(byte[] pdf, int top, int bottom) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 72);
      int dark = 0;
      for (int y = top; y < bottom; y++) {
        for (int x = 0; x < page.getWidth(); x++) {
          dark += (page.getRGB(x, y) & 0xFF) < 128 ? 1 : 0;
        }
      }
      return dark;
    }
  }

  private static byte[] paper(String text, Set<String> lost) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Paper paper = new Paper(PaperSize.A4, false, "signs")) {
      paper.sheet();
      paper.text(text, 100, 120, 24);
      lost.addAll(paper.lost());
      paper.save(out);
    }
    return out.toByteArray();
  }

  /** Signs that the typeface lacks are drawn, joined and in their order, as wide as they were measured; nothing is a question mark. */
  @Test
  void signsThatTheTypefaceLacksAreDrawn() throws IOException {
    String arabic = "تل الحديد";
    assumeTrue(arabic.codePoints().allMatch(Outlines::has), "a typeface of this machine has Arabic");
    Set<String> lost = new HashSet<>();
    byte[] drawn = paper(arabic, lost);
    assertEquals(Set.of(), lost);
    assertTrue(ink(drawn, 95, 130) > 60, "ink where the text stands: " + ink(drawn, 95, 130));
    assertEquals(0, ink(drawn, 200, 800), "and nowhere else");
    assertEquals("", text(drawn).strip(), "drawn, not written");
    assertTrue(ink(drawn, 95, 130) != ink(paper("???????????", lost), 95, 130));
    assertArrayEquals(drawn, paper(arabic, lost), "the same bytes on the same machine");
    float joined = Outlines.measure("ببب", 24);
    assertTrue(joined < 3 * Outlines.measure("ب", 24), "letters are joined");
    try (Paper paper = new Paper(PaperSize.A4, false, "width")) {
      assertEquals(Outlines.measure(arabic, 24), paper.measure(arabic, 24), 1e-3);
      assertTrue(paper.wrap(arabic + " " + arabic, 24, paper.measure(arabic, 24) + 1).size() > 1);
    }
  }

  /** A sign that no typeface of any machine has is a question mark, and is told. */
  @Test
  void aSignThatNoTypefaceHasIsTold() throws IOException {
    String none = Character.toString(0x10FFFD);
    assumeTrue(!Outlines.has(0x10FFFD), "no typeface draws this private sign");
    Set<String> lost = new HashSet<>();
    assertTrue(text(paper("Ofen " + none, lost)).contains("Ofen ?"));
    assertEquals(Set.of(none), lost);
  }

  /** Writing that the typeface has stays text that a search finds. */
  @Test
  void lettersOfTheTypefaceStayText() throws IOException {
    assertTrue(text(paper("Žďár Ωmega", new HashSet<>())).contains("Žďár Ωmega"));
  }
}
