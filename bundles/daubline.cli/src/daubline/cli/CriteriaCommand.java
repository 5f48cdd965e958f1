package daubline.cli;

import daubline.criteria.Criteria;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.Setting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the criteria, or explains one. */
@Command(name = "criteria", mixinStandardHelpOptions = true, description = "List the criteria of comparison, or explain one with its settings and sources.")
final class CriteriaCommand implements Callable<Integer> {

  @Parameters(index = "0", paramLabel = "ID", arity = "0..1", description = "id of a criterion")
  private String id;

  @Option(names = "--pages", paramLabel = "FOLDER", description = "write the page of the guide about each criterion into a folder instead")
  private Path pages;

  @Override
  public Integer call() throws IOException {
    List<Criterion> shown = Criteria.all().stream().filter(c -> id == null || c.id().equals(id)).toList();
    if (shown.isEmpty()) {
      Out.line("there is no criterion “%s”; without an id all are listed", id);
      return Out.WRONG;
    }
    if (pages != null) {
      write(shown);
      return Out.DONE;
    }
    for (Criterion criterion : shown) {
      Out.line("%-32s %-40s %s", criterion.id(), criterion.name(), criterion.group().word());
      if (id != null) {
        explain(criterion);
      }
    }
    return Out.DONE;
  }

  private void write(List<Criterion> criteria) throws IOException {
    Files.createDirectories(pages);
    for (Criterion criterion : criteria) {
      Files.writeString(pages.resolve(CriterionPage.file(criterion)), CriterionPage.of(criterion));
    }
    Out.line("wrote %d pages into %s", criteria.size(), pages);
  }

  private static void explain(Criterion criterion) {
    Out.line("    %s", criterion.meaning());
    Out.line("    reads: %s", criterion.inputs().isEmpty() ? "residue masses or analyses" : String.join(", ", criterion.inputs()));
    for (Setting setting : criterion.settings()) {
      Out.line("    setting criterion.%s.%s: %s, standard %s", criterion.id(), setting.key(), setting.name(), setting.printed(setting.standard()));
      Out.line("        %s", setting.meaning());
      Out.line("        source: %s", setting.source());
    }
    criterion.sources().forEach(source -> Out.line("    source: %s", source));
  }
}
