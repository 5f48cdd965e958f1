package daubline.ui;

import daubline.base.CatalogueWords;
import daubline.base.Finding;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.base.Wording;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** The texts of the window, from messages.properties in the language of the person. */
public final class Words {

  private static final ResourceBundle TEXTS = ResourceBundle.getBundle("daubline.ui.messages", Locale.getDefault(), Words.class.getClassLoader());

  private static final Wording WORDING = Wording.of(Locale.getDefault().getLanguage());

  private static final CatalogueWords CATALOGUE = CatalogueWords.of(Locale.getDefault().getLanguage());

  private Words() {
  }

  /** What a finding says and how to mend it, in the language of the person. */
  public static String said(Finding finding) {
    return said(finding.what()) + (finding.remedy().isEmpty() ? "" : " – " + said(finding.remedy()));
  }

  /** A text that the tool makes in English, such as a finding, a reason, a caption or the name of a criterion, in the language of the person. */
  public static String said(String english) {
    return WORDING.apply(english);
  }

  /** How the tool words its tables and figures in the language of the person. */
  public static Wording wording() {
    return WORDING;
  }

  /** A variable with its name, group and meaning in the language of the person. */
  public static Variable told(Variable v) {
    return CATALOGUE.told(v);
  }

  /** A word of a category in the language of the person. */
  public static String word(Variable v, String kept) {
    return CATALOGUE.word(v.id(), kept);
  }

  /** What the study keeps for a word that was typed in the language of the person, or in English. */
  public static String kept(Variable v, String typed) {
    return v.type() == ValueType.CATEGORY ? CATALOGUE.kept(v.id(), typed) : typed;
  }

  /**
   * A text.
   *
   * @param key its key in messages.properties
   * @param parts what to put for {0}, {1} …; without any, the text is taken as it stands
   */
  public static String of(String key, Object... parts) {
    String text = TEXTS.getString(key);
    // numbers without grouping signs, which another language reads as decimals
    Object[] plain = Arrays.stream(parts).map(p -> p instanceof Integer || p instanceof Long ? p.toString() : p).toArray();
    return parts.length == 0 ? text : new MessageFormat(text, Locale.ROOT).format(text.contains(",choice,") ? parts : plain);
  }

  /** The word for a value of an enumeration: the key is the simple class name in lower case, a full stop, the name. */
  public static String of(Enum<?> value) {
    return of(value.getDeclaringClass().getSimpleName().toLowerCase(Locale.ROOT) + "." + value.name());
  }

  /** The text of a key, or another text when there is no such key; for words that a study may add to. */
  public static String orElse(String key, String otherwise) {
    try {
      return TEXTS.getString(key);
    } catch (MissingResourceException e) {
      return otherwise;
    }
  }
}
