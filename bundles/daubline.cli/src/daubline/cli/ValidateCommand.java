package daubline.cli;

import daubline.validation.Validation;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes what the engines say beside what the world measured. */
@Command(name = "validate", mixinStandardHelpOptions = true,
    description = "Write the validation page: what the engines say beside published measurements, with plots and misses.")
final class ValidateCommand implements Callable<Integer> {

  @Option(names = "--to", paramLabel = "DIR", defaultValue = "docs", description = "folder to write into (default: ${DEFAULT-VALUE})")
  private Path folder;

  @Override
  public Integer call() throws Exception {
    List<Path> files = Validation.write(Validation.sections(), folder);
    Out.line("wrote %s and %d plots", files.get(0), files.size() - 1);
    return Out.DONE;
  }
}
