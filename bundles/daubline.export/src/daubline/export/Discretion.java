package daubline.export;

import daubline.analysis.deposit.HiddenNames;
import daubline.analysis.record.CitationData;
import daubline.analysis.record.PersonData;
import daubline.base.Trail;
import java.util.List;

/**
 * Keeps the names of people who did not consent out of what is published: in the list of people, in free text and in
 * trails. Each stands as "Person" with their number in the study.
 */
public final class Discretion {

  private final HiddenNames hidden;

  /** For these people, in the order of the study. */
  public Discretion(List<PersonData> people) {
    hidden = new HiddenNames(people.stream().map(p -> p.mayPublishName() ? "" : p.name()).toList(),
        people.stream().map(p -> p.mayPublishName() ? "" : p.id()).toList());
  }

  /** For names that are known already. */
  public Discretion(HiddenNames hidden) {
    this.hidden = hidden;
  }

  /** Whether there is anybody who must not be named. */
  public boolean isNeeded() {
    return !hidden.isEmpty();
  }

  /** Whether a text holds a name that must not be published. */
  public boolean names(String text) {
    return hidden.isIn(text);
  }

  /** A text without the names. */
  public String text(String text) {
    return hidden.replaced(text);
  }

  /** Citations without the names: somebody may have written a report of the study itself. */
  public List<CitationData> citations(List<CitationData> citations) {
    return citations.stream().map(c -> new CitationData(c.id(), text(c.authors()), c.year(), text(c.title()), text(c.container()), c.volume(), c.pages(),
        text(c.publisher()), c.doi(), c.url(), text(c.editors()), c.issue(), c.place(), c.isbn(), c.kind(), text(c.note()))).toList();
  }

  /** A table without the names. */
  public Table table(Table table) {
    return hidden.isEmpty() ? table : new Table(table.id(), text(table.title()), text(table.caption()), table.columns().stream().map(this::column).toList(),
        table.rows().stream().map(row -> row.stream().map(this::cell).toList()).toList(), table.notes().stream().map(this::text).toList());
  }

  private Column column(Column c) {
    return new Column(c.id(), text(c.heading()), c.unit(), c.kind());
  }

  private Cell cell(Cell cell) {
    return cell.text().isEmpty() && cell.trail() == null ? cell : cell.reading(text(cell.text())).from(cell.trail() == null ? null : trail(cell.trail()));
  }

  private Trail trail(Trail trail) {
    return new Trail(text(trail.what()), text(trail.value()), text(trail.subject()), trail.from().stream().map(this::trail).toList());
  }
}
