package daubline.session;

import daubline.base.Finding;

/** A study could not be opened, changed or saved; the finding says what, where and how to mend it. */
public final class StudyException extends Exception {

  private static final long serialVersionUID = 1;

  private final transient Finding finding;

  /** An exception with its finding. */
  public StudyException(Finding finding) {
    this(finding, null);
  }

  /** An exception with its finding and the cause underneath. */
  public StudyException(Finding finding, Throwable cause) {
    super(finding.toString(), cause);
    this.finding = finding;
  }

  /** What is wrong and how to mend it. */
  public Finding finding() {
    return finding;
  }
}
