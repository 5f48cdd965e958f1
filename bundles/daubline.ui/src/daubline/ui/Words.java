package daubline.ui;

import daubline.base.Finding;
import daubline.base.FindingWords;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** The texts of the window, from messages.properties in the language of the person. */
public final class Words {

  private static final ResourceBundle TEXTS = ResourceBundle.getBundle("daubline.ui.messages", Locale.getDefault(), Words.class.getClassLoader());

  private static final FindingWords FINDINGS = FindingWords.of(Locale.getDefault().getLanguage());

  private Words() {
  }

  /** What a finding says and how to mend it, in the language of the person. */
  public static String said(Finding finding) {
    return said(finding.what()) + (finding.remedy().isEmpty() ? "" : " – " + said(finding.remedy()));
  }

  /** A sentence of a finding in the language of the person. */
  public static String said(String sentence) {
    return FINDINGS.said(sentence);
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
