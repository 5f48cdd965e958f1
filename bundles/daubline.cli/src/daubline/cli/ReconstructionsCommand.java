package daubline.cli;

import daubline.analysis.evidence.Difference;
import daubline.analysis.evidence.Hypotheses;
import daubline.analysis.record.ReconstructionData;
import daubline.base.Basis;
import daubline.base.Variables;
import daubline.model.Reconstruction;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What reconstructions rest on, and in what two of them differ. */
@Command(name = "reconstructions", mixinStandardHelpOptions = true,
    description = "Say what each reconstruction rests on and how much of it is guessed; with two names, only in what these two differ.")
final class ReconstructionsCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Parameters(index = "1", arity = "0..1", paramLabel = "FIRST", description = "name or id of a reconstruction")
  private String first;

  @Parameters(index = "2", arity = "0..1", paramLabel = "SECOND", description = "name or id of another")
  private String second;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      if (first == null) {
        Hypotheses.all(session).forEach(ReconstructionsCommand::say);
        return Out.DONE;
      }
      if (second == null) {
        throw new IllegalArgumentException("name a second reconstruction to compare “" + first + "” with");
      }
      Variables variables = StudyVariables.of(session.study());
      compare(one(session, first), one(session, second), variables);
      return Out.DONE;
    }
  }

  private static ReconstructionData one(StudySession session, String name) {
    return Hypotheses.of(session, Named.only(session, Reconstruction.class, name, "reconstruction"));
  }

  private static void say(ReconstructionData r) {
    String counts = Stream.of(Basis.values()).map(b -> b.word() + " " + r.counts().getOrDefault(b, 0)).collect(Collectors.joining(", "));
    Page.hang(0, 4, r.name() + (r.retired() ? " (retired)" : "") + ": " + r.choices().size() + " choices: " + counts + (r.unsaid() > 0 ? ", not said " + r.unsaid() : "")
        + "; guesses " + Page.percent(r.guesses()));
  }

  private static void compare(ReconstructionData a, ReconstructionData b, Variables variables) {
    List<Difference> differences = Difference.between(a, b, variables);
    Out.line("%s and %s differ in %d properties; %d are the same in both", a.name(), b.name(), differences.size(), Difference.same(a, b, variables));
    for (Difference d : differences) {
      Page.say(0, d.property());
      Page.hang(2, 6, a.name() + ": " + side(d, true, variables));
      Page.hang(2, 6, b.name() + ": " + side(d, false, variables));
    }
  }

  private static String side(Difference d, boolean ofFirst, Variables variables) {
    return d.value(ofFirst, variables).isEmpty() ? "nothing chosen" : d.value(ofFirst, variables) + " – " + d.basis(ofFirst);
  }
}
