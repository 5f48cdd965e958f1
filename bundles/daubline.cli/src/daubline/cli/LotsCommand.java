package daubline.cli;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.MoistureBasis;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Units;
import daubline.model.Lot;
import daubline.model.Study;
import daubline.model.Treatment;
import daubline.session.StudySession;
import daubline.session.store.LotFindings;
import daubline.session.store.LotMass;
import daubline.session.store.LotMoisture;
import daubline.session.store.LotTrace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What is in the store, and the trace of one lot. */
@Command(name = "lots", mixinStandardHelpOptions = true,
    description = "List the lots with what is left, the water on both bases and the dry mass; with a name, trace the lot to its deliveries and its trials.")
final class LotsCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Parameters(index = "1", arity = "0..1", paramLabel = "LOT", description = "name or id of a lot")
  private String lot;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      if (lot != null) {
        LotTrace.of(session.study(), Named.only(session, Lot.class, lot, "lot")).forEach(LotsCommand::say);
        return Out.DONE;
      }
      List<List<String>> rows = new ArrayList<>(List.of(List.of("lot", "material", "held", "charged", "put into lots", "left", "water (wet)", "water (dry)", "dry mass")));
      session.study().getLots().forEach(l -> rows.add(row(session.study(), l)));
      Page.table(0, 2, rows);
      List<Finding> findings = session.study().getLots().stream().flatMap(l -> Stream.concat(LotFindings.of(session.study(), l).stream(),
          Stream.concat(l.getTreatments().stream().flatMap(LotsCommand::step), LotMoisture.finding(l).stream())).map(f -> f.at(l.getName()))).toList();
      return findings.isEmpty() ? Out.DONE : Out.findings(findings);
    }
  }

  /** What is wrong with a step and its sieve bands. */
  private static Stream<Finding> step(Treatment step) {
    return Stream.concat(LotFindings.of(step).stream(), step.getBands().stream().flatMap(b -> LotFindings.of(b).stream()));
  }

  private static List<String> row(Study study, Lot lot) {
    Optional<LotMass> mass = LotMass.of(study, lot);
    return List.of(String.valueOf(lot.getName()), lot.getMaterial() == null ? "" : lot.getMaterial().word(), mass.map(m -> kg(m.held())).orElse("not weighed"),
        mass.map(m -> kg(m.charged())).orElse("–"), mass.map(m -> kg(m.taken())).orElse("–"), mass.map(m -> kg(m.left())).orElse("–"), water(lot, MoistureBasis.WET),
        water(lot, MoistureBasis.DRY), LotMoisture.dryMass(lot).map(LotsCommand::kg).orElse("–"));
  }

  private static String water(Lot lot, MoistureBasis basis) {
    return LotMoisture.of(lot).map(w -> Printed.withUnit(w.on(basis), Units.find(Quantity.FRACTION, "%").orElseThrow())).orElse("–");
  }

  private static String kg(Amount mass) {
    return mass.value() == 0 ? "0" : Printed.withUnit(mass, Units.canonical(Quantity.MASS));
  }

  private static void say(LotTrace.Line line) {
    String how = switch (line.kind()) {
      case ORIGIN -> "made from ";
      case LOT -> "";
      case MADE -> "went into ";
      case TRIAL -> line.mass().isPresent() ? "charged in " : "listed in ";
    };
    Page.hang(2 * line.depth(), 2 * line.depth() + 2, how + line.thing().getName() + line.mass().map(m -> ", " + kg(m)).orElse("") + (line.on().isEmpty() ? "" : ", " + line.on()));
  }
}
