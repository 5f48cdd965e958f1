package daubline.export.format;

/** Text of a document: line ends and tabulators as elements, right-to-left writing marked as such. */
final class WordText {

  private WordText() {
  }

  /** A run of text with properties of its own; nothing for an empty text. */
  static String run(String text, String properties) {
    if (text.isEmpty()) {
      return "";
    }
    String marked = isRightToLeft(text) ? properties + "<w:rtl/>" : properties;
    String lines = Html.escape(text.replace("\r\n", "\n").replace('\r', '\n')).replace("\n", "</w:t><w:br/><w:t xml:space=\"preserve\">")
        .replace("\t", "</w:t><w:tab/><w:t xml:space=\"preserve\">");
    return "<w:r>" + (marked.isEmpty() ? "" : "<w:rPr>" + marked + "</w:rPr>") + "<w:t xml:space=\"preserve\">" + lines + "</w:t></w:r>";
  }

  /** Whether the first letter with a direction runs from right to left. */
  static boolean isRightToLeft(String text) {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      switch (Character.getDirectionality(text.codePointAt(i))) {
        case Character.DIRECTIONALITY_LEFT_TO_RIGHT -> {
          return false;
        }
        case Character.DIRECTIONALITY_RIGHT_TO_LEFT, Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC -> {
          return true;
        }
        default -> {
          // digits and signs have no direction of their own
        }
      }
    }
    return false;
  }
}
