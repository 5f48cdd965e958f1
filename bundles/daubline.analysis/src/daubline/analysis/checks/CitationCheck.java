package daubline.analysis.checks;

import daubline.base.Finding;
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
      if (citation.getDoi() != null && !citation.getDoi().isBlank() && !Identifiers.isDoi(citation.getDoi().strip())) {
        study.report(Finding.warning("doi.form", "", "“" + citation.getDoi() + "” does not have the form of a DOI",
            "it begins with 10. and has a slash, such as 10.3390/met13050984"), citation, null);
      }
      if (citation.getIsbn() != null && !citation.getIsbn().isBlank() && !Identifiers.isIsbn(citation.getIsbn())) {
        study.report(Finding.warning("isbn.form", "", "“" + citation.getIsbn() + "” is no ISBN, or its check digit is wrong",
            "compare it with the book: 10 or 13 digits"), citation, null);
      }
    });
  }
}
