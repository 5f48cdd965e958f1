package daubline.intake.raw;

import daubline.base.Finding;
import java.util.List;

/**
 * A file as it was read.
 *
 * @param name its name without folders
 * @param how in words, how it was read: encoding and delimiter, or workbook
 * @param sheets its tables; none when it could not be read
 * @param findings what was noticed; an error when it could not be read
 */
public record RawFile(String name, String how, List<RawSheet> sheets, List<Finding> findings) {

  public RawFile {
    sheets = List.copyOf(sheets);
    findings = List.copyOf(findings);
  }

  /** A file that could not be read. */
  static RawFile refused(String name, Finding why) {
    return new RawFile(name, "", List.of(), List.of(why));
  }
}
