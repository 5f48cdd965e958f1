package daubline.publication;

import daubline.analysis.EvidenceData;
import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.analysis.record.PersonData;
import daubline.analysis.record.SeriesData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Printed;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.base.Wording;
import daubline.charts.NamedFigure;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Verdict;
import daubline.export.Discretion;
import daubline.export.Provenance;
import daubline.export.Style;
import daubline.export.format.Html;
import daubline.export.format.WordWriter;
import daubline.export.tables.TrialMasses;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A few pages for visitors, in plain words: what is asked, what was dug up, what was done and what came of it. People are named
 * by consent only, and it holds no photographs. What it says of smelting in general is common practice, no source.
 */
final class Handout {

  private static final String DRAWING = "sections";

  private final StudyResults results;
  private final Discretion discretion;
  private final Optional<NamedFigure> drawing;
  private final Provenance provenance;
  private final Wording wording;

  Handout(StudyResults results, Discretion discretion, List<NamedFigure> figures, Provenance provenance, Wording wording) {
    this.wording = wording;
    this.results = results;
    this.discretion = discretion;
    this.drawing = figures.stream().filter(f -> f.id().equals(DRAWING)).findFirst();
    this.provenance = provenance;
  }

  /** One part: a heading, its sentences, and whether the drawing stands below. */
  private record Part(String heading, List<String> sentences, boolean drawn) {
  }

  private List<Part> parts() {
    List<Part> parts = List.of(part("What We Ask", questions()), new Part("What Was Dug Up", evidence(), true), part("What We Did", fires()),
        part("What Came of It", outcome()), part("What the Words Mean", WORDS), part("When You Visit a Fire", CARE), part("Who Took Part", people()));
    return parts.stream().filter(p -> !p.sentences().isEmpty()).map(p -> new Part(wording.apply(p.heading()), p.sentences().stream().map(wording).map(discretion::text).toList(), p.drawn())).toList();
  }

  private static Part part(String heading, List<String> sentences) {
    return new Part(heading, sentences, false);
  }

  private List<String> questions() {
    return Stream.concat(Stream.of(results.snapshot().record().question()), results.snapshot().record().series().stream().map(SeriesData::question))
        .filter(q -> !q.isBlank()).distinct().toList();
  }

  private List<String> evidence() {
    List<String> sentences = new ArrayList<>();
    for (EvidenceData sheet : results.snapshot().sheets()) {
      String when = sheet.period().isBlank() ? "" : ", " + sheet.period();
      sentences.add(sheet.sheet().name() + " at " + sheet.site() + when + ".");
    }
    if (!sentences.isEmpty()) {
      sentences.add("Only the lowest part of such furnaces is left in the ground. Everything above that line is our reconstruction, not evidence.");
    }
    return sentences;
  }

  private List<String> fires() {
    List<TrialData> burnt = results.snapshot().trials().stream().filter(t -> t.status().isBurnt()).toList();
    List<String> sentences = new ArrayList<>();
    if (!burnt.isEmpty()) {
      long failed = burnt.stream().filter(t -> t.status() == TrialStatus.FAILED).count();
      sentences.add("We built furnaces of clay and burnt them with charcoal and ore, " + count(burnt.size(), "time", "times") + " in all."
          + (failed > 0 ? " " + count(failed, "fire", "fires") + " did not go to the end; " + (failed > 1 ? "they are" : "it is") + " told here too." : ""));
      burnt.forEach(trial -> sentences.add(fire(trial)));
    }
    return sentences;
  }

  private static String count(long number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }

  private String fire(TrialData trial) {
    String on = results.snapshot().record().trial(trial.id()).map(TrialRecord::on).filter(d -> !d.isBlank()).map(d -> " (" + d + ")").orElse("");
    List<String> facts = new ArrayList<>();
    TrialMasses masses = results.snapshot().record().trial(trial.id()).map(r -> TrialMasses.of(trial, r)).orElse(TrialMasses.UNKNOWN);
    kilograms(masses.ore()).ifPresent(m -> facts.add(m + " kg of ore"));
    kilograms(masses.charcoal()).ifPresent(m -> facts.add(m + " kg of charcoal"));
    String went = facts.isEmpty() ? "" : " took " + String.join(" and ", facts);
    String gave = kilograms(masses.bloom()).map(m -> (facts.isEmpty() ? " gave" : " and gave") + " a bloom of " + m + " kg").orElse("");
    String kind = trial.kind() == TrialKind.DEMONSTRATION ? " It was a demonstration, and is left out of the comparison." : "";
    return trial.name() + on + (went.isEmpty() && gave.isEmpty() ? " was burnt" : went + gave) + "." + kind;
  }

