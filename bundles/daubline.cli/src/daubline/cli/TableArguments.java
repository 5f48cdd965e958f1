package daubline.cli;

import daubline.export.TableOptions;
import java.util.List;
import picocli.CommandLine.Option;

/** What is chosen about the content of tables. */
final class TableArguments {

  @Option(names = "--oxides", split = ",", paramLabel = "FORMULA", description = "oxides that stand first in the chemistry, such as SiO2,Al2O3,FeO; the others "
      + "follow in the customary order")
  private List<String> oxides = List.of();

  @Option(names = "--iron", paramLabel = "FORM", defaultValue = "AS_PRINTED",
      description = "how iron is given beside what the laboratory printed: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE})")
  private TableOptions.Iron iron;

  TableOptions options() {
    return new TableOptions(oxides, iron);
  }
}
