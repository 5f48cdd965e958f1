package daubline.intake.raw;

import java.text.Normalizer;
import java.util.Map;
import java.util.Set;

/** The characters that a text with TeX commands means: accents, letters of other alphabets, dashes, quotation marks. */
final class TexText {

  /** Accents as combining characters of Unicode. */
  private static final Map<String, String> ACCENTS = Map.ofEntries(Map.entry("'", "\u0301"), Map.entry("`", "\u0300"), Map.entry("^", "\u0302"),
      Map.entry("\"", "\u0308"), Map.entry("~", "\u0303"), Map.entry("=", "\u0304"), Map.entry(".", "\u0307"), Map.entry("c", "\u0327"),
      Map.entry("v", "\u030C"), Map.entry("u", "\u0306"), Map.entry("H", "\u030B"), Map.entry("k", "\u0328"), Map.entry("r", "\u030A"),
      Map.entry("d", "\u0323"), Map.entry("b", "\u0331"));
  private static final Map<String, String> LETTERS = Map.ofEntries(Map.entry("ss", "ß"), Map.entry("ae", "æ"), Map.entry("AE", "Æ"), Map.entry("oe", "œ"),
      Map.entry("OE", "Œ"), Map.entry("o", "ø"), Map.entry("O", "Ø"), Map.entry("aa", "å"), Map.entry("AA", "Å"), Map.entry("l", "ł"), Map.entry("L", "Ł"),
      Map.entry("i", "ı"), Map.entry("j", "ȷ"), Map.entry("dh", "ð"), Map.entry("DH", "Ð"), Map.entry("th", "þ"), Map.entry("TH", "Þ"), Map.entry("dj", "đ"),
      Map.entry("textbackslash", "\\"), Map.entry("textasciitilde", "~"), Map.entry("textasciicircum", "^"), Map.entry("textbraceleft", "{"),
      Map.entry("textbraceright", "}"), Map.entry("textless", "<"), Map.entry("textgreater", ">"), Map.entry("textbar", "|"), Map.entry("textdegree", "°"),
      Map.entry("degree", "°"), Map.entry("circ", "°"), Map.entry("textendash", "–"), Map.entry("textemdash", "—"), Map.entry("textquoteright", "’"),
      Map.entry("textquotedblleft", "“"), Map.entry("textquotedblright", "”"), Map.entry("pounds", "£"),
      Map.entry("texteuro", "€"), Map.entry("ldots", "…"), Map.entry("dots", "…"), Map.entry("pm", "±"), Map.entry("times", "×"), Map.entry("mu", "μ"),
      Map.entry("alpha", "α"), Map.entry("beta", "β"), Map.entry("gamma", "γ"), Map.entry("delta", "δ"), Map.entry("textquotesingle", "'"), Map.entry("textasciigrave", "`"));
  /** Commands that only change how their text looks. */
  private static final Set<String> LOOKS = Set.of("emph", "textit", "textbf", "textsc", "textrm", "textsf", "texttt", "textsuperscript", "textsubscript",
      "mathrm", "mbox", "it", "em", "bf", "sc", "rm", "url", "href", "enquote", "uppercase", "relax", "protect");

  private final String text;
  private final Set<String> unknown;
  private final StringBuilder out = new StringBuilder();
  private int at;

  private TexText(String text, Set<String> unknown) {
    this.text = text;
    this.unknown = unknown;
  }

  /**
   * The plain text.
   *
   * @param unknown commands that are not known are added to it; they stay in the text
   */
  static String plain(String tex, Set<String> unknown) {
    TexText reader = new TexText(tex, unknown);
    while (reader.at < tex.length()) {
      reader.next();
    }
    return Normalizer.normalize(reader.out.toString(), Normalizer.Form.NFC).replaceAll("\\s+", " ").strip();
  }

  private void next() {
    char c = text.charAt(at++);
    switch (c) {
      case '{', '}', '$' -> { }
      case '~' -> out.append('\u00A0');
      case '-' -> out.append(starts("--") ? skip(2, "—") : starts("-") ? skip(1, "–") : "-");
      case '`' -> out.append(starts("`") ? skip(1, "“") : "‘");
      case '\'' -> out.append(starts("'") ? skip(1, "”") : "'");
      case '^', '_' -> out.append(at >= 2 && dollars() % 2 == 1 ? "" : String.valueOf(c));
      case '\\' -> command();
      default -> out.append(c);
    }
  }

  private int dollars() {
    return (int) text.substring(0, at).chars().filter(c -> c == '$').count();
  }

  private boolean starts(String more) {
    return text.startsWith(more, at);
  }

  private String skip(int count, String result) {
    at += count;
    return result;
  }

  private void command() {
    if (at >= text.length()) {
      out.append('\\');
      return;
    }
    int from = at;
    while (at < text.length() && Character.isLetter(text.charAt(at)) && text.charAt(at) < 128) {
      at++;
    }
    String name = at > from ? text.substring(from, at) : text.substring(from, ++at);
    if (ACCENTS.containsKey(name)) {
      accent(ACCENTS.get(name));
    } else if (LETTERS.containsKey(name)) {
      out.append(LETTERS.get(name));
      swallow();
    } else if (LOOKS.contains(name)) {
      swallow();
    } else if ("&%$#_{} ".contains(name)) {
      out.append(name);
    } else if (name.equals("\\") || name.equals(",") || name.equals("par")) {
      out.append(' ');
    } else if (!"-/".contains(name)) {
      out.append('\\').append(name);
      unknown.add("\\" + name);
    }
  }

  /** The spaces after a command of letters end it. */
  private void swallow() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }

  private void accent(String combining) {
    int before = out.length();
    while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '{')) {
      at++;
    }
    if (at >= text.length() || text.charAt(at) == '}') {
      return;
    }
    next();
    String letter = out.substring(before).replace("ı", "i").replace("ȷ", "j");
    out.setLength(before);
    out.append(letter).append(combining);
  }
}
