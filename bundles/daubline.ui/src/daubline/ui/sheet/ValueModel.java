package daubline.ui.sheet;

import daubline.analysis.EntryOrigins;
import daubline.base.Amount;
import daubline.base.EnteredText;
import daubline.base.Finding;
import daubline.base.Plausibility;
import daubline.base.Trail;
import daubline.base.Units;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.engine.inference.CriterionResult;
import daubline.model.Reading;
import daubline.session.Readings;
import daubline.session.StudyVariables;
import daubline.ui.Words;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.Explanations;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.grid.GridModel;
import daubline.ui.look.MarkShape;
import daubline.ui.prefs.Preferred;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The values of one object as a grid: variables in groups down, columns of values across; contradictory values under each other. */
final class ValueModel implements GridModel {

  /** One line: the heading of a group (variable null) or the n-th value of a variable. */
  record Line(String group, Variable variable, int number) {
  }

  private record Place(Variable variable, int number, int column) {
  }

  private record Refused(String text, Finding finding) {
  }

  private final OpenStudy study;
  private final List<ValueColumn> columns;
  private final Map<Place, Refused> refused = new HashMap<>();
  private List<Line> lines = List.of();
  private Function<Variable, Optional<CriterionResult>> verdicts = v -> Optional.empty();
  private String wanted = "";
  private boolean onlyFilled;

  ValueModel(OpenStudy study, List<ValueColumn> columns) {
    this.study = study;
    this.columns = columns;
    rebuild();
  }

  /** Shows only lines whose variable contains a text, or only those with a value. */
  void filter(String text, boolean filled) {
    wanted = text.strip().toLowerCase(Locale.ROOT);
    onlyFilled = filled;
    rebuild();
  }

  /** Where the verdict about a variable comes from, for the column of evidence. */
  void verdicts(Function<Variable, Optional<CriterionResult>> source) {
    verdicts = source;
  }

  /** Reads the lines from the model again. */
  void rebuild() {
    Map<String, List<Line>> groups = new LinkedHashMap<>();
    for (Variable kept : StudyVariables.of(study.session().study()).all()) {
      Variable variable = Words.told(kept);
      int most = columns.stream().mapToInt(c -> c.readings().apply(variable).size()).max().orElse(0);
      boolean shown = (most > 0 || !onlyFilled && columns.stream().anyMatch(c -> c.isWritten() && c.isAsked().test(variable)))
          && (variable.name() + " " + variable.group() + " " + kept.name() + " " + kept.group()).toLowerCase(Locale.ROOT).contains(wanted);
      for (int i = 0; shown && i < Math.max(1, most); i++) {
        groups.computeIfAbsent(variable.group(), g -> new ArrayList<>()).add(new Line(variable.group(), variable, i));
      }
    }
    List<Line> all = new ArrayList<>();
    groups.forEach((group, content) -> {
      all.add(new Line(group, null, 0));
      all.addAll(content);
    });
    lines = all;
  }

  /** The line of a row. */
  Optional<Line> line(int row) {
    return row >= 0 && row < lines.size() ? Optional.of(lines.get(row)) : Optional.empty();
  }

  /** The row of a variable's n-th value; -1 when it is not shown. */
  int row(String variable, int number) {
    for (int row = 0; row < lines.size(); row++) {
      Line line = lines.get(row);
      if (line.variable() != null && line.variable().id().equals(variable) && line.number() == number) {
        return row;
      }
    }
    return -1;
  }

  /** The value in a cell. */
  Optional<Reading> reading(int column, int row) {
    Line line = lines.get(row);
    if (column == 0 || line.variable() == null) {
      return Optional.empty();
    }
    List<? extends Reading> readings = columns.get(column - 1).readings().apply(line.variable());
    return line.number() < readings.size() ? Optional.of(readings.get(line.number())) : Optional.empty();
  }

  /** Where a value stands, as column and row; empty when no line shows it. */
  Optional<int[]> find(Reading reading) {
    for (int row = 0; row < lines.size(); row++) {
      for (int column = 1; column <= columns.size(); column++) {
        if (reading(column, row).filter(r -> r == reading).isPresent()) {
          return Optional.of(new int[] {column, row});
        }
      }
    }
    return Optional.empty();
  }

  /** What is wrong with a cell: what was typed and not understood, or a value that is implausible. */
  Optional<Finding> finding(int column, int row) {
    Line line = lines.get(row);
    if (column == 0 || line.variable() == null) {
      return Optional.empty();
    }
    Refused no = refused.get(place(column, line));
    return no != null ? Optional.of(no.finding()) : reading(column, row).flatMap(r -> odd(r, line.variable()));
  }

  private static Optional<Finding> odd(Reading reading, Variable variable) {
    Amount amount = Readings.amount(reading);
    return Plausibility.check(variable, amount, Units.find(variable.quantity(), Shown.text(reading.getUnit())).orElse(variable.unit()));
  }

  private static Place place(int column, Line line) {
    return new Place(line.variable(), line.number(), column);
  }

  @Override
  public int columns() {
    return columns.size() + 1;
  }

  @Override
  public int rows() {
    return lines.size();
  }

  @Override
  public String heading(int column) {
    return Words.of(key(column));
  }

  @Override
  public String key(int column) {
    return column == 0 ? "column.property" : columns.get(column - 1).key();
  }

  /** Rows stand in groups. */
  @Override
  public boolean isSortable() {
    return false;
  }

  @Override
  public void together(String label, Runnable steps) {
    study.session().edit(label, steps);
  }

  @Override
  public List<Explanation> explain(int column, int row) {
    Explanation about = Explanations.column(key(column), heading(column));
    return line(row).map(Line::variable).map(v -> List.of(Explanations.variable(v), about)).orElse(List.of(about));
  }

