package daubline.export.format;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** Copies a zip archive so that two runs give the same bytes: one fixed time on every entry. Nothing is packed anew. */
public final class SteadyZip {

  private SteadyZip() {
  }

  /**
   * Copies an archive.
   *
   * @param from the archive
   * @param when the time of all entries, 1980 or later; zip archives keep it to two seconds
   * @param to where to; not closed
   */
  public static void copy(Path from, Instant when, OutputStream to) throws IOException {
    try (ZipFile zip = ZipFile.builder().setPath(from).get()) {
      ZipArchiveOutputStream out = new ZipArchiveOutputStream(to);
      List<ZipArchiveEntry> entries = Collections.list(zip.getEntriesInPhysicalOrder());
      for (ZipArchiveEntry entry : entries) {
        try (InputStream raw = zip.getRawInputStream(entry)) {
          out.addRawArchiveEntry(steady(entry, when), raw);
        }
      }
      out.finish();
    }
  }

  /** An entry with a time that depends on no time zone. */
  static ZipArchiveEntry entry(String name, Instant when) {
    ZipArchiveEntry entry = new ZipArchiveEntry(name);
    entry.setTimeLocal(when.atOffset(ZoneOffset.UTC).toLocalDateTime());
    return entry;
  }

  private static ZipArchiveEntry steady(ZipArchiveEntry from, Instant when) {
    ZipArchiveEntry entry = entry(from.getName(), when);
    entry.setMethod(from.getMethod());
    entry.setCrc(from.getCrc());
    entry.setSize(from.getSize());
    entry.setCompressedSize(from.getCompressedSize());
    return entry;
  }
}
