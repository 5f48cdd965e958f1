package daubline.analysis.checks;

import daubline.analysis.Preservation;
import daubline.base.Finding;
import daubline.base.ValueKind;
import daubline.model.Claim;
import daubline.session.Readings;

/** Heights to which a property could be seen: what they exclude, and what they cannot concern. */
final class PreservationCheck implements Check {

  /** The height of the wall itself, always a lower limit; a limit stated for it says only why. */
  private static final String WHOLE_WALL = "surviving_height";

  @Override
  public String id() {
    return "preserved";
  }

  @Override
  public String description() {
    return "Claims above the height to which they could be seen, heights without a reason, and heights at properties that have none.";
  }

  @Override
  public void run(CheckedStudy study) {
    study.each(Claim.class, claim -> {
      if (claim.getPreservationLimit() != null && claim.getVariable() != null) {
        check(study, claim);
      }
    });
  }

  private static void check(CheckedStudy study, Claim claim) {
    String name = study.variables().find(claim.getVariable()).map(v -> v.name()).orElse(claim.getVariable());
    boolean wholeWall = WHOLE_WALL.equals(claim.getVariable());
    if (!wholeWall && !Preservation.concerns(claim.getVariable())) {
      study.report(Finding.note("preserved.none", "", name + " is no height of the wall, so the height to which it was preserved changes nothing",
          "write “not preserved” or “at least” as its value, or take the height away"), claim, claim.getVariable());
      return;
    }
    boolean gone = Preservation.seen(claim.getVariable(), Readings.amount(claim), claim.getPreservationLimit()).kind() == ValueKind.NOT_PRESERVED;
    if (gone && Readings.amount(claim).kind() != ValueKind.NOT_PRESERVED) {
      study.report(Finding.warning("preserved.above", "", name + " is claimed above the height to which it could be seen, and is not compared",
          "mend the value or the height; when neither is known, write “not preserved”"), claim, claim.getVariable());
    }
    if (claim.getLimitBecause() == null || claim.getLimitBecause().isBlank()) {
      study.report(Finding.note("preserved.reason", "", "nothing says why " + name + " could not be seen further up", "say why: broken off, robbed, not dug"), claim,
          claim.getVariable());
    }
  }
}
