package daubline.intake;

import daubline.base.FileFault;
import daubline.base.Finding;
import daubline.model.DataFile;
import daubline.model.ModelFactory;
import daubline.session.StudySession;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Takes a photograph, a scan or a drawing into a study: copied as it is into the folder photos, described by relative path and checksum. */
public final class PictureFile {

  /** What names of pictures end with. */
  public static final List<String> ENDINGS = List.of("jpg", "jpeg", "png", "tif", "tiff", "gif", "bmp");
  /** What names of scanned papers end with. */
  public static final List<String> PAPERS = List.of("jpg", "jpeg", "png", "tif", "tiff", "gif", "bmp", "pdf");

  private static final String FOLDER = "photos";
  private static final long LARGEST = 200_000_000;

  private PictureFile() {
  }

  /**
   * Copies a file into the study and describes it, as one undoable change; the copy stays when the change is undone.
   *
   * @param list where the description goes; called inside the change
   * @param kind such as picture or paper sheet
   * @param endings of the names that are taken
   * @param label the name of the change
   * @throws IntakeException when the file is none of these, cannot be read or is there already
   */
  public static DataFile add(StudySession session, Path file, Supplier<List<DataFile>> list, String kind, List<String> endings, String label) throws IntakeException {
    return add(session, file, list, kind, endings, label, added -> { });
  }

  /**
   * The same, with something to be done with the description in the same change.
   *
   * @throws IntakeException as above
   */
  public static DataFile add(StudySession session, Path file, Supplier<List<DataFile>> list, String kind, List<String> endings, String label,
      Consumer<DataFile> then) throws IntakeException {
    String name = String.valueOf(file.getFileName());
    if (!endings.contains(name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT))) {
      throw refused("picture.kind", file, "“" + name + "” is no picture that can be shown here", "choose a file that ends with " + String.join(", ", endings));
    }
    KeptFile kept = keep(session, file);
    if (isThere(session, kept.path())) {
      throw refused("picture.twice", file, "“" + name + "” is in the study already", "choose it there, or take the old entry out first");
    }
    kept.write();
    DataFile entry = ModelFactory.eINSTANCE.createDataFile();
    kept.describe(entry, kind);
    session.edit(label, () -> {
      list.get().add(entry);
      then.accept(entry);
    });
    return entry;
  }

  private static boolean isThere(StudySession session, String path) {
    boolean[] there = {false};
    session.study().eAllContents().forEachRemaining(o -> there[0] |= o instanceof DataFile f && path.equals(f.getPath()));
    return there[0];
  }

  /** Endings as a file dialog asks for them, in small and capital letters. */
  public static String filter(List<String> endings) {
    return String.join(";", endings.stream().flatMap(e -> Stream.of("*." + e, "*." + e.toUpperCase(Locale.ROOT))).toList());
  }

  private static KeptFile keep(StudySession session, Path file) throws IntakeException {
    try {
      if (Files.size(file) > LARGEST) {
        throw refused("picture.large", file, "the file is larger than 200 MB", "save it in fewer pixels or with more compression, and keep the original beside the study");
      }
      return KeptFile.of(session.folder(), FOLDER, file.getFileName().toString(), Files.readAllBytes(file));
    } catch (IOException e) {
      throw refused("picture.unreadable", file, FileFault.what(e), "check its name and rights");
    }
  }

  private static IntakeException refused(String code, Path file, String what, String remedy) {
    return new IntakeException(List.of(Finding.error(code, file.toString(), what, remedy)));
  }
}
