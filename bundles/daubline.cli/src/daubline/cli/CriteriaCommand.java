package daubline.cli;

import daubline.base.Wording;
import daubline.criteria.Criteria;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.Setting;
import daubline.publication.PublicationOptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the criteria, or explains one. */
@Command(name = "criteria", mixinStandardHelpOptions = true, description = "List the criteria of comparison, or explain one with its settings and sources.")
final class CriteriaCommand implements Callable<Integer> {

  @Parameters(index = "0", paramLabel = "ID", arity = "0..1", description = "id of a criterion")
  private String id;

  @ArgGroup(exclusive = false)
  private Pages pages;

  /** Pages of the guide in place of a list. */
  private static final class Pages {

    @Option(names = "--pages", required = true, paramLabel = "FOLDER", description = "write the page of the guide about each criterion into a folder instead")
    private Path folder;

    @Option(names = "--language", paramLabel = "CODE", defaultValue = PublicationOptions.ENGLISH, description = "language of these pages: en or de (default: ${DEFAULT-VALUE})")
    private String language;
  }

  @Override
  public Integer call() throws IOException {
    List<Criterion> shown = Criteria.all().stream().filter(c -> id == null || c.id().equals(id)).toList();
    if (shown.isEmpty()) {
      Out.line("there is no criterion “%s”; without an id all are listed", id);
      return Out.WRONG;
    }
    if (pages != null) {
      return write(shown);
    }
    for (Criterion criterion : shown) {
      Out.line("%-32s %-40s %s", criterion.id(), criterion.name(), criterion.group().word());
      if (id != null) {
        explain(criterion);
      }
    }
    return Out.DONE;
  }

  private int write(List<Criterion> criteria) throws IOException {
    if (!PublicationOptions.LANGUAGES.contains(pages.language)) {
      Out.line("pages are written in %s, not in “%s”", String.join(", ", PublicationOptions.LANGUAGES), pages.language);
      return Out.WRONG;
    }
    Files.createDirectories(pages.folder);
    for (Criterion criterion : criteria) {
      Files.writeString(pages.folder.resolve(CriterionPage.file(criterion)), CriterionPage.of(criterion, Wording.of(pages.language)));
    }
    Out.line("wrote %d pages into %s", criteria.size(), pages.folder);
    return Out.DONE;
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
