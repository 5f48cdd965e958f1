package daubline.charts;

import daubline.analysis.Origins;
import daubline.analysis.StudyResults;
import daubline.analysis.balance.TrialBalance;
import daubline.base.Trail;
import daubline.engine.process.balance.ElementBalance;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The iron of each trial as a stream from what it came with to where it was found, the remainder beside. */
final class BalanceFigures implements FigureSpec {

  private static final int ON_A_SHEET = 6;
  private static final String IRON = "Fe";

  @Override
  public String id() {
    return "balance";
  }

  @Override
  public String table() {
    return "balance";
  }

  @Override
  public String title() {
    return "Balance of Iron";
  }

  /** The first sheet of streams. */
  @Override
  public Optional<Figure> build(StudyResults results) {
    return all(results).stream().map(NamedFigure::figure).findFirst();
  }

  @Override
  public List<NamedFigure> all(StudyResults results) {
    List<Stream> streams = new ArrayList<>();
    for (TrialBalance balance : results.snapshot().balances().all()) {
      balance.elements().stream().filter(e -> e.element().equals(IRON) && e.in() > 0).forEach(e -> streams.add(new Stream(balance.name(), e,
          results.snapshot().plans().find(balance.trial()).map(Origins::used).orElse(List.of()))));
    }
    double most = streams.stream().mapToDouble(s -> Math.max(s.iron().in(), s.iron().out())).max().orElse(0);
    List<NamedFigure> sheets = new ArrayList<>();
    for (int from = 0; from < streams.size(); from += ON_A_SHEET) {
      List<Stream> here = streams.subList(from, Math.min(streams.size(), from + ON_A_SHEET));
      String number = streams.size() > ON_A_SHEET ? Integer.toString(from / ON_A_SHEET + 1) : "";
      sheets.add(new NamedFigure(id() + (number.isEmpty() ? "" : "-" + number), title() + (number.isEmpty() ? "" : ", Sheet " + number), new Sheet(here, most)));
    }
    return sheets;
  }

  private record Stream(String trial, ElementBalance iron, List<Trail> rests) {
  }

  /** Several trials, two beside each other, all to one scale. */
  private static final class Sheet extends RowFigure {

    private static final double PANEL = 118;
    private static final double HEADING = 12;
    private static final double GAP = 14;

    private final List<Stream> streams;
    private final double most;

    Sheet(List<Stream> streams, double most) {
      super("Iron of each fire in kilograms, all to one scale: from what it came with, at the left, to where it was found again, at the right. The hatched "
          + "end with a broken outline is the remainder, with its standard uncertainty: iron that was not found again, or at the left iron that was found "
          + "but did not go in. It is left as it is, never shared out.", (streams.size() + 1) / 2 * (PANEL + GAP));
      this.streams = List.copyOf(streams);
      this.most = most;
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      double width = area.getWidth() / 2;
      for (int i = 0; i < streams.size(); i++) {
        double x = area.getX() + i % 2 * width;
        double y = area.getY() + i / 2 * (PANEL + GAP);
        pen.color(palette.ink()).text(Pen.fit(streams.get(i).trial(), Pen.LARGE, width - GAP), x, y + 9, Pen.LARGE, Pen.At.LEFT);
        new BalanceStream(streams.get(i).trial(), streams.get(i).iron(), streams.get(i).rests(), (PANEL - HEADING - 30) / most).paint(pen, new Rectangle2D.Double(x, y + HEADING, width - GAP, PANEL - HEADING));
      }
    }
  }
}
