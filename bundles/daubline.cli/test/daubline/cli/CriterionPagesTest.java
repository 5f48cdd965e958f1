package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.criteria.Criteria;
import daubline.engine.inference.Criterion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The guide has a page for every criterion, made of what the criterion says of itself today. */
class CriterionPagesTest {

  private static final Path HELP = Path.of("bundles/daubline.help");
  private static final String MEND = "; write it anew: releng/run criteria --pages bundles/daubline.help/html/criteria";

  @Test
  void everyCriterionHasAFreshPageInTheContents() throws Exception {
    String contents = Files.readString(HELP.resolve("toc.xml"));
    for (Criterion criterion : Criteria.all()) {
      Path page = HELP.resolve("html/criteria").resolve(CriterionPage.file(criterion));
      assertTrue(Files.exists(page), page + " is missing" + MEND);
      assertEquals(CriterionPage.of(criterion), Files.readString(page), page + " is stale" + MEND);
      assertTrue(contents.contains("html/criteria/" + CriterionPage.file(criterion)), "toc.xml lacks a topic for " + criterion.name()
          + ": <topic label=\"" + criterion.name() + "\" href=\"html/criteria/" + CriterionPage.file(criterion) + "\"/>");
    }
  }

  @Test
  void noPageIsLeftOfACriterionThatIsGone() throws Exception {
    List<String> known = Criteria.all().stream().map(CriterionPage::file).toList();
    try (Stream<Path> pages = Files.list(HELP.resolve("html/criteria"))) {
      assertEquals(List.of(), pages.map(p -> p.getFileName().toString()).filter(p -> !known.contains(p)).toList());
    }
  }
}
