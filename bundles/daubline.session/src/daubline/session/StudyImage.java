package daubline.session;

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

  /**
   * Builds the study again to read it. May be called from any thread.
   *
   * @throws StudyException when a part of the study is missing
   */
  public StudySession read() throws StudyException {
    return StudySession.of(StudyDocument.load(folder, files, files));
  }
}
