package daubline.session;

import daubline.base.ValueKind;
import daubline.model.BlindRecording;
import daubline.model.DataFile;
import daubline.model.Measurement;
import daubline.model.ModelFactory;
import daubline.model.Person;
import daubline.model.Reading;
import daubline.model.RemainsSheet;
import daubline.model.ResidueMass;
import daubline.model.Sheet;
import daubline.model.Study;
import daubline.model.Trial;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Recording remains without knowing run and evidence: who did so from when to when, which entries were written meanwhile, and
 * the code names that stand for the trials.
 */
public final class BlindRecordings {

  private static final String MARK = "blindly";
  private static final String SIGNS = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";
  private static final int LENGTH = 5;

  private BlindRecordings() {
  }

  /** The recording that is on; empty when none is. */
  public static Optional<BlindRecording> current(Study study) {
    return study.getBlindRecordings().stream().filter(BlindRecordings::isOn).findFirst();
  }

  /**
   * Begins a recording. Undo does not go behind it, since what was seen meanwhile cannot be unseen.
   *
   * @param label the name of the change
   * @param name who records: a person of the study, or a new one
   * @throws IllegalArgumentException when nobody is named or a recording is on already
   */
  public static void begin(StudySession session, String label, String name, Instant when) {
    if (name.isBlank()) {
      throw new IllegalArgumentException("blind recording needs the name of who records");
    }
    if (current(session.study()).isPresent()) {
      throw new IllegalArgumentException("blind recording is on already; end it first");
    }
    session.editForGood(label, () -> {
      BlindRecording recording = ModelFactory.eINSTANCE.createBlindRecording();
      recording.setBy(person(session.study(), name.strip()));
      recording.setBegun(second(when));
      session.study().getBlindRecordings().add(recording);
    });
  }

  /**
   * Ends the recording that is on. Undo does not go behind it.
   *
   * @param name who ends it, and sees from then on what was hidden: a person of the study, or a new one
   * @throws IllegalArgumentException when nobody is named or none is on
   */
  public static void end(StudySession session, String label, String name, Instant when) {
    if (name.isBlank()) {
      throw new IllegalArgumentException("who ends blind recording is kept, so it needs a name");
    }
    BlindRecording recording = current(session.study()).orElseThrow(() -> new IllegalArgumentException("no blind recording is on"));
    session.editForGood(label, () -> {
      recording.setEnded(second(when));
      recording.setEndedBy(person(session.study(), name.strip()));
    });
  }

  private static String second(Instant when) {
    return when.truncatedTo(ChronoUnit.SECONDS).toString();
  }

  private static Person person(Study study, String name) {
    return study.getPeople().stream().filter(p -> name.equals(p.getName())).findFirst().orElseGet(() -> {
      Person made = ModelFactory.eINSTANCE.createPerson();
      made.setName(name);
      study.getPeople().add(made);
      return made;
    });
  }

  /**
   * The code names of the trials while a recording is on, by id: letters and digits drawn at random, the same for the whole
   * recording and others in the next, so that nobody learns them.
   */
  public static Map<String, String> codes(Study study) {
    Map<String, String> codes = new LinkedHashMap<>();
    current(study).ifPresent(r -> study.getSeries().stream().flatMap(s -> s.getTrials().stream()).forEach(t -> codes.put(t.getId(), code(r.getId() + t.getId(), codes))));
    return codes;
  }

  private static String code(String seed, Map<String, String> taken) {
    Random random = new Random(seed.hashCode());
    String code;
    do {
      code = random.ints(LENGTH, 0, SIGNS.length()).mapToObj(i -> SIGNS.substring(i, i + 1)).reduce("", String::concat);
    } while (taken.containsValue(code));
    return code;
  }

  /** The recording in which an entry was written without knowing run and evidence; empty when it was not. */
  public static Optional<BlindRecording> of(EObject entry) {
    return mark(entry).map(f -> (BlindRecording) entry.eGet(f));
  }

  /** The recording as trails and lists say it: by whom, from when to when. */
  public static String said(BlindRecording recording) {
    String who = recording.getBy() == null || recording.getBy().getName() == null ? "somebody" : recording.getBy().getName();
    boolean other = recording.getEndedBy() != null && recording.getEndedBy() != recording.getBy();
    return who + " from " + recording.getBegun() + (isOn(recording) ? " on" : " to " + recording.getEnded() + (other ? ", ended by " + recording.getEndedBy().getName() : ""));
  }