  /** A mass of one trial in few digits; empty when it is not known. */
  private static Optional<String> kilograms(TrialMasses.Mass mass) {
    return mass.isKnown() ? Optional.of(Printed.number(mass.value(), 2)) : Optional.empty();
  }

  private List<String> outcome() {
    List<String> sentences = new ArrayList<>();
    for (EvidenceData sheet : results.snapshot().sheets()) {
      List<Comparison> tested = results.comparisons().stream().filter(c -> c.sheet().equals(sheet.sheet().id()) && c.isTested()).toList();
      tested.stream().max(Comparator.comparingDouble(Comparison::agreement).thenComparing(Comparison::trial, Comparator.reverseOrder())).ifPresent(best -> {
        long whole = tested.stream().filter(c -> c.count(Verdict.NOT_CONSISTENT) == 0).count();
        sentences.add(sheet.sheet().name() + ": of " + count(tested.size(), "fire", "fires") + ", " + whole + " left remains that are consistent with it in everything "
            + "that could be tested. Closest came " + best.trialName() + ", with an agreement of " + Printed.fixed(best.agreement(), 0) + " of 100; "
            + Printed.fixed(best.coverage() * 100, 0) + " % of the signs, by weight, could be tested.");
      });
    }
    if (!sentences.isEmpty()) {
      sentences.add("Consistent does not mean that the old furnace was like ours: other furnaces may leave the same remains. What is not consistent helps as much, "
          + "for it tells what to leave aside.");
    }
    return sentences;
  }

  private List<String> people() {
    List<PersonData> people = results.snapshot().record().people();
    List<String> sentences = new ArrayList<>(people.stream().filter(PersonData::mayPublishName).filter(p -> !p.name().isBlank())
        .map(p -> p.name() + (p.role().isBlank() ? "" : ", " + p.role())).toList());
    long others = people.size() - sentences.size();
    if (others > 0) {
      sentences.add((sentences.isEmpty() ? "" : "and ") + count(others, "person", "people") + " who " + (others == 1 ? "is" : "are") + " not named here");
    }
    return sentences;
  }

  String html() throws IOException {
    StringBuilder out = new StringBuilder("<!DOCTYPE html>\n<html lang=\"" + wording.language() + "\">\n<head>\n<meta charset=\"UTF-8\">\n<title>").append(Html.escape(provenance.study()))
        .append("</title>\n<style>\n").append(Report.STYLE).append("</style>\n</head>\n<body>\n<h1>").append(Html.escape(provenance.study())).append("</h1>\n");
    for (Part part : parts()) {
      out.append("<h2>").append(Html.escape(part.heading())).append("</h2>\n");
      part.sentences().forEach(s -> out.append("<p>").append(Html.escape(s)).append("</p>\n"));
      if (part.drawn() && drawing.isPresent()) {
        Report.picture(drawing.get(), drawing.get().figure().caption(), out);
      }
    }
    return out.append("</body>\n</html>\n").toString();
  }

  void word(OutputStream out) throws IOException {
    try (WordWriter document = new WordWriter(provenance, Style.ACCESSIBLE)) {
      document.heading(provenance.study(), 1);
      for (Part part : parts()) {
        document.heading(part.heading(), 2);
        for (String sentence : part.sentences()) {
          document.paragraph(sentence);
        }
        if (part.drawn() && drawing.isPresent()) {
          Report.picture(drawing.get(), drawing.get().figure().caption(), document);
        }
      }
      document.write(out);
    }
  }

  private static final List<String> WORDS = List.of(
      "Bloom: the spongy lump of iron, with slag in it, that grows in the furnace without ever being liquid.",
      "Slag: the glassy or stony waste that runs off or stays in the furnace; most of what is dug up is slag.",
      "Charcoal and ore are fed from above in turns; air is blown in near the bottom.",
      "Consistent: the difference is no larger than measuring, weather and chance explain. Not consistent: it is larger. Not tested: one side tells nothing about it.");

  private static final List<String> CARE = List.of(
      "A furnace burns at more than a thousand degrees, and its gas can poison without a smell. Stay behind the barrier and upwind, and do what the stewards say.",
      "Iron and slag that look cold may burn you for hours. Touch nothing; keep children at hand.",
      "This is no instruction to build or burn a furnace. Local rules and the people in charge on the day come first.");
}
