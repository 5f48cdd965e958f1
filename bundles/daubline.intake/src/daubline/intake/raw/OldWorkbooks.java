package daubline.intake.raw;

import daubline.base.Finding;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** Tells apart what hides behind the old compound file form: an encrypted workbook, an old one, or something else. */
final class OldWorkbooks {

  private OldWorkbooks() {
  }

  static Finding complaint(String name, byte[] content) {
    try (POIFSFileSystem files = new POIFSFileSystem(new ByteArrayInputStream(content))) {
      if (files.getRoot().hasEntryCaseInsensitive("EncryptedPackage")) {
        return Finding.error("xlsx.encrypted", name, "the workbook is protected by a password",
            "open it with the password, save a copy without, and import the copy");
      }
      if (files.getRoot().hasEntryCaseInsensitive("Workbook") || files.getRoot().hasEntryCaseInsensitive("Book")) {
        return Finding.error("xlsx.old", name, "this is a workbook of the old form (.xls)",
            "open it in a spreadsheet program and save it as .xlsx or CSV");
      }
    } catch (IOException | RuntimeException e) {
      return Finding.error("file.broken", name, "this looks like an old office file, but it is cut off or damaged: "
          + e.getMessage(),
          "copy it again from where it comes from, and save it as .xlsx or CSV");
    }
    return Finding.error("file.kind", name, "this is an office file, but no workbook", "save the table as .xlsx or CSV");
  }
}
