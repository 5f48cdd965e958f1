package daubline.ui.views;

import daubline.model.Series;
import daubline.model.Trial;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Some trials of a long series that stand together in the tree, so that opening a series of thousands shows a few lines.
 *
 * @param series the series
 * @param from place of the first trial in the series, from 0
 * @param trials the trials
 */
record Span(Series series, int from, List<Trial> trials) implements BranchOwner {

  /** As many trials as stand in a tree without being taken together, and as many as one span holds. */
  static final int MOST = 200;

  /** The trials of a series in their order: themselves, or taken together when they are many. */
  static List<Object> of(Series series, List<Trial> trials) {
    if (trials.size() <= MOST) {
      return new ArrayList<>(trials);
    }
    return IntStream.iterate(0, i -> i < trials.size(), i -> i + MOST)
        .<Object>mapToObj(i -> new Span(series, i, trials.subList(i, Math.min(i + MOST, trials.size())))).toList();
  }

  @Override
  public OpenStudy study() {
    return Studies.get().all().stream().filter(s -> EcoreUtil.isAncestor(s.session().study(), series)).findFirst().orElseThrow();
  }

  /** The same span stays open when the study changed under it. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Span s && s.series == series && s.from == from;
  }

  @Override
  public int hashCode() {
    return 31 * System.identityHashCode(series) + from;
  }
}
