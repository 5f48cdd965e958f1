package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Wording;
import daubline.criteria.Criteria;
import daubline.engine.inference.Criterion;
import daubline.publication.PublicationOptions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The guide has a page for every criterion in each language, made of what the criterion says of itself today. */
class CriterionPagesTest {

  private static final Path HELP = Path.of("bundles/daubline.help");

  /** The folder of the guide in a language. */
  static Path guide(String language) {
    return language.equals(PublicationOptions.ENGLISH) ? HELP : HELP.resolve("nl").resolve(language);
  }

  static List<String> languages() {
    return PublicationOptions.LANGUAGES;
  }

  @ParameterizedTest
  @MethodSource("languages")
  void everyCriterionHasAFreshPageInTheContents(String language) throws Exception {
    Path folder = guide(language).resolve("html/criteria");
    String mend = "; write it anew: releng/run criteria --pages " + folder + " --language " + language;
    String contents = Files.readString(guide(language).resolve("toc.xml"));
    for (Criterion criterion : Criteria.all()) {
      Path page = folder.resolve(CriterionPage.file(criterion));
      assertTrue(Files.exists(page), page + " is missing" + mend);
      assertEquals(CriterionPage.of(criterion, Wording.of(language)), Files.readString(page), page + " is stale" + mend);
      String topic = "<topic label=\"" + Wording.of(language).apply(criterion.name()) + "\" href=\"html/criteria/" + CriterionPage.file(criterion) + "\"/>";
      assertTrue(contents.contains(topic), guide(language) + "/toc.xml lacks " + topic);
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void noPageIsLeftOfACriterionThatIsGone(String language) throws Exception {
    List<String> known = Criteria.all().stream().map(CriterionPage::file).toList();
    try (Stream<Path> pages = Files.list(guide(language).resolve("html/criteria"))) {
      assertEquals(List.of(), pages.map(p -> p.getFileName().toString()).filter(p -> !known.contains(p)).toList());
    }
  }
}
