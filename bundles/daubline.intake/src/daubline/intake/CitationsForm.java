package daubline.intake;

import daubline.base.Identifiers;
import daubline.base.Variables;
import daubline.model.Citation;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The form of publications. */
final class CitationsForm implements Form {

  private static final Map<String, EStructuralFeature> FIELDS = fields();

  private static Map<String, EStructuralFeature> fields() {
    Map<String, EStructuralFeature> fields = new LinkedHashMap<>();
    fields.put("authors", Literals.CITATION__AUTHORS);
    fields.put("year", Literals.CITATION__YEAR);
    fields.put("title", Literals.CITATION__TITLE);
    fields.put("editors", Literals.CITATION__EDITORS);
    fields.put("container", Literals.CITATION__CONTAINER);
    fields.put("volume", Literals.CITATION__VOLUME);
    fields.put("issue", Literals.CITATION__ISSUE);
    fields.put("pages", Literals.CITATION__PAGES);
    fields.put("publisher", Literals.CITATION__PUBLISHER);
    fields.put("place", Literals.CITATION__PLACE);
    fields.put("doi", Literals.CITATION__DOI);
    fields.put("isbn", Literals.CITATION__ISBN);
    fields.put("url", Literals.CITATION__URL);
    fields.put("kind", Literals.CITATION__KIND);
    fields.put("note", Literals.NAMED__NOTE);
    return fields;
  }

  @Override
  public Target target() {
    return Target.CITATIONS;
  }

  @Override
  public String explanation() {
    return "One row a publication, report or archive. A row is recognised again by its key or its DOI. Bibliographic files (BibTeX, RIS) are read too.";
  }

  @Override
  public List<FormColumn> columns(Variables variables) {
    Stream<FormColumn> key = Stream.of(FormColumn.text("key", "A short name of your own that claims refer to.",
        "young-2013").must());
    return Stream.concat(key, FIELDS.keySet().stream().map(CitationsForm::column)).toList();
  }

  private static FormColumn column(String id) {
    return switch (id) {
      case "authors" -> FormColumn.text(id, "Authors as printed; parted by semicolons.", "Young T.P.");
      case "year" -> FormColumn.text(id, "Year as printed.", "2013");
      case "title" -> FormColumn.text(id, "Title.", "GeoArch Report 2013/11");
      case "editors" -> FormColumn.text(id, "Editors as printed.", "Young T.P.; Crew P.");
      case "container" -> FormColumn.text(id, "Journal or book that holds it.", "Annales des Mines");
      case "volume" -> FormColumn.text(id, "Volume.", "13");
      case "issue" -> FormColumn.text(id, "Number within the volume.", "5");
      case "pages" -> FormColumn.text(id, "Pages.", "96-102");
      case "publisher" -> FormColumn.text(id, "Publisher.", "GeoArch");
      case "place" -> FormColumn.text(id, "Place of publication.", "Caerphilly");
      case "doi" -> FormColumn.text(id, "Digital object identifier.", "10.3390/met13050984");
      case "isbn" -> FormColumn.text(id, "International standard book number.", "978-3-16-148410-0");
      case "url" -> FormColumn.text(id, "Address on the web.", "https://example.org/report");
      case "kind" -> FormColumn.text(id, "What it is: article, report, thesis, archive, message.", "report");
      default -> Shared.note();
    };
  }

  @Override
  public String key(Row row) {
    return row.key("key");
  }

  @Override
  public void write(Row row, Draft draft) {
    String key = row.must("key");
    if (key.isEmpty()) {
      return;
    }
    List<Citation> all = draft.study().getCitations();
    Citation citation = known(all, key, row.text("doi")).orElseGet(() -> {
      Citation made = draft.tally().subject(ModelFactory.eINSTANCE.createCitation());
      made.setName(key);
      draft.giveId(made, key);
      all.add(made);
      return made;
    });
    FIELDS.forEach((column, feature) -> {
      String text = row.orNull(column);
      if (text != null && !alike(text, (String) citation.eGet(feature))) {
        draft.tally().set(citation, feature, text);
      }
    });
    checkNumbers(row);
  }

  private static Optional<Citation> known(List<Citation> all, String key, String doi) {
    return all.stream().filter(c -> key.equals(c.getId()) || key.equals(c.getName())).findFirst()
        .or(() -> all.stream().filter(c -> !doi.isEmpty() && c.getDoi() != null && Identifiers.doi(doi).equals(Identifiers.doi(c.getDoi()))).findFirst());
  }

  /** Whether two texts differ only in what files of other programs cannot keep: line breaks, kinds of dashes, how names are parted. */
  private static boolean alike(String one, String other) {
    return other != null && plain(one).equals(plain(other));
  }

  private static String plain(String text) {
    return text.replaceAll("[–—−]|--+", "-").replaceAll("\\s+(and|und|&)\\s+", "; ").replace(",", "").replaceAll("\\s+", " ").strip();
  }

  private static void checkNumbers(Row row) {
    Identifiers.doiFinding(row.text("doi")).ifPresent(f -> row.warning(f.code(), "doi", f.what(), f.remedy()));
    Identifiers.isbnFinding(row.text("isbn")).ifPresent(f -> row.warning(f.code(), "isbn", f.what(), f.remedy()));
  }
}
