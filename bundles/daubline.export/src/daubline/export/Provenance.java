package daubline.export;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * What an export was made from and with, printed on it so that anyone can make it again byte for byte.
 *
 * @param study the study's name
 * @param digest the digest of the study's files
 * @param version the version of the tool
 * @param settings settings and seeds in the order in which they are printed
 * @param when the time that file formats ask for; a fixed one unless the caller has a reason
 */
public record Provenance(String study, String digest, String version, List<Setting> settings, Instant when) {

  /** The time written where a format insists on one: the first that a zip archive can hold. */
  public static final Instant NO_TIME = Instant.parse("1980-01-01T00:00:00Z");

  /** One setting. */
  public record Setting(String name, String value) {
  }

  public Provenance {
    settings = List.copyOf(settings);
  }

  /**
   * The time of SOURCE_DATE_EPOCH, by which builds and exports are made repeatable.
   *
   * @param seconds the text of the variable: seconds since 1970; null or blank for none
   * @return the time, no earlier than zip archives can hold
   * @throws IllegalArgumentException when it is no whole number of seconds
   */
  public static Instant when(String seconds) {
    if (seconds == null || seconds.isBlank()) {
      return NO_TIME;
    }
    try {
      Instant when = Instant.ofEpochSecond(Long.parseLong(seconds.strip()));
      return when.isBefore(NO_TIME) ? NO_TIME : when;
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("SOURCE_DATE_EPOCH is no whole number of seconds: " + seconds, e);
    }
  }

  /** What stands on every export, as name and value. */
  public List<Setting> lines() {
    List<Setting> lines = new ArrayList<>(List.of(new Setting("Study", study), new Setting("Study digest", digest),
        new Setting("Made with", "Daubline " + version)));
    lines.addAll(settings);
    return lines;
  }
}
