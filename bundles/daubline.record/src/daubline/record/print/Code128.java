package daubline.record.print;

import java.util.Optional;

/**
 * Bars of Code 128 (ISO/IEC 15417), code set B: printable ASCII with a check symbol. Widths of the symbols: annex tables of
 * that standard, typed from memory and compared with an independent encoder in the tests.
 */
final class Code128 {

  /** Modules of quiet on each side that the standard asks for. */
  static final int QUIET = 10;

  private static final String[] WIDTHS = ("212222 222122 222221 121223 121322 131222 122213 122312 132212 221213 221312 231212 112232 122132 122231 "
      + "113222 123122 123221 223211 221132 221231 213212 223112 312131 311222 321122 321221 312212 322112 322211 212123 212321 232121 111323 131123 "
      + "131321 112313 132113 132311 211313 231113 231311 112133 112331 132131 113123 113321 133121 313121 211331 231131 213113 213311 213131 311123 "
      + "311321 331121 312113 312311 332111 314111 221411 431111 111224 111422 121124 121421 141122 141221 112214 112412 122114 122411 142112 142211 "
      + "241211 221114 413111 241112 134111 111242 121142 121241 114212 124112 124211 411212 421112 421211 212141 214121 412121 111143 111341 131141 "
      + "114113 114311 411113 411311 113141 114131 311141 411131 211412 211214 211232 2331112").split(" ");
  private static final int START_B = 104;
  private static final int STOP = 106;
  private static final int MODULUS = 103;

  private Code128() {
  }

  /** The widths of bars and spaces in modules, a bar first; empty when the text holds what code set B has not. */
  static Optional<String> widths(String text) {
    if (text.isEmpty() || !text.chars().allMatch(c -> c >= ' ' && c <= '~')) {
      return Optional.empty();
    }
    StringBuilder all = new StringBuilder(WIDTHS[START_B]);
    int sum = START_B;
    for (int i = 0; i < text.length(); i++) {
      int value = text.charAt(i) - ' ';
      sum += (i + 1) * value;
      all.append(WIDTHS[value]);
    }
    return Optional.of(all.append(WIDTHS[sum % MODULUS]).append(WIDTHS[STOP]).toString());
  }

  /** The length of a code in modules, without the quiet zones. */
  static int modules(String widths) {
    return widths.chars().map(c -> c - '0').sum();
  }
}
