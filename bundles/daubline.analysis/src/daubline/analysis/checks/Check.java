package daubline.analysis.checks;

/** One integrity check; it reports what it finds and changes nothing. */
public interface Check {

  /** A stable short name; the codes of its findings begin with it. */
  String id();

  /** What it looks for, in one sentence. */
  String description();

  /** Looks through the study. */
  void run(CheckedStudy study);
}
