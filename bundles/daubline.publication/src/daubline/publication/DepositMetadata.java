package daubline.publication;

import daubline.analysis.StudySnapshot;
import daubline.analysis.record.PersonData;
import daubline.base.Variables;
import daubline.export.Discretion;
import daubline.export.Provenance;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Title, creators and licence of a deposit in the forms that archives and citation tools read. */
final class DepositMetadata {

  private static final String PLACEHOLDER = "not stated";

  private final StudySnapshot snapshot;
  private final Discretion discretion;
  private final DepositOptions options;
  private final Provenance provenance;

  DepositMetadata(StudySnapshot snapshot, Discretion discretion, DepositOptions options, Provenance provenance) {
    this.snapshot = snapshot;
    this.discretion = discretion;
    this.options = options;
    this.provenance = provenance;
  }

  String title() {
    return provenance.study().isBlank() ? "Study of bloomery trials" : provenance.study();
  }

  Provenance provenance() {
    return provenance;
  }

  Variables variables() {
    return snapshot.variables();
  }

  /** A text without the names of people who did not consent. */
  String discreet(String text) {
    return discretion.text(text);
  }

  /** Those named by the caller, otherwise the people of the study who consented, otherwise the team. */
  List<String> creators() {
    if (!options.creators().isEmpty()) {
      return options.creators();
    }
    List<String> people = snapshot.record().people().stream().filter(PersonData::mayPublishName).map(PersonData::name).toList();
    return people.isEmpty() ? List.of("Team of " + title()) : people;
  }

  String licence() {
    String stated = options.licence().isBlank() ? snapshot.record().licence() : options.licence();
    return stated.isBlank() ? PLACEHOLDER : stated.strip();
  }

  boolean isLicensed() {
    return !licence().equals(PLACEHOLDER);
  }

  /** Whether the licence is given as an SPDX identifier. */
  private boolean isSpdx() {
    return licence().matches("[A-Za-z0-9.+-]+");
  }

  List<Map<String, Object>> licences() {
    return !isLicensed() ? List.of() : List.of(isSpdx() ? map("name", licence()) : map("path", "LICENSE", "title", licence()));
  }

  /** Citation File Format 1.2.0. */
  String citation() {
    StringBuilder cff = new StringBuilder("cff-version: 1.2.0\nmessage: Please cite this dataset as below.\ntype: dataset\n");
    cff.append("title: ").append(quoted(title())).append("\nauthors:\n");
    for (String creator : creators()) {
      int comma = creator.indexOf(',');
      cff.append(comma < 0 ? "  - name: " + quoted(creator)
          : "  - family-names: " + quoted(creator.substring(0, comma).strip()) + "\n    given-names: " + quoted(creator.substring(comma + 1).strip())).append('\n');
    }
    cff.append("version: ").append(quoted(snapshot.digest())).append('\n');
    if (isLicensed() && isSpdx()) {
      cff.append("license: ").append(licence()).append('\n');
    }
    if (!options.doi().isBlank()) {
      cff.append("doi: ").append(quoted(options.doi())).append('\n');
    }
    if (isDated()) {
      cff.append("date-released: \"").append(provenance.when().toString(), 0, 10).append("\"\n");
    }
    return cff.toString();
  }

  /** Whether the caller gave a time; the fixed one that file formats get otherwise is no date of anything. */
  boolean isDated() {
    return !provenance.when().equals(Provenance.NO_TIME);
  }

  private static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replaceAll("\\p{Cntrl}", " ") + '"';
  }

  /** The mandatory properties of the DataCite metadata schema, version 4. */
  String dataCite() throws IOException {
    Map<String, Object> json = new LinkedHashMap<>();
    if (!options.doi().isBlank()) {
      json.put("doi", options.doi());
      json.put("identifiers", List.of(map("identifier", "https://doi.org/" + options.doi(), "identifierType", "DOI")));
    }
    List<Map<String, Object>> creators = new ArrayList<>();
    creators().forEach(name -> creators.add(creator(name)));
    json.put("creators", creators);
    json.put("titles", List.of(map("title", title())));
    json.put("publisher", map("name", options.publisher().isBlank() ? creators().get(0) : options.publisher()));
    json.put("publicationYear", Integer.toString(options.year()));
    json.put("types", map("resourceTypeGeneral", "Dataset", "resourceType", "Experimental archaeology"));
    if (isLicensed()) {
      json.put("rightsList", List.of(isSpdx() ? map("rights", licence(), "rightsIdentifier", licence(), "rightsIdentifierScheme", "SPDX")
          : map("rights", licence())));
    }
    json.put("descriptions", List.of(map("description", description(), "descriptionType", "Abstract")));
    json.put("version", snapshot.digest());
    json.put("schemaVersion", "http://datacite.org/schema/kernel-4");
    return Json.text(json);
  }

  private static Map<String, Object> creator(String name) {
    int comma = name.indexOf(',');
    return comma < 0 ? map("name", name) : map("name", name, "nameType", "Personal", "givenName", name.substring(comma + 1).strip(), "familyName",
        name.substring(0, comma).strip());
  }

  String description() {
    String question = discreet(snapshot.record().question());
    return (question.isBlank() ? "" : question + " ") + snapshot.trials().size() + " trials of bloomery furnaces and " + snapshot.sheets().size()
        + " sheets of excavated evidence, with every value as typed, its unit and where it comes from.";
  }

  /** A map from keys and values in turn, in this order. */
  static Map<String, Object> map(Object... keysAndValues) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      map.put(keysAndValues[i].toString(), keysAndValues[i + 1]);
    }
    return map;
  }
}
