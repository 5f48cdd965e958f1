package daubline.cli;

import daubline.analysis.evidence.ArcMeasurement;
import daubline.base.DecimalSign;
import daubline.base.Variable;
import daubline.engine.process.ArcDiameter;
import daubline.model.Citation;
import daubline.model.Claim;
import daubline.model.EvidenceSheet;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Reckons the diameter of a surviving arc, and enters it into a study when asked. */
@Command(name = "arc", mixinStandardHelpOptions = true, description = "Reckon the diameter of a circle from what survives of it: arc --chord \"380 ± 5 mm\" "
    + "--rise \"60 ± 3 mm\"; or --chord and --angle, or --length and --angle. With --into STUDY --sheet NAME it becomes a claim.")
final class ArcCommand implements Callable<Integer> {

  @Option(names = "--chord", paramLabel = "C", description = "straight line between the ends of the arc; mm unless a unit stands after it")
  private String chord;

  @Option(names = "--rise", paramLabel = "H", description = "greatest distance of the arc from its chord")
  private String rise;

  @Option(names = "--length", paramLabel = "S", description = "length along the arc")
  private String length;

  @Option(names = "--angle", paramLabel = "ANGLE", description = "angle between the radii to the ends of the arc, in degrees")
  private String angle;

  @Option(names = "--into", paramLabel = "STUDY", description = "folder of the study that the diameter is entered into")
  private Path study;

  @Option(names = "--sheet", paramLabel = "SHEET", defaultValue = "", description = "name or id of the evidence sheet")
  private String sheet;

  @Option(names = "--as", paramLabel = "VARIABLE", defaultValue = "base_internal_diameter", description = "which diameter it is; without it ${DEFAULT-VALUE}")
  private String variable;

  @Option(names = "--citation", paramLabel = "CITATION", defaultValue = "", description = "name or id of the citation")
  private String citation;

  @Option(names = "--page", paramLabel = "PAGE", defaultValue = "", description = "page or figure")
  private String page;

  @Override
  public Integer call() throws Exception {
    ArcDiameter.Way way = way();
    ArcMeasurement.Outcome outcome = ArcMeasurement.read(way, length == null ? chord : length, way.isByAngle() ? angle : rise, DecimalSign.POINT);
    outcome.measurement().ifPresent(m -> m.lines().forEach(l -> Out.line("%s", l)));
    int wrong = outcome.findings().isEmpty() ? Out.DONE : Out.findings(outcome.findings());
    if (outcome.measurement().isPresent() && study != null) {
      enter(outcome.measurement().get());
    }
    return wrong;
  }

  private ArcDiameter.Way way() {
    if (chord != null && rise != null && length == null && angle == null) {
      return ArcDiameter.Way.CHORD_AND_RISE;
    }
    if (angle != null && rise == null && (chord == null) != (length == null)) {
      return chord != null ? ArcDiameter.Way.CHORD_AND_ANGLE : ArcDiameter.Way.LENGTH_AND_ANGLE;
    }
    throw new IllegalArgumentException("give --chord and --rise, or --chord and --angle, or --length and --angle");
  }

  private void enter(ArcMeasurement measurement) throws Exception {
    try (StudySession session = Blindness.lifted(StudySession.open(study))) {
      Variable diameter = ArcMeasurement.diameters(StudyVariables.of(session.study())).stream().filter(v -> v.id().equals(variable)).findFirst()
          .orElseThrow(() -> new IllegalArgumentException("“" + variable + "” is no diameter of remains; one of: "
              + String.join(", ", ArcMeasurement.diameters(StudyVariables.of(session.study())).stream().map(Variable::id).toList())));
      EvidenceSheet target = Named.only(session, EvidenceSheet.class, sheet, "evidence sheet");
      Citation cited = citation.isEmpty() ? null : Named.only(session, Citation.class, citation, "citation");
      session.edit("Diameter from an Arc", () -> {
        Claim claim = measurement.claim(target, diameter);
        claim.setCitation(cited);
        claim.setPage(page.isEmpty() ? null : page);
      });
      session.save();
      Out.line("entered into %s as %s", target.getName(), diameter.name());
    }
  }
}
