package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Claim;
import daubline.model.DataFile;
import daubline.model.EvidenceSheet;
import daubline.model.Measurement;
import daubline.model.Trial;
import daubline.ui.Words;
import daubline.ui.record.LogPage;
import daubline.ui.record.PhotosPage;
import daubline.ui.record.PicturePage;
import daubline.ui.study.Chosen;
import daubline.ui.study.OpenStudy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A section is scaled and measured on its picture by mouse and keys; undo brings back the same bytes. The picture is drawn by the test. */
class PictureTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  /** A white picture of 1200 × 900 pixels with a bar. */
  private static Path drawn() throws Exception {
    Image image = new Image(Display.getCurrent(), 1200, 900);
    GC gc = new GC(image);
    gc.fillRectangle(0, 0, 1200, 900);
    gc.drawRectangle(100, 800, 500, 20);
    gc.dispose();
    ImageLoader loader = new ImageLoader();
    loader.data = new ImageData[] {image.getImageData(100)};
    Path file = Files.createTempDirectory("picture").resolve("section.png");
    loader.save(file.toString(), SWT.IMAGE_PNG);
    image.dispose();
    return file;
  }

  private static void mouse(Canvas canvas, int type, Point at, int mask) {
    Event event = new Event();
    event.type = type;
    event.button = 1;
    event.stateMask = mask;
    event.x = at.x;
    event.y = at.y;
    canvas.notifyListeners(type, event);
    Window.pump();
  }

  private static void drag(Canvas canvas, Point from, Point to) {
    mouse(canvas, SWT.MouseDown, from, 0);
    mouse(canvas, SWT.MouseMove, to, SWT.BUTTON1);
    mouse(canvas, SWT.MouseUp, to, SWT.BUTTON1);
  }

  private static void press(Canvas canvas, int key, char character, int mask, int times) {
    for (int i = 0; i < times; i++) {
      Event event = new Event();
      event.keyCode = key;
      event.character = character;
      event.stateMask = mask;
      canvas.notifyListeners(SWT.KeyDown, event);
    }
    canvas.notifyListeners(SWT.KeyUp, new Event());
    Window.pump();
  }

  private static PicturePage page(OpenStudy study, EvidenceSheet sheet) throws Exception {
    PicturePage page = (PicturePage) Window.sheet(sheet).show("record.measured");
    Window.pump();
    page.take(drawn());
    Window.pump();
    Canvas canvas = Window.find("picture", Canvas.class);
    DataFile file = sheet.getFiles().get(sheet.getFiles().size() - 1);
    Window.waitFor("the picture", () -> file.getPath().equals(canvas.getData("loaded")));
    return page;
  }

  @Test
  void aSectionIsScaledAndMeasuredByMouseAndBecomesAClaim() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet sheet = EvidenceTest.firstSheet(study);
    String before = study.session().digest();
    int claims = sheet.getClaims().size();
    PicturePage page = page(study, sheet);
    DataFile file = sheet.getFiles().get(sheet.getFiles().size() - 1);
    assertTrue(Files.exists(study.folder().resolve(file.getPath())) && file.getPath().startsWith("photos/") && file.getSha256().length() == 64);
    Canvas canvas = Window.find("picture", Canvas.class);
    drag(canvas, page.at(100, 800), page.at(600, 800));
    NatTable grid = Window.find("measured", NatTable.class);
    Measurement scale = file.getMeasurements().get(0);
    assertTrue(scale.isScale());
    assertEquals(100, scale.getX1(), 3, "where the mouse was, to the pixel of the screen");
    assertEquals(600, scale.getX2(), 3);
    Window.key(grid, '\0', SWT.ARROW_RIGHT);
    Window.enter(grid, "500 ± 2 mm");
    drag(canvas, page.at(200, 100), page.at(200, 700));
    assertEquals(2, file.getMeasurements().size());
    Measurement line = file.getMeasurements().get(1);
    Window.enter(grid, "Pit depth");
    Claim claim = sheet.getClaims().get(claims);
    assertEquals(0.6, claim.getValue(), 0.01);
    assertTrue(claim.getSigma() > 0.002);
    assertEquals(line, claim.getMeasurement());
    Window.sheet(sheet).reveal(claim, "pit_depth");
    Window.pump();
    String trail = Chosen.trail().orElseThrow().asText();
    assertTrue(trail.contains("L = S · d / s") && trail.contains("500 ± 2 mm") && trail.contains(file.getPath()) && trail.contains("points of the scale s"), trail);
    while (!study.session().digest().equals(before) && study.session().undoLabel().isPresent()) {
      study.session().undo();
    }
    assertEquals(before, study.session().digest());
    Window.pump();
  }

  @Test
  void aPointIsMovedByKeysAloneAndEachMoveIsOneChange() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet sheet = EvidenceTest.firstSheet(study);
    page(study, sheet);
    DataFile file = sheet.getFiles().get(sheet.getFiles().size() - 1);
    Canvas canvas = Window.find("picture", Canvas.class);
    press(canvas, 'n', 'n', 0, 1);
    press(canvas, SWT.INSERT, '\0', 0, 1);
    assertEquals(2, file.getMeasurements().size());
    Measurement line = file.getMeasurements().get(1);
    double x1 = line.getX1();
    double y2 = line.getY2();
    String drawn = study.session().digest();
    press(canvas, SWT.ARROW_RIGHT, '\0', 0, 3);
    assertEquals(x1 + 3, line.getX1(), 1e-9);
    assertEquals(Words.of("change.point"), study.session().undoLabel().orElseThrow());
    press(canvas, ' ', ' ', 0, 1);
    press(canvas, SWT.ARROW_DOWN, '\0', SWT.SHIFT, 2);
    assertEquals(y2 + 20, line.getY2(), 1e-9);
    study.session().undo();
    study.session().undo();
    assertEquals(drawn, study.session().digest(), "held keys are one change");
    Window.pump();
    press(canvas, '+', '+', 0, 4);
    press(canvas, SWT.PAGE_UP, '\0', 0, 1);
    press(canvas, SWT.DEL, '\0', 0, 1);
    assertEquals(2, file.getMeasurements().size(), "the scale stays while a line rests on it");
    assertEquals(Words.of("picture.scaleStays"), Window.find("measured.message", Label.class).getToolTipText());
    press(canvas, SWT.PAGE_DOWN, '\0', 0, 1);
    press(canvas, SWT.DEL, '\0', 0, 1);
    assertEquals(List.of(file.getMeasurements().get(0)), file.getMeasurements());
  }

  @Test
  void whatIsNoPictureIsRefusedWithItsReason() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet sheet = EvidenceTest.firstSheet(study);
    PicturePage page = (PicturePage) Window.sheet(sheet).show("record.measured");
    Window.pump();
    String before = study.session().digest();
    page.take(Files.writeString(Files.createTempFile("section", ".csv"), "a,b"));
    assertTrue(Window.find("measured.message", Label.class).getToolTipText().contains("png"));
    assertEquals(before, study.session().digest());
    page.take(Files.writeString(Files.createTempFile("broken", ".png"), "no picture at all"));
    Window.waitFor("why it cannot be shown", () -> Window.find("measured.message", Label.class).getToolTipText().contains("broken"));
  }

  @Test
  void photographsAreTakenInAndDescribedByKeyboard() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    PhotosPage page = (PhotosPage) Window.sheet(trial).show("record.photos");
    Window.pump();
    String before = study.session().digest();
    int there = trial.getFiles().size();
    page.take(List.of(drawn(), Files.writeString(Files.createTempFile("notes", ".txt"), "no picture")));
    Window.pump();
    assertTrue(Window.find("photos.message", Label.class).getToolTipText().contains(".txt"), "what was refused is said");
    DataFile photo = trial.getFiles().get(there);
    NatTable grid = Window.find("photos", NatTable.class);
    Window.enter(grid, "the section");
    Window.enter(grid, "Section seen from the south");
    Window.enter(grid, "2031-08-16T17:42");
    Window.enter(grid, "-35");
    Window.enter(grid, "Ann Reader, CC BY 4.0");
    assertEquals("the section", photo.getName());
    assertEquals("Section seen from the south", photo.getCaption());
    assertEquals(-35, photo.getClockOffset(), 0);
    assertEquals("Ann Reader, CC BY 4.0", photo.getRights());
    assertTrue(!photo.isConsent(), "consent is asked for, not taken");
    Window.enter(grid, "yes");
    assertTrue(photo.isConsent());
    Files.delete(study.folder().resolve(photo.getPath()));
    study.recompute();
    Window.waitForResults(study);
    assertTrue(study.findings().stream().anyMatch(f -> f.code().equals("file.missing") && f.what().contains(photo.getPath())), study.findings().toString());
    while (!study.session().digest().equals(before) && study.session().undoLabel().isPresent()) {
      study.session().undo();
    }
    assertEquals(before, study.session().digest());
  }

  @Test
  void aScannedPaperIsAttachedToTheRowsTypedFromIt() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    LogPage page = (LogPage) Window.sheet(trial).show("record.log");
    Window.pump();
    String before = study.session().digest();
    page.attach(Files.writeString(Files.createTempFile("sheet", ".pdf"), "%PDF-1.4"));
    Window.pump();
    DataFile paper = trial.getLog().get(0).getScan();
    assertTrue(trial.getLog().stream().allMatch(e -> e.getScan() == paper));
    assertEquals("paper sheet", paper.getKind());
    NatTable grid = Window.find("log", NatTable.class);
    Window.enter(grid, "1635");
    page.attach(Files.writeString(Files.createTempFile("second", ".pdf"), "%PDF-1.5"));
    assertTrue(trial.getLog().get(0).getScan() == paper && trial.getLog().get(trial.getLog().size() - 1).getScan() != paper, "only rows without one");
    while (!study.session().digest().equals(before) && study.session().undoLabel().isPresent()) {
      study.session().undo();
    }
    assertEquals(before, study.session().digest());
  }
}
