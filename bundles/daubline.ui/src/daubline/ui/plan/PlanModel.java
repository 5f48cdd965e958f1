package daubline.ui.plan;

import daubline.analysis.EntryOrigins;
import daubline.base.Finding;
import daubline.base.Trail;
import daubline.model.Series;
import daubline.ui.Words;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.Explanations;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridModel;
import daubline.ui.study.OpenStudy;
import java.util.List;
import java.util.Optional;

/** What a series is planned with, as a grid. */
final class PlanModel implements GridModel {

  private static final double[] SHARES = {1.75, 1.5, 0.85};
  private static final String[] HEADINGS = {"plan.what", "plan.value", "plan.more"};

  private final OpenStudy study;
  private final Series series;
  private List<PlanRow> rows;
  private List<Finding> findings = List.of();

  PlanModel(OpenStudy study, Series series) {
    this.study = study;
    this.series = series;
    rebuild();
  }

  void rebuild() {
    rows = PlanRows.of(study, series);
  }

  /** Findings that name a factor or a stock are shown at its row. */
  void findings(List<Finding> now) {
    findings = now;
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

  /** Rows stand in groups. */
  @Override
  public boolean isSortable() {
    return false;
  }

  @Override
  public void together(String label, Runnable steps) {
    study.session().edit(label, steps);
  }

  /** The factor's own variable, or what is to be known about the row, and then what the column holds. */
  @Override
  public List<Explanation> explain(int column, int row) {
    PlanRow r = rows.get(row);
    Explanation about = Explanations.column(key(column), heading(column));
    return r.variable() != null ? List.of(Explanations.variable(r.variable()), about)
        : r.group().isEmpty() ? List.of(Explanations.said(r.name(), r.tip()), about) : List.of(about);
  }

  @Override
  public double share(int column) {
    return SHARES[column];
  }

  PlanRow row(int row) {
    return rows.get(row);
  }

  @Override
  public Optional<Trail> origin(int column, int row) {
    PlanRow r = rows.get(row);
    return r.group().isEmpty() && !r.text().isEmpty() ? Optional.of(new EntryOrigins(study.session()).of(r.entry() == null ? series : r.entry(), r.name(), cell(column, row).text()))
        : Optional.empty();
  }

  @Override
  public GridCell cell(int column, int row) {
    PlanRow r = rows.get(row);
    if (!r.group().isEmpty()) {
      return GridCell.of(column == 0 ? r.group() : "", Look.GROUP);
    }
    GridCell cell = switch (column) {
      case 0 -> new GridCell(r.name(), Look.NAME, GridCell.Mark.NONE, r.tip());
      case 1 -> new GridCell(r.text(), r.put() == null ? Look.QUIET : Look.PLAIN, GridCell.Mark.NONE, r.tip());
      default -> r.putMore() == null ? GridCell.VOID : GridCell.of(r.more());
    };
    return column == 1 ? findings.stream().filter(f -> f.isError() && !r.text().isEmpty() && f.where().endsWith(r.name())).findFirst()
        .map(f -> cell.marked(GridCell.Mark.CHECK_NEEDED, Words.said(f))).orElse(cell) : cell;
  }

  @Override
  public boolean isEditable(int column, int row) {
    PlanRow r = rows.get(row);
    boolean open = !study.session().isReadOnly() && !series.isFrozen();
    return open && (column == 1 && r.put() != null || column == 2 && r.putMore() != null);
  }

  @Override
  public String editText(int column, int row) {
    return column == 1 ? rows.get(row).text() : rows.get(row).more();
  }

  @Override
  public List<String> choices(int column, int row) {
    return column == 1 ? rows.get(row).choices() : column == 2 ? rows.get(row).moreChoices() : List.of();
  }

  @Override
  public void put(int column, int row, String text) {
    PlanRow r = rows.get(row);
    (column == 1 ? r.put() : r.putMore()).accept(text);
  }
}
