package daubline.publication;

import daubline.analysis.deposit.DepositData;
import daubline.base.Finding;
import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Table;
import daubline.export.format.ArchiveCsv;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes a study as a data package that an archive takes and another team can read again: one table for each kind of
 * object with its schema, a codebook, files as delivered, licence, citation, metadata, open checks and checksums.
 */
final class Deposit {

  private static final String CODEBOOK = "codebook.csv";

  private final Output output;
  private final DepositData data;
  private final DepositMetadata metadata;
  private final List<Finding> findings = new ArrayList<>();

  Deposit(DepositData data, DepositMetadata metadata, Output output) {
    this.data = data;
    this.metadata = metadata;
    this.output = output;
  }

  /**
   * Writes the deposit, validates it as it stands on disk and reads it back.
   *
   * @param checks the open checks of the study
   * @return what is wrong; without errors it was read again without loss
   */
  List<Finding> write(List<Finding> checks) throws IOException {
    List<Map<String, Object>> resources = new ArrayList<>();
    Descriptions descriptions = new Descriptions();
    for (var rows : data.tables()) {
      Archived archived = new Archived(rows);
      output.text(archived.path(), DepositCsv.text(archived.lines()));
      resources.add(resource(rows.name(), archived.path(), archived.schema(descriptions)));
    }
    Table codebook = Codebook.of(metadata.variables());
    output.text(CODEBOOK, new ArchiveCsv().text(codebook));
    resources.add(resource("codebook", CODEBOOK, schema(codebook)));
    files(resources);
    texts(checks);
    output.text("datapackage.json", Json.text(descriptor(resources)));
    output.text(Checksums.NAME, Checksums.text(output));
    findings.addAll(DepositCheck.of(output.folder(), data.tables()));
    return findings;
  }

  private Map<String, Object> resource(String name, String path, Map<String, Object> schema) throws IOException {
    Path file = output.folder().resolve(path);
    return DepositMetadata.map("name", name, "type", "table", "path", path, "format", "csv", "mediatype", "text/csv", "encoding", "utf-8",
        "bytes", Files.size(file), "hash", "sha256:" + DepositFile.hash(file), "dialect", DepositMetadata.map("delimiter", ",", "lineTerminator", "\r\n"),
        "schema", schema);
  }

  private static Map<String, Object> schema(Table table) {
    List<Map<String, Object>> fields = new ArrayList<>();
    table.columns().forEach(c -> fields.add(DepositMetadata.map("name", c.id(), "type", c.id().startsWith("plausible") ? "number" : "string", "title",
        c.heading())));
    return DepositMetadata.map("fields", fields, "primaryKey", List.of("id"), "missingValues", List.of(""));
  }

  private void files(List<Map<String, Object>> resources) throws IOException {
    List<List<Cell>> media = new ArrayList<>();
    List<DepositFile> all = DepositFile.of(data.tables());
    for (int i = 0; i < all.size(); i++) {
      DepositFile file = all.get(i);
      var obstacle = file.obstacle(data.folder());
      obstacle.ifPresent(findings::add);
      if (obstacle.filter(Finding::isError).isEmpty()) {
        if (!output.names().contains(file.deposited())) {
          copy(file, resources, i + 1);
        }
        media.add(List.of(Cell.text(file.deposited()), Cell.text(file.id()), Cell.text(file.kind()), Cell.text(file.caption()), Cell.text(file.rights()),
            Cell.text(file.capturedAt()), Cell.text(DepositFile.hash(output.folder().resolve(file.deposited())))));
      }
    }
    Table index = new Table("media", "Files as Delivered", "", List.of(Column.text("path", "Path"), Column.text("id", "Id"), Column.text("kind", "Kind"),
        Column.text("caption", "Caption"), Column.text("rights", "Rights"), Column.text("captured_at", "Captured at"), Column.text("sha256", "SHA-256")),
        media, List.of());
    output.text("media/index.csv", new ArchiveCsv().text(index));
    Map<String, Object> schema = schema(index);
    resources.add(resource("media-index", "media/index.csv", schema));
  }

  private void copy(DepositFile file, List<Map<String, Object>> resources, int number) throws IOException {
    try (var out = output.file(file.deposited())) {
      Files.copy(data.folder().resolve(file.path()), out);
    }
    Path copy = output.folder().resolve(file.deposited());
    searchForNames(file, copy);
    Map<String, Object> resource = DepositMetadata.map("name", "file-" + number, "path", file.deposited(), "bytes", Files.size(copy), "hash",
        "sha256:" + DepositFile.hash(copy));
    if (!file.caption().isBlank()) {
      resource.put("title", file.caption());
    }
    if (!file.mediaType().isBlank()) {
      resource.put("mediatype", file.mediaType());
    }
    resources.add(resource);
  }

  /** Files go out as delivered, so a name in one cannot be replaced, only said. */
  private void searchForNames(DepositFile file, Path copy) throws IOException {
    if (NameSearch.finds(copy, data.unnamed())) {
      findings.add(Finding.warning("deposit.name", file.path(), "the file holds the name of a person who did not consent to be named",
          "take the name out of the file, or the file out of the study, or ask the person"));
    }
  }

  private void texts(List<Finding> checks) throws IOException {
    if (!metadata.isLicensed()) {
      findings.add(Finding.warning("deposit.licence", "LICENSE", "no licence is stated", "choose one, such as CC-BY-4.0; without it nobody may use the data"));
    }
    output.text("LICENSE", "Licence of this dataset: " + metadata.licence() + "\n");
    output.text("CITATION.cff", metadata.citation());
    output.text("datacite.json", metadata.dataCite());
    StringBuilder open = new StringBuilder();
    checks.forEach(check -> open.append(metadata.discreet(check.toString())).append('\n'));
    output.text("checks.txt", open.isEmpty() ? "No check was open.\n" : open.toString());
    output.text("README.md", DepositReadme.text(metadata, data.withheld()));
  }

  private Map<String, Object> descriptor(List<Map<String, Object>> resources) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("$schema", "https://datapackage.org/profiles/2.0/datapackage.json");
    json.put("name", "study");
    json.put("title", metadata.title());
    json.put("description", metadata.description());
    json.put("version", metadata.provenance().digest());
    if (metadata.isDated()) {
      json.put("created", metadata.provenance().when().toString());
    }
    if (metadata.isLicensed()) {
      json.put("licenses", metadata.licences());
    }
    json.put("contributors", metadata.creators().stream().map(name -> DepositMetadata.map("title", name, "roles", List.of("creator"))).toList());
    json.put("resources", resources);
    return json;
  }
}
