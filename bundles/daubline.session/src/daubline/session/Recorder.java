package daubline.session;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EContentAdapter;

/**
 * Listens to every object of a study: notes the steps of the change under way, and which files they touch. Its cost is
 * that of the change, not of the study.
 */
final class Recorder extends EContentAdapter {

  private List<Step> steps;

  /** Starts to note steps. */
  void begin() {
    steps = new ArrayList<>();
  }

  /** The steps noted so far. */
  List<Step> noted() {
    return List.copyOf(steps);
  }

  /** Ends noting and gives the steps in order. */
  List<Step> end() {
    List<Step> noted = steps == null ? List.of() : steps;
    steps = null;
    return noted;
  }

  @Override
  public void notifyChanged(Notification notification) {
    super.notifyChanged(notification);
    if (notification.isTouch() || !(notification.getNotifier() instanceof EObject object)
        || !(notification.getFeature() instanceof EStructuralFeature feature) || feature.isTransient()) {
      return;
    }
    Resource file = object.eResource();
    if (file != null) {
      file.setModified(true);
    }
    if (steps != null) {
      steps.add(Step.of(object, feature, notification));
    }
  }
}
