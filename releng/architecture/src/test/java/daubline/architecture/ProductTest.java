package daubline.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is handed to users runs commands with nothing but its own folder: every library that a command needs is in it. */
class ProductTest {

  private static final Path PRODUCT = Path.of("releng/daubline.product/target/products/daubline/linux/gtk/x86_64/daubline");

  @TempDir
  Path folder;

  @Test
  void theProductChecksComparesAndPublishes() throws Exception {
    assertTrue(run("check", "seeds/aldervale").contains("0 errors"));
    assertTrue(run("compare", "seeds/open-smelts").contains("coverage"));
    String published = run("publish", "seeds/aldervale", "--to", folder.resolve("out").toString());
    assertTrue(published.contains("deposit"), published);
    assertTrue(Files.exists(folder.resolve("out/figures/ranking.pdf")));
  }

  @Test
  void theProductPrintsFieldSheets() throws Exception {
    Path pdf = folder.resolve("sheets.pdf");
    run("sheets", "seeds/aldervale", "--out", pdf.toString());
    assertTrue(new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1).startsWith("%PDF"));
  }

  private String run(String... arguments) throws Exception {
    assumeTrue(Files.isExecutable(PRODUCT), "there is a product for Linux x86_64 only");
    List<String> command = new ArrayList<>(List.of(PRODUCT.toString()));
    command.addAll(List.of(arguments));
    File printed = folder.resolve("printed.txt").toFile();
    ProcessBuilder process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(printed);
    process.environment().put("DAUBLINE_JAVA", Path.of(System.getProperty("java.home"), "bin", "java").toString());
    int exit = process.start().waitFor();
    String text = Files.readString(printed.toPath());
    assertEquals(0, exit, text);
    return text;
  }
}
