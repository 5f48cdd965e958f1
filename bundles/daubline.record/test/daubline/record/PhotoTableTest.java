package daubline.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.intake.IntakeException;
import daubline.intake.PictureFile;
import daubline.model.DataFile;
import daubline.model.Trial;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photographs are copied, linked and described; what happens to their files is seen. Data invented. */
class PhotoTableTest {

  @TempDir
  Path folder;

  private Desk desk;
  private Trial trial;

  @BeforeEach
  void open() throws Exception {
    desk = Desks.desk(folder);
    trial = Desks.trial(desk);
  }

  @AfterEach
  void close() {
    desk.session().close();
  }

  private DataFile add(String name, String content) throws Exception {
    Path file = Files.writeString(Files.createDirectories(folder.resolve("camera")).resolve(name), content);
    return PictureFile.add(desk.session(), file, trial::getFiles, "picture", PictureFile.PAPERS, "Add");
  }

  private String finding(PhotoTable table) {
    return table.finding(0, table.columns().indexOf("path")).map(f -> f.code()).orElse("");
  }

  @Test
  void aPhotographIsCopiedLinkedAndDescribed() throws Exception {
    String before = desk.session().digest();
    DataFile photo = add("bloom out.JPG", "abc");
    assertEquals("photos/bloom out.JPG", photo.getPath());
    assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", photo.getSha256(), "FIPS 180-2, SHA-256 of abc");
    assertEquals("image/jpeg", photo.getMediaType());
    assertEquals("abc", Files.readString(desk.session().folder().resolve(photo.getPath())));
    assertFalse(photo.isConsent(), "nobody was asked yet");
    PhotoTable table = new PhotoTable(desk, trial::getFiles);
    assertEquals("", Desks.type(table, 0, "caption", "The bloom leaves the furnace"));
    assertEquals("", Desks.type(table, 0, "captured", "2031-08-16T17:42"));
    assertEquals("date.form", Desks.type(table, 0, "captured", "yesterday"));
    assertEquals("", Desks.type(table, 0, "captured", "2031-08-16T17:42"));
    assertEquals("", Desks.type(table, 0, "offset", "-35"));
    assertEquals("", Desks.type(table, 0, "consent", "yes"));
    assertEquals("value.category", Desks.type(table, 0, "consent", "perhaps"));
    assertEquals("", Desks.type(table, 0, "kind", "sect"));
    assertEquals("section", photo.getKind());
    assertEquals(-35, photo.getClockOffset(), 0);
    assertTrue(photo.isConsent());
    while (!desk.session().digest().equals(before) && desk.session().undoLabel().isPresent()) {
      desk.session().undo();
    }
    assertEquals(before, desk.session().digest());
  }

  @Test
  void aMissingOrChangedFileIsMarked() throws Exception {
    DataFile photo = add("tap.png", "abc");
    PhotoTable table = new PhotoTable(desk, trial::getFiles);
    assertEquals("", finding(table));
    Path file = desk.session().folder().resolve(photo.getPath());
    Files.writeString(file, "abcd");
    assertEquals("file.changed", finding(table));
    Files.delete(file);
    assertEquals("file.missing", finding(table));
  }

  @Test
  void whatIsNoPictureOrIsThereAlreadyIsRefused() throws Exception {
    add("tap.png", "abc");
    assertEquals("picture.twice", assertThrows(IntakeException.class, () -> add("tap.png", "abc")).findings().get(0).code());
    assertEquals("photos/tap-2.png", add("tap.png", "another one").getPath());
    assertEquals("picture.kind", assertThrows(IntakeException.class, () -> add("tap.exe", "abc")).findings().get(0).code());
    assertEquals(2, trial.getFiles().size());
  }
}
