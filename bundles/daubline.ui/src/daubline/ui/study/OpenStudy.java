package daubline.ui.study;

import daubline.analysis.StudyResults;
import daubline.base.Finding;
import daubline.model.BlindRecording;
import daubline.model.Context;
import daubline.model.FurnaceBuild;
import daubline.model.Hazard;
import daubline.model.Identified;
import daubline.model.Lot;
import daubline.model.Named;
import daubline.model.Permission;
import daubline.model.Person;
import daubline.model.Reconstruction;
import daubline.model.ResidueClass;
import daubline.model.Sheet;
import daubline.model.Site;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.model.VariableDefinition;
import daubline.session.BlindRecordings;
import daubline.session.StudySession;
import daubline.ui.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A study open in the window: its session, which only the window's own thread touches, and the latest results, which are
 * worked out behind.
 */
public final class OpenStudy {

  private final StudySession session;
  private final ResultsJob job;
  private final List<Runnable> changeListeners = new CopyOnWriteArrayList<>();
  private final List<Runnable> resultListeners = new CopyOnWriteArrayList<>();
  private StudyResults results;
  private Compared compared;

  OpenStudy(StudySession session) {
    this.session = session;
    session.hidesWhileBlind();
    this.job = new ResultsJob(this);
    session.addListener(this::changed);
    job.restart();
  }

  /** The session; for the window's own thread. */
  public StudySession session() {
    return session;
  }

  /** The folder of the study. */
  public Path folder() {
    return session.folder();
  }

  /** The name of the study, or of its folder when it has none. */
  public String name() {
    String name = session.study().getName();
    return name == null || name.isBlank() ? String.valueOf(folder().getFileName()) : name;
  }

  private void changed() {
    job.restart();
    changeListeners.forEach(Runnable::run);
    Studies.get().fire();
  }

  /** The blind recording that is on; while it is, the window shows neither run nor evidence of this study. */
  public Optional<BlindRecording> blind() {
    return BlindRecordings.current(session.study());
  }

  /** The latest results; empty until the first are there, and while somebody records blind. They may lag a moment behind the last change. */
  public Optional<StudyResults> results() {
    return Optional.ofNullable(results).filter(r -> blind().isEmpty());
  }

  /** The findings of the checks in the latest results; while somebody records blind only those that tell of neither run nor evidence. */
  public List<Finding> findings() {
    return blind().isEmpty() ? allFindings() : allFindings().stream().filter(this::isHarmless).toList();
  }

  /** How many findings are not shown because somebody records blind. */
  public int hiddenFindings() {
    return allFindings().size() - findings().size();
  }

  private List<Finding> allFindings() {
    return results == null ? session.findings() : results.checks();
  }

  private boolean isHarmless(Finding finding) {
    return session.find(finding.subject(), Identified.class)
        .filter(o -> o instanceof Person || o instanceof Hazard || o instanceof Permission || o instanceof ResidueClass).isPresent();
  }

  /** The latest comparison with what the person chose to compare with; empty until the first is there, and while somebody records blind. */
  public Optional<Compared> compared() {
    return Optional.ofNullable(compared).filter(c -> blind().isEmpty());
  }

  void put(StudyResults latest, Compared chosen) {
    results = latest;
    compared = chosen;
    resultListeners.forEach(Runnable::run);
    Studies.get().fire();
  }

  /** Whether the latest results belong to the study as it stands now. */
  public boolean isSettled() {
    return results != null && job.isIdle();
  }

  /** Works everything out again, after a change of the settings outside the study. */
  public void recompute() {
    job.restart();
  }

  /**
   * Changes the study under a name that undo shows.
   *
   * @param key key of the name in the messages
   * @param part what the name is about, such as the name of the variable
   */
  public void edit(String key, String part, Runnable steps) {
    session.edit(Words.of(key, part), steps);
  }

  /** Adds a listener told after every change, on the window's thread. */
  public void onChange(Runnable listener) {
    changeListeners.add(listener);
  }

  /** Adds a listener told when new results are there, on the window's thread. */
  public void onResults(Runnable listener) {
    resultListeners.add(listener);
  }

  /** Removes a listener of either kind. */
  public void remove(Runnable listener) {
    changeListeners.remove(listener);
    resultListeners.remove(listener);
  }

  /** Whether somebody records blind in the study of an object. */
  public static boolean isBlind(EObject object) {
    return EcoreUtil.getRootContainer(object) instanceof Study study && BlindRecordings.current(study).isPresent();
  }

  /** The name of an object as screens print it; while somebody records blind a trial has a code name, and what tells of run or evidence none. */
  public static String nameOf(EObject object) {
    if (object instanceof Trial trial && isBlind(trial)) {
      return BlindRecordings.nameOf(trial);
    }
    if (isTelling(object) && isBlind(object)) {
      return Words.of("page.blind");
    }
    if (object instanceof Named named) {
      return named.getName() == null || named.getName().isBlank() ? String.valueOf(named.getId()) : named.getName();
    }
    String name = switch (object) {
      case VariableDefinition variable -> variable.getName();
      case ResidueClass residue -> residue.getName();
      default -> null;
    };
    return name == null || name.isBlank() ? object.eClass().getName() : name;
  }

  private static boolean isTelling(EObject o) {
    return o instanceof Site || o instanceof Context || o instanceof Sheet || o instanceof Reconstruction || o instanceof FurnaceBuild || o instanceof Lot;
  }

  void close() {
    job.stop();
    changeListeners.clear();
    resultListeners.clear();
    session.close();
  }
}
