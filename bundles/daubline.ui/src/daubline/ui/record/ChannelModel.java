package daubline.ui.record;

import daubline.base.Printed;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.base.Variable.Place;
import daubline.intake.logger.ChannelLayout;
import daubline.intake.logger.ChannelSeries;
import daubline.intake.logger.LoggerPreview;
import daubline.model.Study;
import daubline.session.StudyVariables;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What each column of a logger's file is taken for; variable and unit can be put right. */
final class ChannelModel implements GridModel {

  private static final String[] HEADINGS = {"logger.column", "logger.name", "logger.variable", "logger.unit", "logger.first", "logger.states"};
  private static final int FIRST = 3;

  private final Runnable changed;
  private final Map<String, String> said = new LinkedHashMap<>();
  private List<ChannelSeries> channels = List.of();
  private List<Variable> variables = List.of();

  ChannelModel(Runnable changed) {
    this.changed = changed;
  }

  void show(LoggerPreview preview, Study study) {
    channels = preview.series().map(s -> List.copyOf(s.channels())).orElse(List.of());
    variables = StudyVariables.of(study).at(Place.LOG).stream().map(Words::told).toList();
  }

  /** What was put right, as settings of the intake. */
  Map<String, String> said() {
    return said;
  }

  @Override
  public int columns() {
    return HEADINGS.length;
  }

  @Override
  public int rows() {
    return channels.size();
  }

  @Override
  public String heading(int column) {
    return Words.of(key(column));
  }

  @Override
  public String key(int column) {
    return HEADINGS[column];
  }

  @Override
  public double share(int column) {
    return column == 2 ? 1.6 : column == 0 ? 0.5 : 1;
  }

  @Override
  public GridCell cell(int column, int row) {
    ChannelSeries series = channels.get(row);
    ChannelLayout layout = series.layout();
    String text = switch (column) {
      case 0 -> String.valueOf(layout.column());
      case 1 -> layout.name();
      case 2 -> name(layout.variable());
      case 3 -> layout.unit().map(u -> u.symbol()).orElse(layout.unitText());
      case 4 -> first(series);
      default -> String.join(", ", series.states());
    };
    return text.isEmpty() && column == 2 ? GridCell.of(Words.of("logger.novariable"), Look.QUIET) : GridCell.of(text);
  }

  private String name(String id) {
    return variables.stream().filter(v -> v.id().equals(id)).map(Variable::name).findFirst().orElse(id);
  }

  private static String first(ChannelSeries series) {
    List<String> values = new ArrayList<>();
    int rows = series.values().length;
    for (int row = 0; row < rows && values.size() < FIRST; row++) {
      double value = series.value(row);
      values.add(Double.isNaN(value) ? series.state(row) : Printed.number(series.layout().unit().map(u -> u.fromCanonical(value)).orElse(value)));
    }
    return String.join("; ", values);
  }

  @Override
  public boolean isEditable(int column, int row) {
    return column == 2 || column == 3;
  }

  @Override
  public List<String> choices(int column, int row) {
    String id = channels.get(row).layout().variable();
    return switch (column) {
      case 2 -> variables.stream().map(Variable::name).toList();
      case 3 -> variables.stream().filter(v -> v.id().equals(id)).flatMap(v -> Units.of(v.quantity()).stream()).map(u -> u.symbol()).toList();
      default -> List.of();
    };
  }

  @Override
  public void put(int column, int row, String text) {
    ChannelLayout layout = channels.get(row).layout();
    String key = (column == 2 ? "column:" : "unit:") + layout.name();
    String value = column == 2 ? variables.stream().filter(v -> v.name().equalsIgnoreCase(text)).map(Variable::id).findFirst().orElse(text.isBlank() ? "-" : text) : text;
    said.remove(key);
    if (!value.isBlank()) {
      said.put(key, value);
    }
    changed.run();
  }
}
