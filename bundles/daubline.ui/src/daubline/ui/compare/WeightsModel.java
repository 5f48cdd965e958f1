package daubline.ui.compare;

import daubline.analysis.EntryOrigins;
import daubline.analysis.SettingEditor;
import daubline.base.DecimalSign;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.criteria.Criteria;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.Group;
import daubline.engine.inference.Setting;
import daubline.ui.Words;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.Explanations;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.grid.GridModel;
import daubline.ui.prefs.Preferred;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Weights and tolerances of the comparison: the value in use, the standard one, unit and source; value and source are typed. */
final class WeightsModel implements GridModel {

  private static final int VALUE = 1;
  private static final int SOURCE = 4;
  private static final String[] HEADINGS = {"weights.setting", "weights.value", "weights.standard", "weights.unit", "weights.source"};
  private static final double[] SHARES = {2.6, 1.1, 1.1, 0.7, 2.6};

  /** A row: a heading when it has no key. */
  private record Row(String key, String name) {
  }

  private final Consumer<String> complain;
  private List<Row> rows = List.of();
  private OpenStudy study;

  /** @param complain told what could not be understood, or an empty text */
  WeightsModel(Consumer<String> complain) {
    this.complain = complain;
  }

  /** Shows the settings of a study; none when null. */
  void show(OpenStudy now, boolean onlyKept) {
    study = now;
    rows = now == null ? List.of() : all().stream().filter(r -> !onlyKept || r.key().isEmpty() || kept(r).isPresent()).toList();
  }

  /** All settings under headings: the comparison's own, the groups, then each group with its criteria. */
  private static List<Row> all() {
    List<Row> rows = new ArrayList<>();
    rows.add(new Row("", Words.of("weights.comparison")));
    Map<String, Setting> known = SettingEditor.known();
    known.keySet().stream().filter(k -> k.startsWith("comparison.")).forEach(k -> rows.add(new Row(k, Words.said(known.get(k).name()))));
    for (Group group : Group.values()) {
      rows.add(new Row("", Words.of(group)));
      String weight = "weight.group." + group.name().toLowerCase(Locale.ROOT);
      rows.add(new Row(weight, Words.of("weights.group", Words.of(group))));
      for (Criterion criterion : Criteria.all().stream().filter(c -> c.group() == group).toList()) {
        rows.add(new Row("weight." + criterion.id(), Words.said(criterion.name()) + ": " + Words.of("weights.weight")));
        criterion.settings().forEach(s -> rows.add(new Row("criterion." + criterion.id() + "." + s.key(), Words.said(criterion.name()) + ": " + Words.said(s.name()))));
      }
    }
    return rows;
  }

  private SettingEditor editor() {
    return new SettingEditor(study.session());
  }

  private Optional<SettingEditor.Kept> kept(Row row) {
    return editor().kept(row.key());
  }

  private static Setting setting(Row row) {
    return SettingEditor.known().get(row.key());
  }

  /** The key of the setting in a row; empty in a heading. */
  private String setting(int row) {
    return rows.get(row).key();
  }

