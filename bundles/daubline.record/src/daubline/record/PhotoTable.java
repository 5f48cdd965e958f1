package daubline.record;

import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.model.DataFile;
import daubline.model.ModelPackage.Literals;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Photographs, scanned papers and drawings of a trial or a sheet, linked by relative path and checksum; what is missing or
 * no longer as large as it was stands out here, and Checks compares every checksum.
 */
public final class PhotoTable extends ObjectTable<DataFile> {

  private static final List<String> KINDS = List.of("picture", "section", "plan", "paper sheet");
  private static final int SHOWN_DIGITS = 12;

  private final Supplier<List<DataFile>> files;

  /**
   * The pictures among files.
   *
   * @param files where they are found
   */
  public PhotoTable(Desk desk, Supplier<List<DataFile>> files) {
    super("photos", desk);
    this.files = files;
    refresh();
  }

  @Override
  protected List<DataFile> find() {
    return shown(files.get()).stream().filter(f -> Pictures.isPicture(f) || Pictures.isPaper(f)).toList();
  }

  @Override
  public boolean canAdd() {
    return false;
  }

  @Override
  public boolean isShortened() {
    return true;
  }

  /** A picture stays while something is measured on it. */
  @Override
  public boolean canRemove(int row) {
    return at(row) != null && at(row).getMeasurements().isEmpty() && !desk().session().isReadOnly();
  }

  @Override
  protected List<EntryColumn<DataFile>> make() {
    return List.of(Columns.<DataFile>text("name", 1.4, Literals.NAMED__NAME).doubting(this::state), Columns.<DataFile>text("caption", 2, Literals.DATA_FILE__CAPTION),
        Columns.<DataFile>date("captured", 1.2, Literals.DATA_FILE__CAPTURED_AT),
        EntryColumn.<DataFile>typed("offset", 0.8, f -> f.getClockOffset() == null ? "" : Columns.plain(desk(), f.getClockOffset()), this::readOffset),
        Columns.<DataFile>text("rights", 1.2, Literals.DATA_FILE__RIGHTS),
        EntryColumn.<DataFile>typed("consent", 0.8, f -> desk().words().of(f.isConsent() ? "photos.yes" : "photos.no"), this::readConsent)
            .offering(f -> List.of(desk().words().of("photos.yes"), desk().words().of("photos.no"))),
        EntryColumn.<DataFile>typed("kind", 0.9, f -> kind(Columns.text(f.getKind())), this::readKind).offering(f -> KINDS.stream().map(this::kind).toList()).askedWhen(f -> false),
        EntryColumn.<DataFile>shown("path", 1.4, f -> Columns.text(f.getPath())).doubting(this::state),
        EntryColumn.shown("sha256", 1, f -> shortened(Columns.text(f.getSha256()))));
  }

  private static String shortened(String digest) {
    return digest.length() > SHOWN_DIGITS ? digest.substring(0, SHOWN_DIGITS) + "…" : digest;
  }

  private String kind(String kept) {
    return desk().words().orElse("photos.kind." + kept.replace(' ', '_'), kept);
  }

  private Entry<DataFile> readKind(String typed) {
    String kept = KINDS.stream().filter(k -> typed.equalsIgnoreCase(k) || typed.equalsIgnoreCase(kind(k))).findFirst().orElse(typed);
    return Entry.of(f -> f.setKind(typed.isBlank() ? null : kept));
  }

  private Entry<DataFile> readOffset(String typed) {
    Optional<Double> seconds = Numbers.parse(typed, desk().decimal().get());
    return typed.isBlank() || seconds.isPresent() ? Entry.of(f -> f.setClockOffset(seconds.orElse(null))) : Entry.wrong(Numbers.complaint(typed, desk().decimal().get()));
  }

  private Entry<DataFile> readConsent(String typed) {
    boolean yes = typed.equalsIgnoreCase(desk().words().of("photos.yes")) || typed.equalsIgnoreCase("yes");
    boolean no = typed.isBlank() || typed.equalsIgnoreCase(desk().words().of("photos.no")) || typed.equalsIgnoreCase("no");
    return yes || no ? Entry.of(f -> f.setConsent(yes))
        : Entry.wrong("value.category", "“" + typed + "” says neither yes nor no", "write " + desk().words().of("photos.yes") + " or " + desk().words().of("photos.no"));
  }

  private Optional<Finding> state(DataFile file) {
    try {
      Path path = desk().session().folder().resolve(Columns.text(file.getPath())).normalize();
      if (!path.startsWith(desk().session().folder()) || !Files.isRegularFile(path)) {
        return Optional.of(Finding.warning("file.missing", "", Columns.text(file.getPath()) + " is not in the study’s folder", "put it back where it was"));
      }
      return file.getBytes() != null && Files.size(path) != file.getBytes()
          ? Optional.of(Finding.warning("file.changed", "", file.getPath() + " is no longer as large as it was", "restore the delivered file; keep an edited one beside it under another name"))
          : Optional.empty();
    } catch (InvalidPathException | IOException e) {
      return Optional.of(Finding.warning("file.unreadable", "", Columns.text(file.getPath()) + " cannot be read: " + e.getMessage(), "check the name and the rights of the file"));
    }
  }
}
