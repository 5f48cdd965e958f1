package daubline.cli;

import daubline.base.Finding;
import daubline.base.Severity;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What commands print, and the exit codes they end with. */
final class Out {

  /** Done. */
  static final int DONE = 0;
  /** Something is wrong with the study or the file; it was said. */
  static final int WRONG = 1;

  private Out() {
  }

  static void line(String format, Object... values) {
    System.out.println(values.length == 0 ? format : String.format(java.util.Locale.ROOT, format, values));
  }

  /** A number of things, such as "1 error" or "2 errors". */
  static String count(int number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }

  /** Prints findings, errors first as they come, and a closing count; the exit code says whether there was an error. */
  static int findings(List<Finding> findings) {
    Map<Severity, Integer> counts = new EnumMap<>(Severity.class);
    for (Finding finding : findings) {
      counts.merge(finding.severity(), 1, Integer::sum);
      line(finding.toString());
    }
    line("%s, %s, %s", count(counts.getOrDefault(Severity.ERROR, 0), "error"), count(counts.getOrDefault(Severity.WARNING, 0), "warning"),
        count(counts.getOrDefault(Severity.NOTE, 0), "note"));
    return counts.containsKey(Severity.ERROR) ? WRONG : DONE;
  }
}
