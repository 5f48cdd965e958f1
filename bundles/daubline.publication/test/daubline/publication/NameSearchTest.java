package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names in files that go out as delivered. */
class NameSearchTest {

  @TempDir
  Path folder;

  private boolean finds(String text, java.nio.charset.Charset charset) throws Exception {
    return NameSearch.finds(Files.write(folder.resolve("log.csv"), text.getBytes(charset)), List.of("Ina Müller", " "));
  }

  @Test
  void aNameIsFoundWhereverItStands() throws Exception {
    for (int before : List.of(0, 5, (1 << 20) - 4, 1 << 20, (2 << 20) - 9)) {
      assertTrue(finds("x".repeat(before) + "Ina Müller", StandardCharsets.UTF_8), "after " + before);
      assertTrue(finds("x".repeat(before) + "Ina Müller;1", StandardCharsets.ISO_8859_1), "after " + before);
    }
    assertFalse(finds("x".repeat(3 << 20) + " Ina Mueller", StandardCharsets.UTF_8));
    assertFalse(finds("", StandardCharsets.UTF_8));
  }
}
