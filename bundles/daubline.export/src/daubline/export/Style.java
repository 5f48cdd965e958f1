package daubline.export;

import daubline.base.ValueKind;
import daubline.base.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * How a table is printed. Archive files keep the cells as they are; print refines numbers and missing values.
 *
 * @param preset for whom
 * @param decimalComma whether the decimal sign is a comma
 * @param wording the language of marks, legends and labels
 */
public record Style(Preset preset, boolean decimalComma, Wording wording) {

  /** A style in English. */
  public Style(Preset preset, boolean decimalComma) {
    this(preset, decimalComma, Wording.ENGLISH);
  }

  /** For whom a table is printed. */
  public enum Preset {
    /** For print: real minus signs, short marks for missing values with a legend. */
    JOURNAL,
    /** For further use: ASCII signs, missing values in words. */
    PLAIN,
    /** For reading aloud: limits and missing values in words, no marks. */
    ACCESSIBLE
  }

  /** The usual style of a paper. */
  public static final Style JOURNAL = new Style(Preset.JOURNAL, false);

  /** ASCII signs and words. */
  public static final Style PLAIN = new Style(Preset.PLAIN, false);

  /** Words throughout. */
  public static final Style ACCESSIBLE = new Style(Preset.ACCESSIBLE, false);

  /** The marks of a printed table. n.a. and n.d. are those of the laboratories. */
  private static final Map<ValueKind, String> MARKS = marks();

  private static final Pattern MINUS = Pattern.compile("(?<![0-9A-Za-z])-(?=[0-9.])");
  private static final Pattern POINT = Pattern.compile("(?<=[0-9])\\.(?=[0-9])");

  private static Map<ValueKind, String> marks() {
    Map<ValueKind, String> marks = new LinkedHashMap<>();
    marks.put(ValueKind.NOT_RECORDED, "–");
    marks.put(ValueKind.NOT_ANALYSED, "n.a.");
    marks.put(ValueKind.NOT_DETECTED, "n.d.");
    marks.put(ValueKind.BELOW_DETECTION, "bdl");
    marks.put(ValueKind.TRACE, "tr.");
    marks.put(ValueKind.NOT_WEIGHED, "n.w.");
    marks.put(ValueKind.NOT_PRESERVED, "n.p.");
    marks.put(ValueKind.NOT_LOOKED_FOR, "n.l.");
    return marks;
  }

  /** The same in another language. */
  public Style in(Wording other) {
    return new Style(preset, decimalComma, other);
  }

  /** The text of a cell. */
  public String print(Cell cell) {
    if (cell.kind().isMissing()) {
      return preset == Preset.JOURNAL ? wording.apply(MARKS.get(cell.kind())) : words(cell.kind());
    }
    if (!cell.kind().isNumber()) {
      return cell.text();
    }
    String text = decimalComma ? POINT.matcher(cell.text()).replaceAll(",") : cell.text();
    return switch (preset) {
      case JOURNAL -> MINUS.matcher(text).replaceAll("−");
      case PLAIN -> text;
      case ACCESSIBLE -> spoken(text, cell.kind());
    };
  }

  private String spoken(String text, ValueKind kind) {
    String numbers = MINUS.matcher(text).replaceAll("−");
    return switch (kind) {
      case PLUS_MINUS -> numbers.replace(" ± ", " " + wording.apply("plus or minus") + " ");
      case RANGE -> numbers.replaceFirst("(?<=[0-9])–", " " + wording.apply("to") + " ");
      case AT_LEAST -> numbers.replace("≥", wording.apply("at least"));
      case AT_MOST -> numbers.replace("≤", wording.apply("at most"));
      case BELOW_LIMIT -> numbers.replace("<", wording.apply("below"));
      default -> numbers;
    };
  }

  private String words(ValueKind kind) {
    return wording.apply(switch (kind) {
      case NOT_ANALYSED -> "not analysed";
      case NOT_DETECTED -> "not detected";
      case BELOW_DETECTION -> "below a limit of detection that is not stated";
      default -> kind.word();
    });
  }

  /** What the marks in a table mean, in a fixed order; empty when it has none. */
  public List<String> legend(Table table) {
    if (preset != Preset.JOURNAL) {
      return List.of();
    }
    List<ValueKind> used = table.rows().stream().flatMap(List::stream).map(Cell::kind).filter(ValueKind::isMissing).distinct().toList();
    return MARKS.entrySet().stream().filter(m -> used.contains(m.getKey())).map(m -> wording.apply(m.getValue()) + " " + words(m.getKey())).toList();
  }

  /** All notes below a table: those that a cell refers to with their number, then the legend of the marks. */
  public List<String> notes(Table table) {
    List<String> notes = new ArrayList<>();
    for (int i = 0; i < table.notes().size(); i++) {
      notes.add(table.isMarked(i + 1) ? mark(i + 1) + " " + table.notes().get(i) : table.notes().get(i));
    }
    List<String> legend = legend(table);
    if (!legend.isEmpty()) {
      notes.add(String.join("; ", legend) + ".");
    }
    return notes;
  }

  /** A cell's text with the mark of its footnote after it. */
  public String printNoted(Cell cell) {
    return cell.note() == 0 ? print(cell) : print(cell) + " " + mark(cell.note());
  }

  /** The mark of a footnote. */
  public static String mark(int note) {
    return "[" + note + "]";
  }
}
