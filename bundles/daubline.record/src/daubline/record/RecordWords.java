package daubline.record;

import daubline.base.CatalogueWords;
import daubline.base.ValueKind;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.base.Wording;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** The words of tables and printed sheets in one language, from words.properties. */
public final class RecordWords {

  private final ResourceBundle texts;
  private final CatalogueWords catalogue;
  private final Wording wording;

  /** The words of a language; English where there is none of it. */
  public RecordWords(Locale locale) {
    wording = Wording.of(locale.getLanguage());
    catalogue = CatalogueWords.of(locale.getLanguage());
    texts = ResourceBundle.getBundle("daubline.record.words", locale.getLanguage().equals("de") ? Locale.GERMAN : Locale.ROOT,
        RecordWords.class.getClassLoader(), ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  /** A text; {0}, {1} … are replaced by the parts. */
  public String of(String key, Object... parts) {
    String text = texts.getString(key);
    return parts.length == 0 ? text : new MessageFormat(text, Locale.ROOT).format(parts);
  }

  /** A variable with its name, group and meaning in this language. */
  public Variable told(Variable variable) {
    return catalogue.told(variable);
  }

  /** A word of the tool in this language. */
  public String said(String english) {
    return wording.apply(english);
  }

  /** A variable by its name in this language or in English, or by its id. */
  public boolean isMeant(Variable variable, String typed) {
    return variable.name().equalsIgnoreCase(typed) || told(variable).name().equalsIgnoreCase(typed) || variable.id().equals(typed);
  }

  /** A word of a category, or for missing, present or absent, in this language; any other text as it is. */
  public String word(Variable variable, String kept) {
    return wording.kind(kept).map(k -> said(k.word())).orElseGet(() -> variable.type() == ValueType.CATEGORY ? catalogue.word(variable.id(), kept) : kept);
  }

  /** What the study keeps for a word typed in this language or in English. */
  public String kept(Variable variable, String typed) {
    return wording.kind(typed).map(ValueKind::word).orElseGet(() -> variable.type() == ValueType.CATEGORY ? catalogue.kept(variable.id(), typed) : typed);
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
