package daubline.publication;

import daubline.analysis.deposit.Rows.Field;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** What the columns of a deposit hold, from columns.properties beside this class. */
final class Descriptions {

  private final Properties texts = new Properties();

  Descriptions() {
    try (Reader in = new InputStreamReader(Descriptions.class.getResourceAsStream("columns.properties"), StandardCharsets.UTF_8)) {
      texts.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The description of a column; its name in words when none is written. */
  String of(String table, Field field) {
    return texts.getProperty(table + "." + field.name(), texts.getProperty(field.name(), field.name().replace('_', ' ')));
  }

  /** Whether a description is written. */
  boolean knows(String table, Field field) {
    return texts.containsKey(field.name()) || texts.containsKey(table + "." + field.name());
  }
}