  /** The name of a trial, null when it has none, as whoever records blind may read it: its code name while a recording is on. */
  public static String nameOf(Trial trial) {
    String code = trial.eContainer() != null && EcoreUtil.getRootContainer(trial) instanceof Study study ? codes(study).get(trial.getId()) : null;
    return code == null ? trial.getName() : code;
  }

  /**
   * Whether whoever records blind may see an entry about remains: only what was written in this recording, rows laid out and
   * still empty, and pictures of what is left. All may be seen while none is on.
   */
  public static boolean isSeen(EObject entry) {
    Optional<BlindRecording> on = EcoreUtil.getRootContainer(entry) instanceof Study study ? current(study) : Optional.empty();
    return on.isEmpty() || of(entry).filter(on.get()::equals).isPresent() || isEmpty(entry)
        || entry instanceof DataFile file && file.eContainer() instanceof RemainsSheet || entry instanceof Measurement line && line.isScale();
  }

  private static boolean isEmpty(EObject entry) {
    return entry instanceof ResidueMass mass && mass.getTyped() == null && mass.getValue() == null && Readings.amount(mass).kind() == ValueKind.NOT_RECORDED
        && mass.getCount() == null && mass.getNote() == null;
  }

  private static boolean isOn(BlindRecording recording) {
    return recording.getEnded() == null || recording.getEnded().isBlank();
  }

  /**
   * Marks what a change wrote while a recording is on. Without one, an entry that is changed by somebody who sees everything
   * loses its mark.
   *
   * @param steps what the change did
   * @param unseeing whether it was made where run and evidence are hidden
   */
  static void mark(Study study, List<Step> steps, boolean unseeing) {
    Optional<BlindRecording> on = unseeing ? current(study) : Optional.empty();
    Set<EObject> arrived = new HashSet<>();
    for (Step step : steps) {
      if (on.isPresent()) {
        entries(step, arrived);
      } else if (!MARK.equals(step.feature().getName())) {
        unmark(step.object());
      }
    }
    on.ifPresent(recording -> arrived.forEach(entry -> put(entry, recording)));
  }

  /** What came in by a step, with all it contains; an entry that was laid out and empty counts when something is first typed into it. */
  private static void entries(Step step, Set<EObject> into) {
    if (step.feature() instanceof EReference reference && reference.isContainment()) {
      for (Object arrival : step.arrivals()) {
        into.add((EObject) arrival);
        ((EObject) arrival).eAllContents().forEachRemaining(into::add);
      }
    } else if (step instanceof Step.Put put && put.before() == null && "typed".equals(step.feature().getName()) && step.object() instanceof Reading) {
      into.add(step.object());
    }
  }

  private static void put(EObject entry, BlindRecording recording) {
    mark(entry).filter(f -> entry.eGet(f) == null && isOfATrial(entry)).ifPresent(f -> {
      entry.eSet(f, recording);
      if (entry instanceof RemainsSheet sheet) {
        sheet.setBlind(true);
        if (sheet.getRecordedBy() == null) {
          sheet.setRecordedBy(recording.getBy());
        }
      }
    });
  }

  /** A sheet keeps its mark: what is added to it later carries none of its own. */
  private static void unmark(EObject changed) {
    EObject entry = changed;
    while (entry != null && mark(entry).isEmpty()) {
      entry = entry.eContainer();
    }
    if (entry != null && !(entry instanceof Sheet) && of(entry).isPresent()) {
      entry.eUnset(mark(entry).orElseThrow());
    }
  }

  private static boolean isOfATrial(EObject entry) {
    for (EObject o = entry; o != null; o = o.eContainer()) {
      if (o instanceof Trial) {
        return true;
      }
    }
    return false;
  }

  private static Optional<EStructuralFeature> mark(EObject entry) {
    return Optional.ofNullable(entry.eClass().getEStructuralFeature(MARK));
  }

  /** Everything that was written in a recording. */
  public static List<EObject> written(BlindRecording recording) {
    List<EObject> all = new java.util.ArrayList<>();
    for (Iterator<EObject> i = recording.eContainer().eAllContents(); i.hasNext();) {
      EObject entry = i.next();
      if (of(entry).filter(r -> r == recording).isPresent()) {
        all.add(entry);
      }
    }
    return all;
  }
}
