package daubline.session;

import java.nio.file.Path;
import java.util.Map;

/**
 * A study as it stood at one moment, unsaved changes included. Taking one costs nothing; reading it builds the study a
 * second time, so that long work can go on beside the person who goes on editing.
 */
public final class StudyImage {

  private final StudyFolder folder;
  private final Map<String, byte[]> files;

  StudyImage(StudyFolder folder, Map<String, byte[]> files) {
    this.folder = folder;
    this.files = Map.copyOf(files);
  }

  /** The folder of the study. */
  public Path folder() {
    return folder.root();
  }

  /** The study's own files as saving would write them, by path relative to the folder. */
  public Map<String, byte[]> files() {
    return files;
  }

  /** Whether a path relative to a study's folder is one of the study's own files. */
  public static boolean isOwn(String relative) {
    return relative.equals(StudyFolder.STUDY_FILE)
        || relative.endsWith(".xmi") && (relative.startsWith(StudyFolder.SITES + "/") || relative.startsWith(StudyFolder.SERIES + "/"));
  }

  /** A digest of the study's own files. */
  public String digest() {
    return StudyDocument.digest(files);
  }

  /**
   * Builds the study again to read it. May be called from any thread.
   *
   * @throws StudyException when a part of the study is missing
   */
  public StudySession read() throws StudyException {
    return StudySession.of(StudyDocument.load(folder, files, files));
  }
}
