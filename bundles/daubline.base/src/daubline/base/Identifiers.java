package daubline.base;

import java.util.Optional;

/** The standard numbers of publications, as far as their form can be checked without asking anybody. */
public final class Identifiers {

  private Identifiers() {
  }

  /**
   * Whether a text is an ISBN of 10 or 13 digits whose check digit is right (ISO 2108; from memory: weights 10 to 1 modulo
   * 11, or 1 and 3 in turn modulo 10). Hyphens and spaces between the digits do not matter.
   */
  public static boolean isIsbn(String text) {
    String digits = text.replaceAll("(?i)^\\s*isbn(-1[03])?:?", "").replaceAll("[\\s-]", "").toUpperCase(java.util.Locale.ROOT);
    if (digits.matches("\\d{9}[\\dX]")) {
      int sum = 0;
      for (int i = 0; i < 10; i++) {
        sum += (10 - i) * (digits.charAt(i) == 'X' ? 10 : digits.charAt(i) - '0');
      }
      return sum % 11 == 0;
    }
    if (digits.matches("97[89]\\d{10}")) {
      int sum = 0;
      for (int i = 0; i < 13; i++) {
        sum += (i % 2 == 0 ? 1 : 3) * (digits.charAt(i) - '0');
      }
      return sum % 10 == 0;
    }
    return false;
  }

  /** Whether a text has the form of a digital object identifier (ISO 26324; DOI Handbook, 2.2): 10., registrant, slash, suffix. */
  public static boolean isDoi(String text) {
    return text.matches("(?i)(https?://(dx\\.)?doi\\.org/|doi:\\s*)?10\\.\\d{4,9}(\\.\\d+)*/\\S+");
  }

  /** What is wrong with the DOI of a citation; nothing when it states none. */
  public static Optional<Finding> doiFinding(String text) {
    return text == null || text.isBlank() || isDoi(text.strip()) ? Optional.empty() : Optional.of(Finding.warning("doi.form", "",
        "“" + text + "” does not have the form of a DOI", "it begins with 10. and has a slash, such as 10.3390/met13050984"));
  }

  /** What is wrong with the ISBN of a citation; nothing when it states none. */
  public static Optional<Finding> isbnFinding(String text) {
    return text == null || text.isBlank() || isIsbn(text) ? Optional.empty() : Optional.of(Finding.warning("isbn.form", "",
        "“" + text + "” is no ISBN, or its check digit is wrong", "compare it with the book: 10 or 13 digits"));
  }

  /** The identifier itself, without an address or mark before it, in lower case: letters do not differ by case. */
  public static String doi(String text) {
    return text.strip().toLowerCase(java.util.Locale.ROOT).replaceAll("^(https?://(dx\\.)?doi\\.org/|doi:\\s*)", "");
  }
}
