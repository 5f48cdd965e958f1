package daubline.charts;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All figures of the publication, in the order in which they are printed. */
public final class Figures {

  private static final List<FigureSpec> ALL = Stream.concat(Stream.of(new RankingFigure(), new AgreementMap(), new VerdictMap(), new SectionFigure(), new ReconstructionFigures(),
      new WallMap(), new SpreadMap(), new RunFigures(), new BalanceFigures(), new DecayFigures(), new TernaryFigure(), new BiplotFigure(), new ParallelFigure(), new TriedFigure(),
      new ResidueShares(), new ResidualsFigure(), new SeriesFigures()), ForecastFigures.all().stream()).toList();

  private Figures() {
  }

  /** Every figure. */
  public static List<FigureSpec> all() {
    return ALL;
  }

  /** A figure by its short name. */
  public static Optional<FigureSpec> find(String id) {
    return ALL.stream().filter(f -> f.id().equals(id)).findFirst();
  }
}
