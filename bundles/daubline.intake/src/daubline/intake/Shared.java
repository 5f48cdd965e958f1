package daubline.intake;

import daubline.base.Amount;
import daubline.base.Confidence;
import daubline.base.HowGot;
import daubline.base.Quantity;
import daubline.intake.FormColumn.Content;
import daubline.model.ModelPackage.Literals;
import daubline.model.Reading;
import daubline.session.Readings;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/** Columns that several forms have in common, and what they do. */
final class Shared {

  /** The largest mass that any residue or charge is thought to have, kg. */
  private static final double HEAVIEST = 20_000;

  private Shared() {
  }

  static FormColumn id() {
    return FormColumn.text("id",
        "The id in the study, as an export writes it. With it a row is recognised whatever else changed; leave it empty "
        + "otherwise.", "trial-2031-04");
  }

  static FormColumn note() {
    return FormColumn.text("note", "Anything worth knowing.", "Wall cracked at the front while drying.");
  }

  /** The columns that say which sheet a row belongs to. */
  static List<FormColumn> sheet() {
    return List.of(
        FormColumn.text("site", "The site, by name; a new name adds a site. Leave it empty when “trial” is filled.",
        "Hollin Beck"),
        FormColumn.text("context", "Context or phase of the site.", "Phase 2"),
        FormColumn.text("sheet", "The furnace or feature, by name; a new name adds an evidence sheet.", "Furnace 3"),
        FormColumn.text("trial", "Instead of site and sheet: the trial whose remains are described, by name or id.", "T4"),
        FormColumn.text("series", "The series of the trial; only needed when two series have trials of the same name.",
        "Season 2031"));
  }

  /** The columns that say where a value comes from. */
  static List<FormColumn> origin() {
    return List.of(
        FormColumn.text("citation", "Key of the citation; see the form “citations”.", "young-2013"),
        FormColumn.text("page", "Page, table or figure.", "p. 12, table 3"),
        FormColumn.text("verbatim", "The words of the source.", "internal diameter c. 0.26 m"),
        FormColumn.text("reader", "Who read or recorded it.", "M. Thorne"),
        FormColumn.of("read_on", Content.DATE, "When it was read or recorded.", "2031-02-11"),
        FormColumn.word("how", words(HowGot.values(), HowGot::word), "How the value was got."),
        FormColumn.word("confidence", words(Confidence.values(), Confidence::word), "How sure the reader is."),
        FormColumn.of("sampling_fraction", Content.NUMBER,
        "Share of the deposit that was recovered, as 0.5 or 50 %. Masses from a part of it count as at least.", "50 %"));
  }

  static <E> List<String> words(E[] all, Function<E, String> word) {
    return Arrays.stream(all).map(word).toList();
  }

  static FormColumn mass(String id, String meaning) {
    return FormColumn.plain(id, Quantity.MASS, "kg", 0, HEAVIEST, meaning, "4.35");
  }

  /** Writes where a value comes from; columns that the form does not have say nothing. */
  static void origin(Row row, Draft draft, Reading reading, Finder finder) {
    Tally tally = draft.tally();
    tally.set(reading, Literals.READING__CITATION, finder.citation());
    tally.set(reading, Literals.READING__PAGE, row.orNull("page"));
    tally.set(reading, Literals.READING__VERBATIM, row.orNull("verbatim"));
    tally.set(reading, Literals.READING__BY, finder.person("reader"));
    tally.set(reading, Literals.READING__AT, row.date("read_on"));
    tally.set(reading, Literals.READING__HOW, row.word("how", HowGot.class, HowGot::word));
    tally.set(reading, Literals.READING__CONFIDENCE, row.word("confidence", Confidence.class, Confidence::word));
    tally.set(reading, Literals.READING__SAMPLING_FRACTION, row.share("sampling_fraction"));
  }

  /** Whether a reading comes from the citation and page that a row names; an empty page says nothing. */
  static boolean sameOrigin(Reading reading, Object citation, String page) {
    return Objects.equals(reading.getCitation(), citation)
        && (page == null || reading.getPage() == null || page.equals(reading.getPage()));
  }

  /**
   * The reading of a list that a value belongs to: one that says the same already, or the only one of its origin, or a
   * new one.
   *
   * @param candidates readings of the same variable and origin
   * @return null when a new one is needed
   */
  static <R extends Reading> R matching(List<R> candidates, Amount amount) {
    return candidates.stream().filter(r -> r.getKind() != null && Readings.amount(r).equals(amount)).findFirst()
        .orElse(candidates.size() == 1 ? candidates.get(0) : null);
  }
}
