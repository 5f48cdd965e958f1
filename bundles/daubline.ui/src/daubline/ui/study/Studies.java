package daubline.ui.study;

import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/** The studies open in the window, and the one that commands act on. For the window's own thread. */
public final class Studies {

  private static final Studies INSTANCE = new Studies();

  private final List<OpenStudy> open = new ArrayList<>();
  private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
  private OpenStudy current;

  private Studies() {
  }

  /** The studies of this window. */
  public static Studies get() {
    return INSTANCE;
  }

  /** All open studies in the order in which they were opened. */
  public List<OpenStudy> all() {
    return List.copyOf(open);
  }

  /** The study that commands act on. */
  public Optional<OpenStudy> current() {
    return Optional.ofNullable(current);
  }

  /** Makes an open study the one that commands act on. */
  public void setCurrent(OpenStudy study) {
    if (current != study && open.contains(study)) {
      current = study;
      fire();
    }
  }

  /** The open study of a folder. */
  public Optional<OpenStudy> find(Path folder) {
    Path wanted = folder.toAbsolutePath().normalize();
    return open.stream().filter(s -> s.folder().equals(wanted)).findFirst();
  }

  /** Takes a session over that was just opened. */
  OpenStudy add(StudySession session) {
    OpenStudy study = new OpenStudy(session);
    open.add(study);
    current = study;
    Recent.remember(study.folder());
    fire();
    return study;
  }

  /** Closes a study; what was not saved stays in its journal. */
  public void close(OpenStudy study) {
    study.close();
    open.remove(study);
    if (current == study) {
      current = open.isEmpty() ? null : open.get(open.size() - 1);
    }
    fire();
  }

  /** Adds a listener told when a study was opened, closed, changed, worked out or made current. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  /** Removes a listener. */
  public void remove(Runnable listener) {
    listeners.remove(listener);
  }

  void fire() {
    listeners.forEach(Runnable::run);
  }
}
