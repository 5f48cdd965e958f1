package daubline.analysis.deposit;

import java.util.List;
import java.util.Optional;

/**
 * The objects of one class, one a row.
 *
 * @param name the name of the table: lower case with hyphens
 * @param fields its columns; the first four are id, held_by, held_as and held_at
 * @param rows the cells, as many as there are fields; an empty text stands for no value
 */
public record Rows(String name, List<Field> fields, List<List<String>> rows) {

  /** The column of ids. */
  public static final String ID = "id";
  /** The column with the id of the object that holds this one. */
  public static final String CONTAINER = "held_by";
  /** The column with the part that this object plays there. */
  public static final String ROLE = "held_as";
  /** The column with its place among those of the same role, from 0. */
  public static final String POSITION = "held_at";
  /** Between ids where an object refers to several. */
  public static final String SEPARATOR = " ";

  /** What the cells of a column hold. */
  public enum Type {
    /** Any text. */
    STRING,
    /** A number with a point. */
    NUMBER,
    /** A whole number. */
    INTEGER,
    /** true or false. */
    BOOLEAN,
    /** One of a list of words. */
    WORD,
    /** The id of another object. */
    REFERENCE,
    /** Ids of other objects, separated by spaces. */
    REFERENCES
  }

  /**
   * One column.
   *
   * @param name its name
   * @param type what its cells hold
   * @param words the words allowed, where it is a list of words
   * @param target the table that a reference leads to; empty when it leads to several
   */
  public record Field(String name, Type type, List<String> words, String target) {

    public Field {
      words = List.copyOf(words);
    }
  }

  public Rows {
    fields = List.copyOf(fields);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** The place of a column. */
  public Optional<Integer> column(String field) {
    for (int i = 0; i < fields.size(); i++) {
      if (fields.get(i).name().equals(field)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** The cells of one column. */
  public List<String> cells(int column) {
    return rows.stream().map(row -> row.get(column)).toList();
  }
}