  @Override
  public Optional<Trail> origin(int column, int row) {
    return reading(column, row).map(r -> new EntryOrigins(study.session()).of(r));
  }

  @Override
  public double share(int column) {
    return column == 0 ? Forms.nameShare() : columns.get(column - 1).share();
  }

  @Override
  public String widest(int column) {
    return column == 0 ? Forms.NAME_SHOWN : columns.get(column - 1).widest();
  }

  @Override
  public GridCell cell(int column, int row) {
    Line line = lines.get(row);
    if (line.variable() == null) {
      return GridCell.of(column == 0 ? line.group() : "", Look.GROUP);
    }
    if (column == 0) {
      return new GridCell(line.number() == 0 ? line.variable().name() : "", Look.NAME, Mark.NONE, line.number() == 0 ? about(line.variable()) : "");
    }
    return value(column, row, line);
  }

  private static String about(Variable variable) {
    String unit = variable.unit().symbol().isEmpty() ? "" : Words.of("tip.unit", variable.unit().symbol());
    return String.join("\n", java.util.stream.Stream.of(variable.meaning(), unit, Words.said(variable.source())).filter(s -> s != null && !s.isBlank()).toList());
  }

  private GridCell value(int column, int row, Line line) {
    ValueColumn source = columns.get(column - 1);
    Refused no = refused.get(place(column, line));
    if (no != null) {
      return new GridCell(no.text(), Look.REFUSED, Mark.CHECK_NEEDED, Words.said(no.finding()));
    }
    Optional<Reading> reading = reading(column, row);
    if (reading.isEmpty()) {
      return source.isWritten() && !source.isAsked().test(line.variable()) ? GridCell.VOID : GridCell.EMPTY;
    }
    String text = LowerLimits.shown(source.print().apply(reading.get(), line.variable()), reading.get(), line.variable());
    Look look = Readings.amount(reading.get()).isMissing() ? Look.QUIET : isGuess(reading.get()) ? Look.GUESS : Look.PLAIN;
    GridCell cell = new GridCell(text, look, Mark.NONE, Shown.origin(reading.get()));
    if (source.key().equals(Forms.EVIDENCE)) {
      return verdicts.apply(line.variable()).map(r -> cell.marked(MarkShape.of(r.verdict()), Words.of(r.verdict()) + ": " + Words.said(r.reason()))).orElse(cell);
    }
    return source.isWritten() ? odd(reading.get(), line.variable()).map(f -> cell.marked(Mark.CHECK_NEEDED, Words.said(f))).orElse(cell) : cell;
  }

  private static boolean isGuess(Reading reading) {
    return reading instanceof daubline.model.Choice choice && choice.getBasis() == daubline.base.Basis.GUESS;
  }

  @Override
  public boolean isEditable(int column, int row) {
    Line line = lines.get(row);
    return column > 0 && line.variable() != null && columns.get(column - 1).isWritten() && !study.session().isReadOnly()
        && (columns.get(column - 1).isAsked().test(line.variable()) || reading(column, row).isPresent());
  }

  @Override
  public String editText(int column, int row) {
    Line line = lines.get(row);
    Refused no = line.variable() == null ? null : refused.get(place(column, line));
    return no != null ? no.text() : reading(column, row).map(r -> Shown.editable(r, line.variable())).orElse("");
  }

  @Override
  public List<String> choices(int column, int row) {
    Variable variable = lines.get(row).variable();
    if (column == 0 || variable == null || !columns.get(column - 1).isWritten()) {
      return List.of();
    }
    return switch (variable.type()) {
      case CATEGORY -> variable.words().stream().map(w -> Words.word(variable, w)).toList();
      case YES_NO -> List.of("present", "absent", "not preserved", "not looked for", "not recorded");
      default -> List.of();
    };
  }

  @Override
  public void put(int column, int row, String text) {
    Line line = lines.get(row);
    refused.remove(place(column, line));
    Optional<Finding> complaint = text.isBlank() ? remove(column, row, line) : set(column, row, line, text);
    complaint.ifPresent(f -> refused.put(place(column, line), new Refused(text, f)));
  }

  private Optional<Finding> remove(int column, int row, Line line) {
    reading(column, row).ifPresent(r -> study.edit("change.remove", line.variable().name(), () -> EcoreUtil.delete(r, true)));
    return Optional.empty();
  }

  private Optional<Finding> set(int column, int row, Line line, String text) {
    Variable variable = line.variable();
    EnteredText parts = variable.type() == ValueType.NUMBER ? EnteredText.split(Shown.plainWord(text), variable.quantity())
        : new EnteredText(Words.kept(variable, Shown.plainWord(text)), "");
    Optional<Reading> old = reading(column, row);
    Optional<Finding> complaint = Readings.put(daubline.model.ModelFactory.eINSTANCE.createReading(), variable, parts.value(), parts.unit(), Preferred.decimal());
    if (complaint.isEmpty()) {
      study.edit("change.value", variable.name() + ", " + heading(column), () -> Readings.put(old.orElseGet(() -> columns.get(column - 1).create().apply(variable)),
          variable, parts.value(), parts.unit(), Preferred.decimal()));
    }
    return complaint;
  }

  /** Adds a second statement about the variable of a row; it begins as not recorded and is to be typed over. */
  void addBeside(int column, int row) {
    Variable variable = lines.get(row).variable();
    study.edit("change.beside", variable.name(), () -> {
      Reading added = columns.get(column - 1).create().apply(variable);
      added.setVariable(variable.id());
      Readings.put(added, Amount.of(daubline.base.ValueKind.NOT_RECORDED));
    });
  }
}
