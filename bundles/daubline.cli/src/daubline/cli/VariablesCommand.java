package daubline.cli;

import daubline.base.Printed;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.session.StudyException;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the variable catalogue, or explains one variable. */
@Command(name = "variables", mixinStandardHelpOptions = true, description = "List the variables, or explain those whose id, name or group holds a word.")
final class VariablesCommand implements Callable<Integer> {

  @Parameters(index = "0", paramLabel = "WORD", arity = "0..1", description = "part of an id, name or group")
  private String word;

  @Option(names = "--of", paramLabel = "STUDY", description = "folder of a study whose own variables are listed too")
  private Path study;

  @Override
  public Integer call() throws StudyException {
    List<Variable> shown = catalogue().all().stream().filter(this::isWanted).toList();
    for (Variable variable : shown) {
      Out.line("%-28s %-44s %s", variable.id(), variable.name() + unit(variable), variable.group());
      if (word != null) {
        explain(variable);
      }
    }
    Out.line("%s", Out.count(shown.size(), "variable"));
    return shown.isEmpty() ? Out.WRONG : Out.DONE;
  }

  private Variables catalogue() throws StudyException {
    if (study == null) {
      return Variables.standard();
    }
    try (StudySession session = StudySession.read(study)) {
      return StudyVariables.of(session.study());
    }
  }

  private boolean isWanted(Variable variable) {
    String all = (variable.id() + " " + variable.name() + " " + variable.group()).toLowerCase(Locale.ROOT);
    return word == null || all.contains(word.toLowerCase(Locale.ROOT));
  }

  private static String unit(Variable variable) {
    return variable.unit().symbol().isEmpty() ? "" : " (" + variable.unit().symbol() + ")";
  }

  private static void explain(Variable variable) {
    Out.line("    %s", variable.meaning());
    if (!variable.words().isEmpty()) {
      Out.line("    one of: %s", String.join(", ", variable.words()));
    }
    if (!Double.isNaN(variable.plausibleLow())) {
      Out.line("    plausible: %s to %s %s", Printed.number(variable.unit().fromCanonical(variable.plausibleLow())),
          Printed.number(variable.unit().fromCanonical(variable.plausibleHigh())), variable.unit().symbol());
    }
    if (!variable.evidencedBy().isEmpty()) {
      Out.line("    evidenced by: %s", variable.evidencedBy());
    }
    Out.line("    recorded: %s", variable.places().stream().map(p -> p.name().toLowerCase(Locale.ROOT)).sorted().collect(Collectors.joining(", ")));
    Out.line("    source: %s", variable.source());
  }
}
