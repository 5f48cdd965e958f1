package daubline.analysis.checks;

import daubline.base.Finding;
import daubline.model.Claim;
import daubline.model.EvidenceSheet;

/** Evidence without an origin: nobody can check it. */
final class OriginCheck implements Check {

  @Override
  public String id() {
    return "origin";
  }

  @Override
  public String description() {
    return "Claims of evidence sheets that name neither a citation nor the person who recorded them.";
  }

  @Override
  public void run(CheckedStudy study) {
    study.each(Claim.class, claim -> {
      if (claim.eContainer() instanceof EvidenceSheet && claim.getCitation() == null && claim.getBy() == null) {
        String name = study.variables().find(claim.getVariable() == null ? "" : claim.getVariable()).map(v -> v.name()).orElse(claim.getVariable());
        study.report(Finding.warning("origin.none", "", name + " has neither a citation nor a recorder",
            "choose the citation and give the page, or say who recorded it"), claim, claim.getVariable());
      }
    });
  }
}
