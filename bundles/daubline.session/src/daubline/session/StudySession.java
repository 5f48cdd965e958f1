package daubline.session;

import daubline.base.Finding;
import daubline.model.ModelFactory;
import daubline.model.Study;
import daubline.model.Trial;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * One open study. Every change goes through {@link #edit}, which names it, records it for undo and writes it to the
 * journal, so that a crash loses nothing. A session belongs to one thread at a time.
 */
public final class StudySession implements AutoCloseable {

  private final StudyDocument document;
  private final EarlierValues earlier = new EarlierValues();
  private final List<Change> made = new java.util.ArrayList<>();
  private final BasicCommandStack stack = new BasicCommandStack() {
    /** A change that failed was taken back already; its caller has to know. */
    @Override
    protected void handleError(Exception failure) {
      throw (RuntimeException) failure;
    }
  };
  private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
  private final Journal journal;

  private boolean recovered;
  private boolean unseeing;
  /** Whether a change is under way. */
  private boolean changing;

  private StudySession(StudyDocument document, Journal journal) {
    this.document = document;
    this.journal = journal;
  }

  /**
   * Opens a study to read it: no journal is written and none is looked for.
   *
   * @param folder the study's folder
   * @throws StudyException when it is no study, broken, or from a newer version
   */
  public static StudySession read(Path folder) throws StudyException {
    return new StudySession(StudyDocument.load(new StudyFolder(folder)), null);
  }

  /** A session to read a document; no journal is written. */
  static StudySession of(StudyDocument document) {
    return new StudySession(document, null);
  }

  /**
   * Opens a study to work on it, as it was saved. A caller that wants what a crash left asks {@link Recovery#of} first;
   * what it does not recover is set aside in the study's private folder, never deleted.
   *
   * @throws StudyException when it is no study, broken, from a newer version, or open in another window
   */
  public static StudySession open(Path folder) throws StudyException {
    StudyDocument document = StudyDocument.load(new StudyFolder(folder));
    return new StudySession(document, Journal.start(document.folder()));
  }

  /**
   * Opens a study with the unsaved changes that an earlier session left; they are still unsaved.
   *
   * @throws StudyException as {@link #open}
   */
  public static StudySession open(Recovery recovery) throws StudyException {
    StudyDocument document = recovery.load();
    StudySession session = new StudySession(document, Journal.start(document.folder()));
    session.recovered = true;
    session.journal.write(document.changedFiles());
    return session;
  }

  /**
   * Makes a new study in a folder that is empty or does not exist yet, and opens it.
   *
   * @throws StudyException when the folder holds something already or cannot be written
   */
  public static StudySession create(Path folder, String name) throws StudyException {
    try {
      refuseIfFilled(folder);
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw StudyDocument.unreachable(folder, e);
    }
    Study study = ModelFactory.eINSTANCE.createStudy();
    study.setName(name);
    StudyDocument document = StudyDocument.of(new StudyFolder(folder), study);
    StudySession session = new StudySession(document, Journal.start(document.folder()));
    document.save();
    return session;
  }

  private static void refuseIfFilled(Path folder) throws IOException, StudyException {
    if (Files.isDirectory(folder)) {
      try (var content = Files.list(folder)) {
        if (content.findAny().isPresent()) {
          throw new StudyException(Finding.error("study.filled", folder.toString(), "the folder holds files already",
              "choose an empty folder or a new name"));
        }
      }
    }
  }

  /** The study itself. Change it only inside {@link #edit}. */
  public Study study() {
    return document.study();
  }

  /** The folder the study lives in. */
  public Path folder() {
    return document.folder().root();
  }

  /** What was noticed while reading: references that lead nowhere, files that nothing names. */
  public List<Finding> findings() {
    return document.findings();
  }

  /** Whether the study can be saved where it is. */
  public boolean isReadOnly() {
    return journal == null || !Files.isWritable(folder());
  }

  /**
   * Changes the study. When a step fails, everything the others did is taken back and the exception goes on to the
   * caller. A change made by one of the steps is part of this one and has no name of its own.
   *
   * @param label the name of the change, as undo shows it
   * @param steps what to do
   */
  public void edit(String label, Runnable steps) {
    execute(label, steps, true);
  }

  /** Changes the study as {@link #edit} does, but undo does not take it back nor go behind it. */
  public void editForGood(String label, Runnable steps) {
    execute(label, steps, false);
  }

  private void execute(String label, Runnable steps, boolean undoable) {
    if (changing) {
      steps.run();
      return;
    }
    Runnable all = () -> {
      steps.run();
      BlindRecordings.mark(study(), document.recorder().noted(), unseeing);
      earlier.keep(document.recorder().noted(), label, Instant.now());
    };
    Change change = new Change(label, document.recorder(), all, StudySession::receive, undoable);
    changing = true;
    try {
      stack.execute(change);
    } finally {
      changing = false;
    }
    made.add(change);
    changed();
  }

  /** Says that who edits here sees neither run nor evidence while a blind recording is on. */
  public void hidesWhileBlind() {
    unseeing = true;
  }

  /** Whether who edits here may see an entry about remains: all, or while somebody records blind only what was written meanwhile. */
  public boolean shows(EObject entry) {
    return !unseeing || BlindRecordings.isSeen(entry);
  }

  /** The name of a trial for who edits here. */
  public String nameOf(Trial trial) {
    return unseeing ? BlindRecordings.nameOf(trial) : trial.getName();
  }

  /**
   * Deletes objects with everything they contain, and every reference to them.
   *
   * @param label the name of the change, as undo shows it
   */
  public void delete(String label, List<? extends EObject> objects) {
    edit(label, () -> EcoreUtil.deleteAll(objects, true));
  }

  /** Gives ids to objects that came in, and refuses text that no file can hold. */
  private static void receive(Object arrival) {
    if (arrival instanceof EObject object) {
      Ids.complete(object);
    }
    Texts.refuseUnstorable(arrival);
  }

  /** Whether something was changed since the last save. */
  public boolean isDirty() {
    return recovered || stack.isSaveNeeded();
  }

  /** The name of the change that undo would take back; empty when there is none. */
  public Optional<String> undoLabel() {
    return label(stack.canUndo() ? stack.getUndoCommand() : null);
  }

  /** The name of the change that redo would do again; empty when there is none. */
  public Optional<String> redoLabel() {
    return label(stack.canRedo() ? stack.getRedoCommand() : null);
  }

  private static Optional<String> label(Command command) {
    return Optional.ofNullable(command).map(Command::getLabel);
  }

  /** Takes the last change back; does nothing when there is none. */
  public void undo() {
    if (stack.canUndo()) {
      made.remove(stack.getUndoCommand());
      stack.undo();
      changed();
    }
  }

  /** Does the last undone change again; does nothing when there is none. */
  public void redo() {
    if (stack.canRedo()) {
      stack.redo();
      made.add((Change) stack.getUndoCommand());
      changed();
    }
  }

  private void changed() {
    document.attachParts();
    if (journal != null) {
      journal.write(document.changedFiles());
    }
    listeners.forEach(Runnable::run);
  }

  /** Adds a listener that runs after each change, undo, redo, save and reload. */
  public void addListener(Runnable listener) {
    listeners.add(listener);
  }

  /** Removes a listener. */
  public void removeListener(Runnable listener) {
    listeners.remove(listener);
  }

  /**
   * Saves what changed. Each file is written beside, forced to disk and renamed.
   *
   * @throws StudyException when a file was changed outside meanwhile, or cannot be written; nothing is lost then, the
   *     journal keeps the changes
   */
  public void save() throws StudyException {
    document.refuseIfChangedOutside();
    saveOverOutsideChanges();
  }

  /** Saves even over files that were changed outside; for a person who was asked and said so. */
  public void saveOverOutsideChanges() throws StudyException {
    if (isReadOnly()) {
      throw new StudyException(Finding.error("study.readonly", folder().toString(), "the folder cannot be written",
          "save the study under another name, or change the rights of the folder"));
    }
    document.save();
    stack.saveIsDone();
    earlier.saved();
    recovered = false;
    journal.clear();
    listeners.forEach(Runnable::run);
  }

  /**
   * Saves a complete copy of the study, with its data files, in another folder; this session stays where it is.
   *
   * @throws StudyException when the folder holds something already or cannot be written
   */
  public void saveCopy(Path folder) throws StudyException {
    try {
      refuseIfFilled(folder);
      StudyCopy.write(document, folder);
    } catch (IOException e) {
      throw StudyDocument.unreachable(folder, e);
    }
  }

  /** The study's own files that were changed by somebody else since they were read; empty when none was. */
  public List<String> changedOutside() throws StudyException {
    return document.changedOutside();
  }

  /** The object with an id, when it is there and of this type. */
  public <T extends EObject> Optional<T> find(String id, Class<T> type) {
    return document.find(id).filter(type::isInstance).map(type::cast);
  }

  /** What stood in the fields of an object before the changes of this session that were not taken back, the oldest first. */
  public List<Version> versions(EObject object) {
    return Version.of(object, made);
  }

  /** A digest of the whole study as it stands, for exports that say what they were made from. */
  public String digest() {
    return document.digest();
  }

  /** The study as it stands now, for work that goes on beside editing. */
  public StudyImage image() {
    return new StudyImage(document.folder(), document.files());
  }

  /** Waits until the journal is on disk; for tests and for closing down. */
  void awaitJournal() {
    if (journal != null) {
      journal.await();
    }
  }

  /** Closes the session; changes that were neither saved nor discarded stay in the journal. */
  @Override
  public void close() {
    if (journal != null) {
      journal.close();
    }
    listeners.clear();
  }

  /** Discards what the journal holds; for a person who closes without saving and said so. */
  public void discardChanges() {
    if (journal != null) {
      journal.clear();
    }
  }
}
