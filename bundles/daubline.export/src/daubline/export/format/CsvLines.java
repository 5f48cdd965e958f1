package daubline.export.format;

import java.io.IOException;
import java.util.List;

/**
 * The lines of comma-separated files after RFC 4180: lines end with CR LF; a field with separator, quotation mark or
 * line break stands in quotation marks, and those inside it are doubled.
 */
public final class CsvLines {

  private final char separator;

  /** Lines with this sign between the fields. */
  public CsvLines(char separator) {
    this.separator = separator;
  }

  /** Writes one line. */
  public void line(List<String> fields, Appendable out) throws IOException {
    for (int i = 0; i < fields.size(); i++) {
      if (i > 0) {
        out.append(separator);
      }
      field(fields.get(i), fields.size() == 1, out);
    }
    out.append("\r\n");
  }

  /** An empty field alone on its line is quoted, so that the line is not taken for a blank one. */
  private void field(String field, boolean alone, Appendable out) throws IOException {
    if (!isQuoted(field) && !(alone && field.isEmpty())) {
      out.append(field);
      return;
    }
    out.append('"');
    for (int i = 0; i < field.length(); i++) {
      char c = field.charAt(i);
      out.append(c);
      if (c == '"') {
        out.append(c);
      }
    }
    out.append('"');
  }

  private boolean isQuoted(String field) {
    for (int i = 0; i < field.length(); i++) {
      char c = field.charAt(i);
      if (c == separator || c == '"' || c == '\n' || c == '\r') {
        return true;
      }
    }
    return !field.isEmpty() && (field.charAt(0) == ' ' || field.charAt(field.length() - 1) == ' ');
  }
}
