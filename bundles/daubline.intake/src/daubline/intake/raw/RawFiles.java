package daubline.intake.raw;

import daubline.base.FileFault;
import daubline.base.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a CSV file, a workbook or a bibliographic file into cells; tells by the content, not by the name, which of them it is. */
public final class RawFiles {

  /** The largest file that is read; a season of records or a week of a logger is far below. */
  static final long LARGEST = 64L << 20;

  private static final int[] ZIP = {'P', 'K', 3, 4};
  private static final int[] EMPTY_ZIP = {'P', 'K', 5, 6};
  private static final int[] COMPOUND = {0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1};

  private RawFiles() {
  }

  /** Reads a file; one that cannot be read comes back without sheets and with the error that says why. */
  public static RawFile read(Path file, RawOptions options) {
    String name = file.getFileName().toString();
    try {
      if (!Files.isRegularFile(file)) {
        return RawFile.refused(name, Finding.error("file.none", file.toString(), "there is no such file",
            "check the name and the folder"));
      }
      if (Files.size(file) > LARGEST) {
        return RawFile.refused(name, Finding.error("file.large", name, "the file has " + (Files.size(file) >> 20)
            + " MB; up to " + (LARGEST >> 20) + " MB are read", "split it, or leave out what is not to be imported"));
      }
      return read(name, Files.readAllBytes(file), options);
    } catch (IOException e) {
      return RawFile.refused(name, Finding.error("file.unreachable", file.toString(),
          FileFault.what(e),
          "check that you may read the file and that no other program holds it"));
    }
  }

  /** Reads the content of a file. */
  public static RawFile read(String name, byte[] content, RawOptions options) {
    if (content.length == 0) {
      return RawFile.refused(name, Finding.error("file.empty", name, "the file is empty",
          "export it again, or choose another file"));
    }
    if (startsWith(content, ZIP) || startsWith(content, EMPTY_ZIP)) {
      return WorkbookReader.read(name, content);
    }
    if (startsWith(content, COMPOUND)) {
      return RawFile.refused(name, OldWorkbooks.complaint(name, content));
    }
    Encodings.Decoded decoded = Encodings.decode(content, options.charset());
    return Bibliographies.is(decoded.text()) ? Bibliographies.read(name, decoded) : CsvFiles.read(name, content, options);
  }

  private static boolean startsWith(byte[] content, int[] start) {
    for (int i = 0; i < start.length; i++) {
      if (i >= content.length || (content[i] & 0xFF) != start[i]) {
        return false;
      }
    }
    return true;
  }
}
