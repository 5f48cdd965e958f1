package daubline.session;

import daubline.base.Finding;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Keeps the unsaved state of a study on disk, beside it in its private folder, within moments of each change. It is the
 * changed files whole, each written atomically: a crash leaves either the state before a change or after it.
 */
final class Journal implements AutoCloseable {

  static final String FOLDER = StudyFolder.PRIVATE + "/journal";
  static final String REMOVED = ".removed";
  private static final Logger LOG = Logger.getLogger(Journal.class.getName());

  private final StudyFolder study;
  private final FileChannel lockFile;
  private final FileLock lock;
  private final ExecutorService writer;
  private final Map<String, byte[]> written = new TreeMap<>();
  private Future<?> last;

  private Journal(StudyFolder study, FileChannel lockFile, FileLock lock) {
    this.study = study;
    this.lockFile = lockFile;
    this.lock = lock;
    this.writer = Executors.newSingleThreadExecutor(task -> {
      Thread thread = new Thread(task, "study journal");
      thread.setDaemon(true);
      return thread;
    });
  }

  /**
   * Starts the journal of a study; null when the folder cannot be written, since then nothing can be saved either.
   *
   * @throws StudyException when another session has the study open
   */
  static Journal start(StudyFolder study) throws StudyException {
    if (!Files.isWritable(study.root())) {
      return null;
    }
    try {
      Files.createDirectories(study.file(StudyFolder.PRIVATE));
      FileChannel channel = FileChannel.open(study.file(StudyFolder.PRIVATE + "/lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock lock = tryLock(channel);
      if (lock == null) {
        channel.close();
        throw new StudyException(Finding.error("study.open", study.root().toString(), "the study is open in another window",
            "go on there, or close it there first"));
      }
      Journal journal = new Journal(study, channel, lock);
      journal.setAside();
      return journal;
    } catch (IOException e) {
      throw StudyDocument.unreachable(study.root(), e);
    }
  }

  private static FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException e) {
      return null;
    }
  }

  /** Keeps a journal that nobody recovered under another name. */
  private void setAside() throws IOException {
    Path old = study.file(FOLDER);
    if (Files.isDirectory(old)) {
      Files.move(old, study.file(StudyFolder.PRIVATE + "/set-aside-" + Instant.now().toString().replace(':', '-')));
    }
  }

  /** Takes over the unsaved state; the writing happens behind, in order. */
  void write(Map<String, byte[]> changed) {
    Map<String, byte[]> state = new TreeMap<>(changed);
    last = writer.submit(() -> put(state));
  }

  private void put(Map<String, byte[]> state) {
    try {
      for (Map.Entry<String, byte[]> file : state.entrySet()) {
        if (!written.containsKey(file.getKey()) || written.get(file.getKey()) != file.getValue()) {
          putOne(file.getKey(), file.getValue());
          written.put(file.getKey(), file.getValue());
        }
      }
      for (String file : written.keySet().stream().filter(f -> !state.containsKey(f)).toList()) {
        drop(file);
        written.remove(file);
      }
    } catch (IOException e) {
      LOG.log(Level.WARNING, e, () -> "The journal of " + study.root() + " could not be written; save soon");
    }
  }

  private void putOne(String file, byte[] content) throws IOException {
    Path target = study.file(FOLDER).resolve(file);
    Path removed = target.resolveSibling(target.getFileName() + REMOVED);
    StudyFolder.writeAtomically(content == null ? removed : target, content == null ? new byte[0] : content);
    Files.deleteIfExists(content == null ? target : removed);
  }

  private void drop(String file) throws IOException {
    Path target = study.file(FOLDER).resolve(file);
    Files.deleteIfExists(target);
    Files.deleteIfExists(target.resolveSibling(target.getFileName() + REMOVED));
  }

  /** Forgets the unsaved state, since it was saved or discarded. */
  void clear() {
    write(Map.of());
    await();
    try {
      Recovery.deleteTree(study.file(FOLDER));
    } catch (IOException e) {
      LOG.log(Level.WARNING, e, () -> "The journal of " + study.root() + " could not be cleared");
    }
  }

  /** Waits until everything taken over so far is on disk. */
  void await() {
    try {
      if (last != null) {
        last.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    await();
    writer.shutdown();
    try {
      lock.release();
      lockFile.close();
    } catch (IOException e) {
      LOG.log(Level.FINE, "The lock was gone already", e);
    }
  }
}
