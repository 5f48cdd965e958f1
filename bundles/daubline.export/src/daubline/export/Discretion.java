package daubline.export;

import daubline.analysis.record.PersonData;
import daubline.base.Trail;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Keeps the names of people who did not consent out of what is published: in the list of people, in free text and in
 * trails. Each stands as "Person" with their number in the study.
 */
public final class Discretion {

  private final Map<Pattern, String> hidden = new LinkedHashMap<>();

  /** For these people, in the order of the study; longer names are looked for first. */
  public Discretion(List<PersonData> people) {
    List<PersonData> unnamed = new ArrayList<>(people.stream().filter(p -> !p.mayPublishName() && !p.name().isBlank()).toList());
    unnamed.sort(Comparator.comparingInt((PersonData p) -> p.name().length()).reversed());
    for (PersonData person : unnamed) {
      hidden.put(Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(person.name().strip()) + "(?![\\p{L}\\p{N}])",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE), Matcher.quoteReplacement("Person " + (people.indexOf(person) + 1)));
    }
  }

  /** A text without the names. */
  public String text(String text) {
    String shown = text;
    for (Map.Entry<Pattern, String> name : hidden.entrySet()) {
      shown = name.getKey().matcher(shown).replaceAll(name.getValue());
    }
    return shown;
  }

  /** A table without the names. */
  public Table table(Table table) {
    return hidden.isEmpty() ? table : new Table(table.id(), table.title(), table.caption(), table.columns(),
        table.rows().stream().map(row -> row.stream().map(this::cell).toList()).toList(), table.notes().stream().map(this::text).toList());
  }

  private Cell cell(Cell cell) {
    return cell.text().isEmpty() ? cell : cell.reading(text(cell.text())).from(cell.trail() == null ? null : trail(cell.trail()));
  }

  private Trail trail(Trail trail) {
    return new Trail(text(trail.what()), text(trail.value()), trail.subject(), trail.from().stream().map(this::trail).toList());
  }
}
