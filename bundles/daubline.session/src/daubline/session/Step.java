package daubline.session;

import java.util.Collection;
import java.util.List;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** One elementary step of a change: it can be taken back and done again. */
sealed interface Step {

  /** What was changed. */
  EObject object();

  /** What of it. */
  EStructuralFeature feature();

  /** Takes the step back. */
  void undo();

  /** Does the step again. */
  void redo();

  /** What came into the study by it: values of attributes, objects with all they contain. */
  List<?> arrivals();

  /** The step that a notification tells of. */
  static Step of(EObject object, EStructuralFeature feature, Notification n) {
    return switch (n.getEventType()) {
      case Notification.ADD -> new Added(object, feature, n.getPosition(), List.of(n.getNewValue()));
      case Notification.ADD_MANY -> new Added(object, feature, n.getPosition(), List.copyOf((Collection<?>) n.getNewValue()));
      case Notification.REMOVE -> new Removed(object, feature, new int[] {n.getPosition()}, List.of(n.getOldValue()));
      case Notification.REMOVE_MANY -> removedMany(object, feature, n);
      case Notification.MOVE -> new Moved(object, feature, (Integer) n.getOldValue(), n.getPosition());
      default -> new Put(object, feature, n.getOldValue(), n.getNewValue());
    };
  }

  private static Removed removedMany(EObject object, EStructuralFeature feature, Notification n) {
    List<?> values = List.copyOf((Collection<?>) n.getOldValue());
    int[] positions = n.getNewValue() instanceof int[] given ? given : java.util.stream.IntStream.range(0, values.size()).toArray();
    return new Removed(object, feature, positions, values);
  }

  @SuppressWarnings("unchecked")
  private static EList<Object> list(EObject object, EStructuralFeature feature) {
    return (EList<Object>) object.eGet(feature);
  }

  /** A single value was replaced. */
  record Put(EObject object, EStructuralFeature feature, Object before, Object after) implements Step {
    @Override
    public void undo() {
      object.eSet(feature, before);
    }

    @Override
    public void redo() {
      object.eSet(feature, after);
    }

    @Override
    public List<?> arrivals() {
      return after == null ? List.of() : List.of(after);
    }
  }

  /** Values were put into a list. */
  record Added(EObject object, EStructuralFeature feature, int position, List<?> values) implements Step {
    @Override
    public void undo() {
      list(object, feature).removeAll(values);
    }

    @Override
    public void redo() {
      EList<Object> list = list(object, feature);
      int place = Math.min(position < 0 ? list.size() : position, list.size());
      for (Object value : values) {
        if (!list.contains(value)) {
          list.add(Math.min(place++, list.size()), value);
        }
      }
    }

    @Override
    public List<?> arrivals() {
      return values;
    }
  }

  /** Values were taken out of a list, each from its place. */
  record Removed(EObject object, EStructuralFeature feature, int[] positions, List<?> values) implements Step {
    @Override
    public void undo() {
      EList<Object> list = list(object, feature);
      for (int i = 0; i < values.size(); i++) {
        if (!list.contains(values.get(i))) {
          list.add(Math.min(positions[i], list.size()), values.get(i));
        }
      }
    }

    @Override
    public void redo() {
      list(object, feature).removeAll(values);
    }

    @Override
    public List<?> arrivals() {
      return List.of();
    }
  }

  /** A value changed its place in a list. */
  record Moved(EObject object, EStructuralFeature feature, int from, int to) implements Step {
    @Override
    public void undo() {
      list(object, feature).move(from, to);
    }

    @Override
    public void redo() {
      list(object, feature).move(to, from);
    }

    @Override
    public List<?> arrivals() {
      return List.of();
    }
  }
}
