package daubline.analysis.checks;

import daubline.base.Identifiers;
import daubline.model.Citation;

/** Citations whose numbers cannot be right; checked by their form alone, nothing is looked up. */
final class CitationCheck implements Check {

  @Override
  public String id() {
    return "citation";
  }

  @Override
  public String description() {
    return "Digital object identifiers and book numbers of citations that do not have the form of one.";
  }

  @Override
  public void run(CheckedStudy study) {
    study.each(Citation.class, citation -> {
      Identifiers.doiFinding(citation.getDoi()).ifPresent(f -> study.report(f, citation, null));
      Identifiers.isbnFinding(citation.getIsbn()).ifPresent(f -> study.report(f, citation, null));
    });
  }
}
