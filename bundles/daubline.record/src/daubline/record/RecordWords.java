package daubline.record;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** The words of tables and printed sheets in one language, from words.properties. */
public final class RecordWords {

  private final ResourceBundle texts;

  /** The words of a language; English where there is none of it. */
  public RecordWords(Locale locale) {
    texts = ResourceBundle.getBundle("daubline.record.words", locale.getLanguage().equals("de") ? Locale.GERMAN : Locale.ROOT,
        RecordWords.class.getClassLoader(), ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  /** A text; {0}, {1} … are replaced by the parts. */
  public String of(String key, Object... parts) {
    String text = texts.getString(key);
    return parts.length == 0 ? text : new MessageFormat(text, Locale.ROOT).format(parts);
  }

  /** A text, or another one when there is none. */
  public String orElse(String key, String otherwise) {
    try {
      return texts.getString(key);
    } catch (MissingResourceException e) {
      return otherwise;
    }
  }
}
