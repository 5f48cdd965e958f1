package daubline.analysis.checks;

import daubline.base.Finding;
import daubline.model.Claim;
import daubline.model.Sheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Several claims about one property, of which nobody picked one yet. */
final class ContradictionCheck implements Check {

  @Override
  public String id() {
    return "claims";
  }

  @Override
  public String description() {
    return "Contradictory claims about one property; picks without a reason, and more than one pick.";
  }

  @Override
  public void run(CheckedStudy study) {
    study.each(Sheet.class, sheet -> check(study, sheet));
  }

  private void check(CheckedStudy study, Sheet sheet) {
    Map<String, List<Claim>> byVariable = sheet.getClaims().stream().filter(c -> c.getVariable() != null)
        .collect(Collectors.groupingBy(Claim::getVariable, LinkedHashMap::new, Collectors.toList()));
    byVariable.forEach((variable, claims) -> {
      if (claims.size() > 1 && claims.stream().noneMatch(Claim::isPicked)) {
        study.report(Finding.note("claims.several", "", claims.size() + " claims about " + name(study, variable) + " stand side by side",
            "each is compared and the spread is shown; pick one and say why if you can decide"), claims.get(0), variable);
      }
      if (claims.stream().filter(Claim::isPicked).count() > 1) {
        study.report(Finding.warning("claims.picks", "", "more than one claim about " + name(study, variable) + " is picked", "pick one of them; each is compared until then"),
            claims.get(0), variable);
      }
    });
    sheet.getClaims().stream().filter(c -> c.isPicked() && (c.getPickedBecause() == null || c.getPickedBecause().isBlank()))
        .forEach(c -> study.report(Finding.warning("claims.reason", "", "the claim about " + name(study, c.getVariable())
            + " was picked without a reason", "say why it was picked"), c, c.getVariable()));
  }

  private static String name(CheckedStudy study, String variable) {
    return study.variables().find(variable).map(v -> v.name()).orElse(variable);
  }
}
