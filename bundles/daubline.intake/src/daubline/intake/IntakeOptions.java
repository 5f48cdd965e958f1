package daubline.intake;

import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.intake.raw.RawOptions;
import java.nio.charset.Charset;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * What a person says about how a file is to be read, as named settings; what is left open is found out. The same
 * settings are kept in a study as the mapping of a laboratory or logger.
 *
 * <ul>
 * <li>{@code decimal}: point or comma</li>
 * <li>{@code delimiter}: semicolon, comma, tab, bar, or one sign</li>
 * <li>{@code encoding}: a name such as UTF-8, windows-1252, UTF-16LE</li>
 * <li>{@code sheet}: the name of a sheet of a workbook</li>
 * <li>{@code header}: the number of the row that holds the headings, from 1</li>
 * <li>{@code dates}: ymd, dmy or mdy</li>
 * <li>{@code unit:HEADING}: the unit of a column; {@code unit:*} for all columns that name none</li>
 * <li>{@code column:HEADING}: the column of the form that a heading stands for; {@code -} to leave it unread</li>
 * <li>{@code set:COLUMN}: a text for every row, for a column that the file does not have</li>
 * <li>{@code samples}: for analyses, rows or columns</li>
 * <li>{@code units}: for analyses, the number of the row that holds units, or none</li>
 * <li>{@code replicates}: for analyses, kept, joined or apart</li>
 * <li>{@code confirm}: for analyses, the aspects whose guesses are taken as they are shown, parted by commas</li>
 * <li>{@code convert:HEADING}: for analyses, the oxide as which an element is asked for</li>
 * <li>{@code of:ROW}: for analyses, what the sample of a row belongs to, as trial T4, lot Bog ore or sheet Furnace 3;
 *     {@code of:*} for all rows that say nothing</li>
 * <li>{@code row:ROW:COLUMN}: for analyses, the text of one row in a column of the form; {@code -} for none</li>
 * <li>{@code time}: for a logger, the heading or number of the column of times</li>
 * <li>{@code start}: for a logger, date and time of its first row, as 2031-08-16T09:41:15+01:00</li>
 * <li>{@code offset}: for a logger, seconds to add to its clock</li>
 * <li>{@code interval}: for a logger without a column of times, seconds from row to row</li>
 * <li>{@code mapping}: the name of a mapping kept in the study, whose settings count where nothing else is said</li>
 * <li>{@code save}: the name under which these settings are kept in the study</li>
 * </ul>
 */
public final class IntakeOptions {

  private static final List<String> PLAIN = List.of("decimal", "delimiter", "encoding", "sheet", "header", "dates",
      "mapping", "save", "time", "start", "offset",
      "interval", "samples", "units", "replicates", "confirm");
  private static final List<String> FAMILIES = List.of("unit:", "column:", "set:", "convert:", "of:", "row:");
  private static final IntakeOptions NONE = new IntakeOptions(Map.of());

  private final Map<String, String> settings;

  private IntakeOptions(Map<String, String> settings) {
    this.settings = Collections.unmodifiableMap(new TreeMap<>(settings));
  }

  /** Nothing is said; everything is found out. */
  public static IntakeOptions none() {
    return NONE;
  }

  /**
   * The same with one more setting.
   *
   * @throws IntakeException when there is no such setting or its text makes no sense
   */
  public IntakeOptions with(String setting, String text) throws IntakeException {
    Optional<Finding> wrong = check(setting, text);
    if (wrong.isPresent()) {
      throw new IntakeException(List.of(wrong.get()));
    }
    Map<String, String> more = new TreeMap<>(settings);
    more.put(setting, text);
    return new IntakeOptions(more);
  }

  /** The same without one setting. */
  public IntakeOptions without(String setting) {
    Map<String, String> fewer = new TreeMap<>(settings);
    fewer.remove(setting);
    return new IntakeOptions(fewer);
  }

  /** These settings, and those of a mapping where these say nothing. */
  public IntakeOptions over(Map<String, String> mapping) {
    Map<String, String> all = new TreeMap<>(mapping);
    all.putAll(settings);
    return new IntakeOptions(all);
  }

