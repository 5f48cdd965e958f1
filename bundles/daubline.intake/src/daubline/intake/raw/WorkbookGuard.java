package daubline.intake.raw;

import daubline.base.Finding;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Looks through a workbook's parts before anything is made of them: how large they become, and whether one declares a
 * document type, which an XLSX part never does and which is how outside files are drawn in.
 */
final class WorkbookGuard {

  private static final long LARGEST_INSIDE = 512L << 20;
  private static final long FREE_OF_RATIO = 4L << 20;
  private static final long RATIO = 100;
  private static final int PARTS = 2000;
  private static final byte[] DOCTYPE = "<!doctype".getBytes(StandardCharsets.US_ASCII);

  private final String name;
  private final Set<String> parts = new HashSet<>();
  private final long packed;
  private long total;

  private WorkbookGuard(String name, long packed) {
    this.name = name;
    this.packed = packed;
  }

  /** What forbids opening the workbook; empty when nothing does. */
  static Optional<Finding> refusal(String name, byte[] content) {
    return new WorkbookGuard(name, content.length).look(content);
  }

  private Optional<Finding> look(byte[] content) {
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(content))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.add(entry.getName());
        Optional<Finding> bad = parts.size() > PARTS ? Optional.of(bomb()) : lookInto(zip, entry.getName());
        if (bad.isPresent()) {
          return bad;
        }
      }
    } catch (IOException | IllegalArgumentException e) {
      return Optional.of(broken(name, e));
    }
    return otherKind();
  }

  private Optional<Finding> lookInto(InputStream part, String partName) throws IOException {
    String lower = partName.toLowerCase(Locale.ROOT);
    boolean xml = lower.endsWith(".xml") || lower.endsWith(".rels");
    byte[] buffer = new byte[1 << 16];
    int matched = 0;
    for (int n = part.read(buffer); n >= 0; n = part.read(buffer)) {
      total += n;
      if (total > LARGEST_INSIDE || total > FREE_OF_RATIO && total > RATIO * packed) {
        return Optional.of(bomb());
      }
      for (int i = 0; xml && i < n; i++) {
        matched = advance(matched, buffer[i]);
        if (matched == DOCTYPE.length) {
          return Optional.of(doctype(partName));
        }
      }
    }
    return Optional.empty();
  }

  /** One step of the search; zero bytes are passed over, so that UTF-16 hides nothing. */
  private static int advance(int matched, byte b) {
    if (b == 0) {
      return matched;
    }
    int lower = b >= 'A' && b <= 'Z' ? b + 32 : b;
    return lower == DOCTYPE[matched] ? matched + 1 : lower == DOCTYPE[0] ? 1 : 0;
  }

  private Optional<Finding> otherKind() {
    if (parts.contains("xl/workbook.xml")) {
      return Optional.empty();
    }
    if (parts.contains("xl/workbook.bin")) {
      return Optional.of(Finding.error("xlsx.binary", name, "this is a binary workbook (.xlsb)", "save it as .xlsx or CSV"));
    }
    if (parts.contains("content.xml") && parts.contains("mimetype")) {
      return Optional.of(Finding.error("xlsx.opendocument", name, "this is an OpenDocument file", "save it as .xlsx or CSV"));
    }
    if (parts.isEmpty()) {
      return Optional.of(broken(name, new IOException("no part can be read")));
    }
    return Optional.of(Finding.error("file.kind", name, "this is a packed file, but no workbook",
        "unpack it and import the table itself"));
  }

  private Finding bomb() {
    return Finding.error("xlsx.bomb", name, "the workbook is packed so tightly that it would fill the memory (over "
        + (total >> 20) + " MB from " + (packed >> 10) + " KB); it is not opened",
        "import it only if you trust where it comes from: save it anew in a spreadsheet program, or as CSV");
  }

  private Finding doctype(String part) {
    return Finding.error("xlsx.doctype", name + ", part " + part,
        "the part declares a document type, which can draw in outside files; it is not opened",
        "ask where the file comes from; save the table anew as .xlsx or CSV in a spreadsheet program");
  }

  static Finding broken(String name, Exception e) {
    return Finding.error("file.broken", name, "the workbook is cut off or damaged: " + e.getMessage(),
        "copy it again from where it comes from, or save it anew in a spreadsheet program");
  }
}
