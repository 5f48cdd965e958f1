package daubline.export.format;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * Names of the sheets of one workbook: at most 31 characters, none of {@code []:*?/\}, no apostrophe at the ends, not
 * the reserved word History, no two alike without regard to case (limits of the file format's best known reader).
 */
final class SheetNames {

  private static final int LONGEST = 31;

  private final Set<String> taken = new HashSet<>(Set.of("history"));

  /** A name like the wanted one that is still free. */
  String free(String wanted) {
    String base = wanted.replaceAll("[\\[\\]:*?/\\\\\\p{Cntrl}]", " ").strip().replaceAll("^'+|'+$", "");
    String name = cut(base.isEmpty() ? "Sheet" : base, LONGEST);
    for (int n = 2; !taken.add(name.toLowerCase(Locale.ROOT)); n++) {
      String suffix = " " + n;
      name = cut(base, LONGEST - suffix.length()) + suffix;
    }
    return name;
  }

  private static String cut(String text, int longest) {
    return text.length() <= longest ? text : text.substring(0, longest).strip();
  }
}