  private static Optional<Finding> check(String setting, String text) {
    String complaint = switch (setting) {
      case "decimal" -> text.equals("point") || text.equals("comma") ? "" : "point or comma";
      case "delimiter" -> delimiter(text).isPresent() ? "" : "semicolon, comma, tab, bar, or one sign";
      case "encoding" -> isCharset(text) ? "" : "a known encoding such as UTF-8, windows-1252 or UTF-16LE";
      case "header" -> text.matches("[1-9]\\d{0,5}") ? "" : "a row number from 1";
      case "start" -> text.matches("\\d{4}-\\d{2}-\\d{2}(T\\d{2}:\\d{2}(:\\d{2})?(Z|[+-]\\d{2}:\\d{2})?)?") ? ""
          : "date and time such as 2031-08-16T09:41:15+01:00";
      case "offset" -> text.matches("-?\\d+(\\.\\d+)?") ? "" : "seconds, such as -75";
      case "interval" -> text.matches("\\d+(\\.\\d+)?") && Double.parseDouble(text) > 0 ? "" : "seconds above 0";
      case "dates" -> List.of("ymd", "dmy", "mdy").contains(text) ? "" : "ymd, dmy or mdy";
      case "samples" -> List.of("rows", "columns").contains(text) ? "" : "rows or columns";
      case "units" -> text.matches("none|[1-9]\\d{0,5}") ? "" : "the number of a row, or none";
      case "replicates" -> List.of("kept", "joined", "apart").contains(text) ? "" : "kept, joined or apart";
      case "confirm" -> Arrays.stream(text.split(",")).allMatch(w -> Recognised.Aspect.find(w).isPresent()) ? ""
          : "some of: " + Recognised.Aspect.words();
      default -> PLAIN.contains(setting) || FAMILIES.stream().anyMatch(f -> setting.startsWith(f)
          && setting.length() > f.length()) ? ""
          : null;
    };
    if (complaint == null) {
      return Optional.of(Finding.error("option.unknown", setting, "there is no setting of this name",
          Nearest.remedy(setting, PLAIN, "use one of: " + String.join(", ", PLAIN)
          + ", unit:HEADING, column:HEADING, set:COLUMN, convert:HEADING, of:ROW, row:ROW:COLUMN")));
    }
    return complaint.isEmpty() ? Optional.empty()
        : Optional.of(Finding.error("option.text", setting, "“" + text + "” makes no sense here", "write " + complaint));
  }

  private static boolean isCharset(String name) {
    try {
      return Charset.isSupported(name);
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private static Optional<Character> delimiter(String text) {
    return switch (text) {
      case "semicolon" -> Optional.of(';');
      case "comma" -> Optional.of(',');
      case "tab" -> Optional.of('\t');
      case "bar" -> Optional.of('|');
      default -> text.length() == 1 && !Character.isLetterOrDigit(text.charAt(0)) && text.charAt(0) != '"'
          ? Optional.of(text.charAt(0))
          : Optional.empty();
    };
  }

  /** All settings in the order of their names. */
  public Map<String, String> settings() {
    return settings;
  }

  /** One setting. */
  public Optional<String> get(String setting) {
    return Optional.ofNullable(settings.get(setting));
  }

  /** The decimal sign, when stated. */
  public Optional<DecimalSign> decimal() {
    return get("decimal").map(d -> d.equals("comma") ? DecimalSign.COMMA : DecimalSign.POINT);
  }

  /** The row of the headings, when stated. */
  public OptionalInt header() {
    return get("header").map(h -> OptionalInt.of(Integer.parseInt(h))).orElseGet(OptionalInt::empty);
  }

  /** Encoding and delimiter, when stated. */
  public RawOptions raw() {
    return new RawOptions(get("encoding").map(Charset::forName), get("delimiter").flatMap(IntakeOptions::delimiter));
  }

  /** The settings of a family by what follows its colon: units, columns or fixed texts. */
  public Map<String, String> family(String name) {
    Map<String, String> members = new TreeMap<>();
    settings.forEach((key, text) -> {
      if (key.startsWith(name + ":")) {
        members.put(key.substring(name.length() + 1), text);
      }
    });
    return members;
  }
}
