package daubline.record;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The kinds of entries of a run log, each with one key on the day of the fire. */
public enum EventKind {
  /** Ore and fuel together. */
  CHARGE('C', "charge"),
  /** Ore alone. */
  ORE('O', "charge"),
  /** Fuel alone. */
  FUEL('F', "charge"),
  /** Strokes, flow or pressure. */
  BLAST('B', "blast"),
  /** Temperatures of several probes in one line. */
  TEMPERATURE('T', "temperature"),
  /** How far the burden stands below the rim. */
  LEVEL('V', "level"),
  /** Slag let out. */
  TAP('S', "tap"),
  /** Flame, smoke, sound, the view through the inlet. */
  LOOK('L', "look"),
  /** A phase begins: lit, preheat, first ore, last ore, burn-down, extraction. */
  PHASE('H', "phase"),
  /** Something went wrong. */
  INCIDENT('I', "incident"),
  /** People change over. */
  RELIEF('R', "relief"),
  /** A picture was taken. */
  PHOTOGRAPH('P', "photograph"),
  /** Anything else. */
  NOTE('N', "note"),
  /** A step of the extraction. */
  EXTRACTION('X', "extraction"),
  /** A moment to be described later. */
  MARK(' ', "mark");

  private final char key;
  private final String word;

  EventKind(char key, String word) {
    this.key = key;
    this.word = word;
  }

  /** Its key on the day of the fire, a capital letter or the space bar. */
  public char key() {
    return key;
  }

  /** The word that the study keeps. */
  public String word() {
    return word;
  }

  /** The kind that a key stands for. */
  public static Optional<EventKind> ofKey(char typed) {
    return Arrays.stream(values()).filter(k -> k.key == Character.toUpperCase(typed)).findFirst();
  }

  /** The kind of a stored word; the first of several with the same. */
  public static Optional<EventKind> ofWord(String word) {
    String wanted = word == null ? "" : word.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(k -> k.word.equals(wanted) || k == PHOTOGRAPH && wanted.equals("photo")).findFirst();
  }

  /** One kind a stored word, as paper has them. */
  public static List<EventKind> distinct() {
    return Arrays.stream(values()).filter(k -> k != ORE && k != FUEL).toList();
  }
}
