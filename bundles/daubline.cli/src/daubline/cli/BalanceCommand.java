package daubline.cli;

import daubline.analysis.balance.SlagSources;
import daubline.analysis.balance.TrialBalance;
import daubline.analysis.deposit.HiddenNames;
import daubline.base.Printed;
import daubline.base.Units;
import daubline.engine.process.balance.ElementBalance;
import daubline.engine.process.balance.ForwardBalance;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.slag.SlagBehaviour;
import daubline.export.Discretion;
import daubline.session.StudySession;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The mass balance of trials, forward from the charge and backward from the slag. */
@Command(name = "balance", mixinStandardHelpOptions = true,
    description = "Mass balance of trials: what went in, what was found, what is left over; where the slag came from; each yield by its own formula.")
final class BalanceCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Option(names = {"--trial", "--series"}, paramLabel = "NAME", description = "only this trial or series, by name or id; may be repeated")
  private List<String> wanted = List.of();

  @Option(names = "--draws", paramLabel = "N", defaultValue = "1000", description = "draws of the backward balance (default: ${DEFAULT-VALUE})")
  private int draws;

  @Option(names = "--seed", paramLabel = "N", defaultValue = "20260101", description = "seed of the random numbers (default: ${DEFAULT-VALUE})")
  private long seed;

  @Option(names = "--json", description = "as JSON")
  private boolean json;

  @Override
  public Integer call() throws Exception {
    if (draws < 1 || draws > 1_000_000) {
      throw new IllegalArgumentException("--draws must lie between 1 and 1000000, is " + draws);
    }
    try (StudySession session = study.read()) {
      List<TrialBalance> balances = TrialBalance.of(session, wanted, draws, seed);
      if (json) {
        BalanceJson.write(balances, new Discretion(HiddenNames.of(session.study())), System.out);
      } else {
        balances.forEach(BalanceCommand::print);
      }
      if (balances.isEmpty()) {
        System.err.println("error: no trial to balance" + (wanted.isEmpty() ? "" : " is called " + String.join(", ", wanted)));
      }
      return balances.stream().anyMatch(b -> b.forward().isPresent()) ? Out.DONE : Out.WRONG;
    }
  }

  private static void print(TrialBalance b) {
    Out.line("%s", b.name());
    b.charged().forEach(p -> Out.line("  in: %-14s %8s kg dry, %s kg iron", p.name(), Printed.fixed(p.mass(), 2), Printed.fixed(p.mass() * p.analysis().iron(), 2)));
    b.forward().ifPresent(f -> forward(b, f));
    if (!b.elements().isEmpty()) {
      Out.line("  %-8s %9s %9s %21s", "element", "in kg", "found kg", "left over kg");
      b.elements().forEach(BalanceCommand::element);
    }
    if (!b.tracers().isEmpty()) {
      Out.line("  slag mass that each oxide asks for, kg: %s%s", b.tracers().stream().map(t -> t.oxide() + " " + Printed.fixed(t.slag(), 1))
          .collect(Collectors.joining(", ")), Double.isNaN(b.weighed()) ? "" : "; weighed " + Printed.fixed(b.weighed(), 1));
    }
    b.indices().forEach(i -> Out.line("  %s = %s   [%s]", i.name(), Printed.fixed(i.value(), 2), i.formula()));
    b.yields().forEach(y -> Out.line("  %s = %s   [%s]", y.yield().label(), Printed.number(y.value(), 3), y.yield().formula()));
    b.sources().ifPresent(BalanceCommand::sources);
    b.slag().ifPresent(BalanceCommand::slag);
    b.findings().forEach(f -> Out.line("  %s", f));
    Out.line("");
  }

  private static void forward(TrialBalance b, ForwardBalance f) {
    Out.line("  forward: %s kg metal (%s), at most %s kg beside fayalite; slag %s kg: %s", Printed.fixed(f.metal(), 2), b.forecast() ? "forecast" : "weighed",
        Printed.fixed(f.mostMetal(), 2), Printed.fixed(f.slag().total(), 1), f.slag().masses().entrySet().stream()
            .sorted(Map.Entry.<Oxide, Double>comparingByValue().reversed()).filter(e -> e.getValue() > 0.005 * f.slag().total())
            .map(e -> e.getKey().formula() + " " + Printed.fixed(100 * e.getValue() / f.slag().total(), 1) + " %").collect(Collectors.joining(", ")));
  }

  private static void element(ElementBalance e) {
    Out.line("  %-8s %9s %9s %10s ± %-8s %s", e.element(), Printed.fixed(e.in(), 3), Printed.fixed(e.out(), 3), Printed.fixed(e.remainder(), 3),
        Printed.fixed(e.sigma(), 3), e.closes() ? "closes within 2 sigma" : "does not close");
  }

  private static void slag(TrialBalance.HotSlag s) {
    SlagBehaviour b = s.behaviour();
    Out.line("  slag analysed, at %s °C, the hottest charge by the shaft model: wholly liquid above %s ± %s °C; %s %% solid; density %s kg/m³", Printed.fixed(s.celsius(), 0),
        Printed.fixed(b.liquidus().temperature() - Units.ZERO_CELSIUS, 0), Printed.fixed(b.liquidus().sigma(), 0), Printed.fixed(100 * b.solids(), 0), Printed.fixed(b.density(), 0));
    Out.line("  viscosity of its liquid, Pa·s: %s; with the solids %s", b.viscosity().entrySet().stream().map(e -> e.getKey().label() + " " + Printed.number(e.getValue(), 2))
        .collect(Collectors.joining(", ")), Double.isInfinite(b.effective()) ? "stiff" : Printed.number(b.effective(), 2));
    Out.line("  phases it can form: %s; in FeO–SiO2–Al2O3: %s, %s, %s %%", s.phases(), Printed.fixed(100 * b.position().feo(), 0), Printed.fixed(100 * b.position().silica(), 0),
        Printed.fixed(100 * b.position().alumina(), 0));
  }

  private static void sources(SlagSources s) {
    for (int i = 0; i < s.sources().size(); i++) {
      Out.line("  backward: %-14s %s kg per kg of slag (5–95 %%: %s–%s)", s.sources().get(i).name(), Printed.fixed(s.fit().amounts().get(i), 3),
          Printed.fixed(s.spread().low().get(i), 3), Printed.fixed(s.spread().high().get(i), 3));
    }
    Out.line("  backward: iron not in the slag %s kg per kg of slag (5–95 %%: %s–%s), %s of the iron that came; misfit %s per degree of freedom, condition %s",
        Printed.fixed(s.spread().metal().get(1), 3), Printed.fixed(s.spread().metal().get(0), 3), Printed.fixed(s.spread().metal().get(2), 3),
        Double.isNaN(s.recovery()) ? "–" : Printed.fixed(100 * s.recovery(), 0) + " %", Printed.number(s.fit().reducedChi2(), 2),
        Printed.number(s.fit().condition(), 2));
  }
}
