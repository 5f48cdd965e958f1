package daubline.ui.sheet;

import daubline.analysis.balance.SlagSources;
import daubline.analysis.balance.TrialBalance;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.process.balance.ElementBalance;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.grid.ListModel;
import daubline.ui.prefs.Preferred;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The three tables of the balance of a trial. */
final class BalanceModels {

  private BalanceModels() {
  }

  private static GridCell number(double value, int decimals) {
    return GridCell.of(Preferred.sign(Printed.fixed(value, decimals)), Look.NUMBER);
  }

  /** A table of the balance, which knows what the trial's numbers rest on. */
  abstract static class Model<T> extends ListModel<T> {

    private List<Trail> rests = List.of();

    Model(String[] headings, double[] shares) {
      super(headings, shares);
    }

    void show(List<T> now, List<Trail> restsOn) {
      rests = restsOn;
      show(now);
    }

    /** What a row says is worked out, and of what. */
    abstract String how(T item);

    /** What a row was added up of; empty where it was not. */
    List<Trail> parts(T item) {
      return List.of();
    }

    @Override
    protected Optional<Trail> origin(int column, int row, T item) {
      List<Trail> from = new ArrayList<>(parts(item));
      from.addAll(rests);
      return Optional.of(Trail.reckoned(cell(0, row).text() + ", " + heading(column), cell(column, row).text(), how(item), from));
    }
  }

  /** What went in of each element, was found again and is left over. */
  static final class ElementsModel extends Model<ElementBalance> {

    @Override
    String how(ElementBalance e) {
      return "remainder = in − found, its standard uncertainty from those of the masses and shares";
    }

    @Override
    List<Trail> parts(ElementBalance e) {
      return Stream.concat(e.sources().stream().map(s -> part("in with " + s.what(), s)), e.finds().stream().map(s -> part("found in " + s.what(), s))).toList();
    }

    private static Trail part(String what, ElementBalance.Entry s) {
      return Trail.of(what, Printed.fixed(s.amount(), 3) + " kg = " + Printed.fixed(s.mass(), 3) + " kg × " + Printed.number(s.share(), 4));
    }

    ElementsModel() {
      super(new String[] {"balance.element", "balance.in", "balance.found", "balance.left", "balance.sigma", "balance.verdict"}, new double[] {1, 1, 1, 1, 1, 2});
    }

    @Override
    protected GridCell cell(int column, int row, ElementBalance e) {
      return switch (column) {
        case 0 -> GridCell.of(e.element());
        case 1 -> number(e.in(), 3);
        case 2 -> number(e.out(), 3);
        case 3 -> number(e.remainder(), 3);
        case 4 -> number(e.sigma(), 3);
        default -> new GridCell(Words.of(e.closes() ? "balance.closes" : "balance.open"), Look.PLAIN, e.closes() ? Mark.NONE : Mark.CHECK_NEEDED, "");
      };
    }
  }

  /** A source of the slag with what it gave to a kilogram of it. */
  record Share(String source, double amount, double low, double high) {

    static List<Share> of(SlagSources s) {
      List<Share> shares = new ArrayList<>();
      for (int i = 0; i < s.sources().size(); i++) {
        shares.add(new Share(s.sources().get(i).name(), s.fit().amounts().get(i), s.spread().low().get(i), s.spread().high().get(i)));
      }
      return shares;
    }
  }

  /** Where the slag came from. */
  static final class SourcesModel extends Model<Share> {

    @Override
    String how(Share s) {
      return "non-negative weighted least squares over the oxides that are not reduced; 5–95 % of draws";
    }

    SourcesModel() {
      super(new String[] {"balance.source", "balance.share", "balance.low", "balance.high"}, new double[] {2, 1, 1, 1});
    }

    @Override
    protected GridCell cell(int column, int row, Share s) {
      return switch (column) {
        case 0 -> GridCell.of(Words.said(s.source()));
        case 1 -> number(s.amount(), 3);
        case 2 -> number(s.low(), 3);
        default -> number(s.high(), 3);
      };
    }
  }

  /** A yield or an index: its own name, its value and its formula. */
  record Ratio(String name, double value, String formula) {

    static List<Ratio> of(TrialBalance balance) {
      List<Ratio> all = new ArrayList<>();
      balance.yields().forEach(y -> all.add(new Ratio(y.yield().label(), y.value(), y.yield().formula())));
      balance.indices().forEach(i -> all.add(new Ratio(i.name(), i.value(), i.formula())));
      return all;
    }
  }

  /** Yields and indices. */
  static final class RatiosModel extends Model<Ratio> {

    @Override
    String how(Ratio r) {
      return r.formula();
    }

    RatiosModel() {
      super(new String[] {"balance.ratio", "balance.value", "balance.formula"}, new double[] {1.6, 0.7, 3});
    }

    @Override
    protected GridCell cell(int column, int row, Ratio r) {
      return switch (column) {
        case 0 -> GridCell.of(Words.said(r.name()));
        case 1 -> GridCell.of(Preferred.sign(Printed.number(r.value(), 3)), Look.NUMBER);
        default -> GridCell.of(Words.said(r.formula()));
      };
    }
  }
}
