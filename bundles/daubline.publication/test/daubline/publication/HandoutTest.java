package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.StudyResults;
import daubline.analysis.record.PersonData;
import daubline.analysis.record.StudyRecord;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages for visitors. */
class HandoutTest {

  @TempDir
  static Path folder;
  private static StudyRecord record;
  private static String html;

  @BeforeAll
  static void write() throws Exception {
    StudyResults results = PublicationTest.results("aldervale", 2);
    record = results.snapshot().record();
    Publication.write(results, Optional.empty(), folder.resolve("out"),
        PublicationOptions.standard("0.0", List.of()).with(new FigureOptions(Set.of(), 300, Double.NaN)), Progress.NONE);
    html = Files.readString(folder.resolve("out/handout.html"));
  }

  @Test
  void nobodyIsNamedWithoutConsent() {
    List<PersonData> unnamed = record.people().stream().filter(p -> !p.mayPublishName()).toList();
    assertFalse(unnamed.isEmpty(), "the study has somebody who did not consent");
    assertEquals(List.of(), unnamed.stream().map(PersonData::name).filter(html::contains).toList());
    assertEquals(List.of(), record.people().stream().filter(PersonData::mayPublishName).map(PersonData::name).filter(n -> !html.contains(n)).toList());
    assertTrue(html.contains("and " + unnamed.size() + (unnamed.size() == 1 ? " person" : " people")), "the others are counted");
  }

  @Test
  void itTellsFailuresAndClaimsNoMoreThanItMay() {
    assertTrue(html.contains("Aldervale 4") && html.contains("told here too"), "the failed fire is told");
    for (String word : List.of("proved", "proves", "matches", "true ")) {
      assertFalse(html.contains(word), word);
    }
    assertTrue(html.contains("Local rules"));
  }

  @Test
  void theWordsAreShort() {
    // plain language: sentences of 15 to 20 words on average (UK Government Digital Service, content design, from memory)
    String text = html.replaceAll("(?s)<style>.*?</style>|<figure>.*?</figure>", "").replaceAll("<[^>]+>", " ");
    String[] sentences = text.split("[.;:!?]\\s");
    int words = text.strip().split("\\s+").length;
    assertTrue(words > 150 && words / (double) sentences.length <= 20, words + " words in " + sentences.length + " sentences");
  }

  @Test
  void theDocumentSaysTheSame() throws Exception {
    try (var in = Files.newInputStream(folder.resolve("out/handout.docx")); var document = new org.apache.poi.xwpf.usermodel.XWPFDocument(in)) {
      String text = String.join("\n", document.getParagraphs().stream().map(p -> p.getText()).toList());
      for (String heading : List.of("What We Ask", "What Was Dug Up", "What We Did", "What Came of It", "Who Took Part")) {
        assertTrue(text.contains(heading) && html.contains(heading), heading);
      }
    }
  }

  @Test
  void trialsOfOneNameKeepTheirOwnMasses() throws Exception {
    try (daubline.session.StudySession session = daubline.session.StudySession.create(folder.resolve("twins"), "Twins")) {
      session.edit("twins", () -> {
        for (double bloom : new double[] {1.5, 3.5}) {
          daubline.model.Series series = daubline.model.ModelFactory.eINSTANCE.createSeries();
          daubline.model.Trial trial = daubline.model.ModelFactory.eINSTANCE.createTrial();
          trial.setName("T1");
          trial.setStatus(daubline.base.TrialStatus.RECORDED);
          daubline.model.StagedValue value = daubline.model.ModelFactory.eINSTANCE.createStagedValue();
          value.setStage(daubline.base.Stage.AS_FIRED);
          value.setVariable("bloom_mass");
          daubline.session.Readings.put(value, daubline.base.Amount.exact(bloom));
          trial.getValues().add(value);
          series.getTrials().add(trial);
          session.study().getSeries().add(series);
        }
      });
      StudyResults results = daubline.analysis.StudyComparison.of(session, daubline.analysis.ComparisonOptions.standard());
      Publication.write(results, Optional.empty(), folder.resolve("twins-out"),
          PublicationOptions.standard("0.0", List.of()).with(new FigureOptions(Set.of(), 300, Double.NaN)), Progress.NONE);
      String text = Files.readString(folder.resolve("twins-out/handout.html"));
      assertTrue(text.contains("bloom of 1.5 kg") && text.contains("bloom of 3.5 kg"), text.replaceAll("(?s).*What We Did", ""));
    }
  }

}
