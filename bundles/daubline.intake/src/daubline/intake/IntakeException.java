package daubline.intake;

import daubline.base.Finding;
import java.util.List;

/** Nothing was imported; the findings say why and how to mend it. */
public final class IntakeException extends Exception {

  private static final long serialVersionUID = 1;

  private final transient List<Finding> findings;

  /** An exception with its findings, errors first or alone. */
  public IntakeException(List<Finding> findings) {
    super("Nothing was imported. " + findings.stream().filter(Finding::isError).findFirst().map(Finding::toString).orElse(""));
    this.findings = List.copyOf(findings);
  }

  /** What is wrong. */
  public List<Finding> findings() {
    return findings;
  }
}
