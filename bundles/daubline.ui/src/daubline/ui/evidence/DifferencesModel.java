package daubline.ui.evidence;

import daubline.analysis.evidence.Difference;
import daubline.base.Trail;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.ui.Words;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.Explanations;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.ListModel;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Properties about which two reconstructions differ, the two side by side. */
final class DifferencesModel extends ListModel<Difference> {

  private Variables variables = Variables.standard();

  DifferencesModel() {
    super(new String[] {"column.property", "reconstructions.inFirst", "reconstructions.inSecond"}, new double[] {1.4, 2, 2});
  }

  void variables(Variables now) {
    variables = now;
  }

  /** The property of the row, and then what the column holds. */
  @Override
  public List<Explanation> explain(int column, int row) {
    return Stream.concat(variables.find(item(row).variable()).map(Explanations::variable).stream(), super.explain(column, row).stream()).toList();
  }

  @Override
  protected GridCell cell(int column, int row, Difference d) {
    return column == 0 ? GridCell.of(variables.find(d.variable()).map(Words::told).map(Variable::name).orElse(d.property()), Look.NAME) : side(d, column == 1);
  }

  @Override
  protected Optional<Trail> origin(int column, int row, Difference d) {
    List<Trail> from = Stream.concat(column == 2 ? Stream.empty() : d.first().stream(), column == 1 ? Stream.empty() : d.second().stream()).map(c -> c.trail()).toList();
    return from.size() == 1 ? Optional.of(from.get(0)) : from.isEmpty() ? Optional.empty() : Optional.of(new Trail(d.property(), "", "", from));
  }

  private GridCell side(Difference d, boolean first) {
    boolean none = (first ? d.first() : d.second()).isEmpty();
    String text = none ? Words.of("reconstructions.nothing") : Words.said(d.value(first, variables)) + " – " + Words.said(d.basis(first));
    return GridCell.of(text, none ? Look.QUIET : Look.PLAIN);
  }
}
