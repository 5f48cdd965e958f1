package daubline.intake;

import daubline.base.Finding;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.Variables;
import daubline.intake.raw.RawRow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.util.CellReference;

/** Recognises the columns of a table by their headings, and says what it does not know. */
final class ColumnBinder {

  private static final int SAID = 20;
  private static final String LEFT_OUT = "-";

  private final Form form;
  private final Variables variables;
  private final IntakeOptions options;
  private final String place;
  private final List<Finding> findings;
  private final List<String> unread = new ArrayList<>();
  private Map<Integer, String> units = Map.of();
  private int unknown;

  ColumnBinder(Form form, Variables variables, IntakeOptions options, String place, List<Finding> findings) {
    this.form = form;
    this.variables = variables;
    this.options = options;
    this.place = place;
    this.findings = findings;
  }

  /** The same, with units that stand in a row of their own, by place of the column. */
  ColumnBinder with(Map<Integer, String> stated) {
    units = stated;
    return this;
  }

  /** The headings that are not read. */
  List<String> unread() {
    return unread;
  }

  List<Bound> bind(RawRow header) {
    List<Bound> bound = new ArrayList<>();
    Map<String, String> seen = new HashMap<>();
    for (int i = 0; i < header.cells().size(); i++) {
      String text = header.cell(i).text();
      Optional<Bound> column = text.isEmpty() && !options.family("column").containsKey("#" + (i + 1)) ? Optional.empty() : bind(i, text);
      column.ifPresent(b -> {
        bound.add(b);
        String before = seen.put(b.column().id(), b.heading());
        if (before != null) {
          findings.add(Finding.error("column.twice", at(b.index(), b.heading()), "“" + before + "” and “" + b.heading()
              + "” are both read as “"
              + b.column().id() + "”", "rename one of them, or leave one unread by column:" + b.heading() + "=-"));
        }
      });
    }
    sayMore();
    refuseMissing(bound);
    return bound;
  }

  private Optional<Bound> bind(int index, String text) {
    Map<String, String> stated = options.family("column");
    String named = stated.getOrDefault(text, stated.getOrDefault("#" + (index + 1), text));
    if (named.equals(LEFT_OUT)) {
      unread.add(text);
      return Optional.empty();
    }
    Heading heading = Heading.of(named);
    Optional<FormColumn> column = form.column(heading, variables);
    if (column.isEmpty()) {
      sayUnknown(index, text, heading);
      return Optional.empty();
    }
    String own = heading.unit().isEmpty() ? Heading.of(text).unit() : heading.unit();
    String unit = own.isEmpty() ? units.getOrDefault(index, "") : own;
    return Optional.of(new Bound(index, text.isEmpty() ? "#" + (index + 1) : text, column.get(), unit(index, text, unit, column.get()),
        unit.isEmpty() && options.family("unit").containsKey("*") ? "*" : unit));
  }

  private Unit unit(int index, String text, String inHeading, FormColumn column) {
    if (column.unit().isEmpty()) {
      return null;
    }
    Map<String, String> stated = options.family("unit");
    String typed = Optional.ofNullable(stated.getOrDefault(text, stated.get(column.id()))).orElse(inHeading.isEmpty()
        ? stated.getOrDefault("*", "") : inHeading);
    Optional<Unit> unit = typed.isEmpty() ? column.unit() : Units.find(column.variable().quantity(), typed);
    if (unit.isEmpty()) {
      List<String> known = Units.of(column.variable().quantity()).stream().map(Unit::symbol).filter(s -> !s.isEmpty()).toList();
      findings.add(Finding.error("unit.unknown", at(index, text), "“" + typed + "” is no unit of " + column.id(),
          "use one of: " + String.join(", ", known) + "; or state it by unit:" + text + "=…"));
    }
    return unit.orElseGet(() -> column.unit().get());
  }

  private void sayUnknown(int index, String text, Heading heading) {
    unread.add(text);
    unknown++;
    if (unknown <= SAID) {
      List<String> names = form.columns(variables).stream().map(FormColumn::id).toList();
      String otherwise = "rename it, or say what it is by column:" + text + "=…; as it stands, it is not read";
      findings.add(Finding.warning("column.unknown", at(index, text), "the form “" + form.target().word()
          + "” has no column “" + heading.name() + "”",
          form.hint(heading, variables).orElseGet(() -> Nearest.remedy(heading.name(), names, otherwise))));
    }
  }

  private void sayMore() {
    if (unknown > SAID) {
      findings.add(Finding.warning("column.unknown", place, (unknown - SAID) + " more columns are unknown and not read",
          "the preview lists all of them; check that this is the right sheet and form"));
    }
  }

  private void refuseMissing(List<Bound> bound) {
    Map<String, String> set = options.family("set");
    for (FormColumn column : form.columns(variables)) {
      boolean there = bound.stream().anyMatch(b -> b.column().id().equals(column.id()))
          || set.keySet().stream().anyMatch(k -> Heading.key(k).equals(Heading.key(column.id())));
      if (column.required() && !there) {
        findings.add(Finding.error("column.missing", place, "the column “" + column.id() + "” is missing: " + column.meaning(),
            Nearest.to(column.id(), unread).map(u -> "is it “" + u + "”? Rename it or say column:" + u + "=" + column.id())
            .orElse(
                "add it, or give one text for all rows by set:" + column.id() + "=…")));
      }
    }
  }

  /** Says which columns hold something without a heading: their cells would get lost unseen. */
  void sayFilledColumnsWithoutHeading(RawRow header, List<RawRow> rows) {
    int width = rows.stream().mapToInt(r -> r.cells().size()).max().orElse(0);
    for (int i = 0; i < width; i++) {
      int column = i;
      if (header.cell(i).isEmpty() && !options.family("column").containsKey("#" + (i + 1)) && rows.stream().anyMatch(r -> !r.cell(column).isEmpty())) {
        unread.add("column " + name(i));
        findings.add(Finding.warning("column.unnamed", at(i, ""), "the column holds values, but has no heading",
            "give it a heading; as it stands, it is not read"));
      }
    }
  }

  private String at(int index, String heading) {
    return place + ", column " + name(index) + (heading.isEmpty() ? "" : " (" + heading + ")");
  }

  private String name(int index) {
    return place.contains(", sheet “") ? CellReference.convertNumToColString(index) : String.valueOf(index + 1);
  }
}