  /** The row of a setting. */
  Optional<Integer> row(String key) {
    return rows.stream().filter(r -> r.key().equals(key)).findFirst().map(rows::indexOf);
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
  public int columns() {
    return HEADINGS.length;
  }

  @Override
  public int rows() {
    return rows.size();
  }

  @Override
  public String heading(int column) {
    return Words.of(key(column));
  }

  @Override
  public String key(int column) {
    return HEADINGS[column];
  }

  /** What the criterion of the row compares, and then what the column holds. */
  @Override
  public List<Explanation> explain(int column, int row) {
    Explanation about = Explanations.column(key(column), heading(column));
    Setting setting = SettingEditor.known().get(setting(row));
    return Stream.of(criterion(setting(row)).map(Explanations::criterion), Optional.ofNullable(setting).map(s -> Explanations.said(Words.said(s.name()), Words.said(s.meaning()) + " " + Words.said(s.source().text()))), Optional.of(about))
        .flatMap(Optional::stream).toList();
  }

  private static Optional<Criterion> criterion(String key) {
    String[] parts = key.split("\\.");
    return parts.length < 2 ? Optional.empty() : Criteria.find(parts[1]);
  }

  @Override
  public double share(int column) {
    return SHARES[column];
  }

  @Override
  public String widest(int column) {
    return column == 0 || column == SOURCE ? "Air inlet height above slag floor: weight" : heading(column);
  }

  @Override
  public GridCell cell(int column, int row) {
    Row r = rows.get(row);
    if (r.key().isEmpty()) {
      return GridCell.of(column == 0 ? r.name() : "", Look.GROUP);
    }
    Setting setting = setting(r);
    Optional<SettingEditor.Kept> kept = kept(r);
    return switch (column) {
      case 0 -> new GridCell(r.name(), Look.NAME, Mark.NONE, Words.said(setting.meaning()));
      case VALUE -> value(setting, kept);
      case 2 -> GridCell.of(text(setting, setting.standard()).orElse(""), setting.isNumber() ? Look.NUMBER : Look.PLAIN);
      case 3 -> GridCell.of(setting.unit().map(u -> u.symbol()).orElse(""), Look.QUIET);
      default -> source(setting, kept);
    };
  }

  /** The kept setting with who says so, or the source of the standard. */
  @Override
  public Optional<Trail> origin(int column, int row) {
    Row r = rows.get(row);
    if (r.key().isEmpty()) {
      return Optional.empty();
    }
    Trail standard = Trail.of("standard value", text(setting(r), setting(r).standard()).orElse("") + setting(r).unit().map(u -> " " + u.symbol()).orElse(""),
        Trail.of("source", setting(r).source().toString()));
    List<Trail> from = new ArrayList<>(study.session().study().getSettings().stream().filter(s -> r.key().equals(s.getKey()))
        .map(s -> new EntryOrigins(study.session()).of(s, "kept in the study", cell(VALUE, row).text())).toList());
    from.add(standard);
    return Optional.of(new Trail(r.name(), cell(VALUE, row).text(), "", from));
  }

  private static GridCell value(Setting setting, Optional<SettingEditor.Kept> kept) {
    Look look = setting.isNumber() ? Look.NUMBER : Look.PLAIN;
    if (kept.isEmpty()) {
      return new GridCell(text(setting, setting.standard()).orElse(""), look, Mark.NONE, Words.of("weights.isstandard"));
    }
    return text(setting, kept.get().value()).map(t -> new GridCell(t, look, Mark.CHECK_NEEDED, Words.of("weights.iskept")))
        .orElseGet(() -> new GridCell(kept.get().value(), Look.REFUSED, Mark.CHECK_NEEDED, Words.of("weights.unread")));
  }

  private static GridCell source(Setting setting, Optional<SettingEditor.Kept> kept) {
    String text = kept.map(k -> k.source().isEmpty() ? Words.of("weights.nosource") : k.source()).orElse(Words.said(setting.source().toString()));
    return new GridCell(text, kept.isPresent() && !kept.get().source().isEmpty() ? Look.PLAIN : Look.QUIET, Mark.NONE, text);
  }

  /** A value in the unit shown, with the decimal sign of the person; empty when it cannot be read. */
  private static Optional<String> text(Setting setting, String value) {
    try {
      return Optional.of(setting.unit().map(u -> Preferred.sign(Printed.number(u.differenceFromCanonical(Double.parseDouble(value))))).orElse(value));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  @Override
  public boolean isEditable(int column, int row) {
    Row r = rows.get(row);
    return !r.key().isEmpty() && !study.session().isReadOnly() && (column == VALUE || column == SOURCE && kept(r).isPresent());
  }

  @Override
  public String editText(int column, int row) {
    return column == SOURCE ? kept(rows.get(row)).map(SettingEditor.Kept::source).orElse("") : cell(column, row).text();
  }

  @Override
  public void put(int column, int row, String typed) {
    Row r = rows.get(row);
    if (!isEditable(column, row) || typed.equals(editText(column, row))) {
      return;
    }
    complain.accept("");
    try {
      if (column == SOURCE) {
        editor().source(Words.of("weights.change.source", r.name()), r.key(), typed);
      } else if (typed.isBlank()) {
        reset(row);
      } else {
        boolean comma = setting(r).isNumber() && Preferred.decimal() == DecimalSign.COMMA;
        editor().set(Words.of("weights.change", r.name()), List.of(new SettingEditor.Entry(r.key(), comma ? typed.replace(',', '.') : typed, "")));
      }
    } catch (IllegalArgumentException e) {
      complain.accept(r.name() + ": " + e.getMessage());
    }
  }

  /** Goes back to the standard value. */
  void reset(int row) {
    Row r = rows.get(row);
    if (!r.key().isEmpty() && !study.session().isReadOnly()) {
      editor().reset(Words.of("weights.reset", r.name()), r.key());
    }
  }
}
