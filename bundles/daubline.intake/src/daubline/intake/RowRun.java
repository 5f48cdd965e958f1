package daubline.intake;

import daubline.base.Finding;
import daubline.intake.PreviewRow.State;
import daubline.intake.raw.RawRow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes the rows of a table into a draft, one after the other. */
final class RowRun {

  private final Form form;
  private final Table table;
  private final Draft draft;
  private final Map<String, Row> seen = new HashMap<>();

  RowRun(Form form, Table table, Draft draft) {
    this.form = form;
    this.table = table;
    this.draft = draft;
  }

  List<PreviewRow> run() {
    List<PreviewRow> rows = new ArrayList<>();
    for (RawRow raw : table.rows()) {
      rows.add(row(new Row(table, raw)));
    }
    return rows;
  }

  private PreviewRow row(Row row) {
    draft.nextRow();
    Row before = seen.putIfAbsent(form.key(row), row);
    if (before == null) {
      form.write(row, draft);
    } else {
      sayDuplicate(row, before);
    }
    List<String> changes = List.copyOf(draft.tally().changes());
    return new PreviewRow(row.number(), state(row, changes), name(row), changes, List.copyOf(row.findings()));
  }

  private static void sayDuplicate(Row row, Row before) {
    if (row.texts().equals(before.texts())) {
      row.report(Finding.warning("row.duplicate", row.place(), "the row stands already in row " + before.number(),
          "it is passed over; delete one of the two"));
    } else {
      row.report(Finding.error("row.duplicate", row.place(), "the row speaks of the same thing as row " + before.number()
          + ", but says something else",
          "keep the right one, or tell them apart by name, time, page or id"));
    }
  }

  private State state(Row row, List<String> changes) {
    if (row.isFaulty()) {
      return State.FAULTY;
    }
    return draft.tally().isAdded() ? State.ADDED : changes.isEmpty() ? State.UNCHANGED : State.UPDATED;
  }

  private String name(Row row) {
    return row.texts().stream().filter(t -> !t.isEmpty()).limit(4).collect(Collectors.joining(" · "));
  }
}
