package daubline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import daubline.base.Variables;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * docs/importing.md lists the columns that the forms have; when it does not, the list as it should be is written to
 * releng/flat/target.
 */
class ImportingDocTest {

  private static final Path PAGE = Path.of("docs/importing.md");
  private static final String MARK = "## The forms, column by column\n";

  @Test
  void theColumnsAreThoseOfTheForms() throws Exception {
    String page = Files.readString(PAGE);
    String wanted = page.substring(0, page.indexOf(MARK)) + MARK + columns();
    Path proposed = Path.of("releng/flat/target/importing.md");
    if (!page.equals(wanted)) {
      Files.writeString(proposed, wanted);
    }
    assertEquals(wanted, page, "copy " + proposed + " to " + PAGE);
  }

  private static String columns() {
    StringBuilder text = new StringBuilder();
    for (Form form : Forms.all()) {
      text.append("\n### ").append(form.target().word()).append("\n\n").append(form.explanation())
          .append("\n\n| column | holds | meaning |\n|---|---|---|\n");
      form.columns(Variables.standard()).stream().filter(c -> !isOfTheCatalogue(c)).forEach(c -> text.append(row(c)));
    }
    return text.toString();
  }

  /** Variables are listed in shared/variables.csv, not here. */
  private static boolean isOfTheCatalogue(FormColumn column) {
    return column.variable() != null && Variables.standard().find(column.variable().id()).isPresent();
  }

  private static String row(FormColumn column) {
    String words = column.words().isEmpty() ? "" : " One of: " + column.words().stream().collect(Collectors.joining(", "))
        + ".";
    String holds = column.content().name().toLowerCase(Locale.ROOT).replace('_', ' ') + (column.required() ? ", needed" : "");
    return "| `" + column.heading() + "` | " + holds + " | " + column.meaning() + words + " |\n";
  }
}
