package daubline.ui.views;

import daubline.analysis.EntryOrigins;
import daubline.base.Trail;
import daubline.model.Identified;
import daubline.model.Reading;
import daubline.ui.Words;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.Viewer;

/**
 * The steps of a trail as a tree: what each was made of, and what its entry in the study says of itself. An entry leads to what it is part
 * of, and that to its values, which are part of it again; so below a step its own entry is named and goes no further. The input is an
 * optional trail.
 */
final class TrailSteps implements ITreeContentProvider {

  private Optional<Step> root = Optional.empty();
  private Optional<OpenStudy> study = Optional.empty();
  private Optional<EntryOrigins> origins = Optional.empty();

  /** A step at its place in the tree; alike at two places it is two. */
  static final class Step {

    private final Trail trail;
    private final Step above;
    /** What it was made of, once somebody asked: the tree asks more than once. */
    private List<Step> from;

    private Step(Trail trail, Step above) {
      this.trail = trail;
      this.above = above;
    }

    Trail trail() {
      return trail;
    }

    private boolean isBelowItself() {
      for (Step step = above; step != null; step = step.above) {
        if (step.trail.subject().equals(trail.subject())) {
          return true;
        }
      }
      return false;
    }
  }

  @Override
  public void inputChanged(Viewer viewer, Object before, Object now) {
    study = Studies.get().current();
    origins = study.map(s -> new EntryOrigins(s.session()));
    root = now instanceof Optional<?> given ? given.map(t -> new Step((Trail) t, null)) : Optional.empty();
  }

  @Override
  public Object[] getElements(Object input) {
    return root.stream().toArray();
  }

  @Override
  public Object[] getChildren(Object parent) {
    return from((Step) parent).toArray();
  }

  @Override
  public Object getParent(Object element) {
    return ((Step) element).above;
  }

  @Override
  public boolean hasChildren(Object element) {
    return !from((Step) element).isEmpty();
  }

  /** What a step was made of, with what its entry says of itself: an entry alone goes on with that, a value adds what it is part of and what stood there before. */
  private List<Step> from(Step step) {
    if (step.from == null) {
      List<Trail> from = new ArrayList<>(step.trail.from());
      entry(step).filter(o -> (o instanceof Reading || from.isEmpty()) && !step.isBelowItself())
          .ifPresent(o -> origins.orElseThrow().of(o, step.trail.what(), step.trail.value()).from().stream().map(t -> t.in(Words.wording()))
              .filter(t -> !from.contains(t) && !t.subject().equals(step.trail.subject())).forEach(from::add));
      step.from = from.stream().map(t -> new Step(t, step)).toList();
    }
    return step.from;
  }

  private Optional<Identified> entry(Step step) {
    String subject = step.trail.subject();
    return subject.isEmpty() ? Optional.empty() : study.flatMap(s -> s.session().find(subject, Identified.class));
  }

  /**
   * What is open at first, the nearest steps before those that lie deeper: the number, and below it what tells by itself what it was made of.
   *
   * @param many after so many lines nothing more is opened
   */
  List<Step> opened(int many) {
    List<Step> opened = new ArrayList<>();
    Deque<Step> waiting = new ArrayDeque<>();
    root.ifPresent(waiting::add);
    int lines = waiting.size();
    while (!waiting.isEmpty() && lines < many) {
      Step step = waiting.remove();
      // an entry that is only named is opened by hand
      if (step.above == null || !step.trail.from().isEmpty() || entry(step).filter(Reading.class::isInstance).isPresent()) {
        opened.add(step);
        waiting.addAll(from(step));
        lines += from(step).size();
      }
    }
    return opened;
  }
}
