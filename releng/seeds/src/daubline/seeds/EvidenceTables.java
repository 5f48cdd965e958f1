package daubline.seeds;

import static daubline.seeds.Make.NEW;

import daubline.base.Confidence;
import daubline.base.HowGot;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.ResidueKinds;
import daubline.model.Analysis;
import daubline.model.Citation;
import daubline.model.Claim;
import daubline.model.Component;
import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.Reading;
import daubline.model.ResidueClass;
import daubline.model.ResidueMass;
import daubline.model.Site;
import daubline.model.Study;
import daubline.seeds.SeedTable.Row;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Fills a study with citations, residue classes, sites, contexts, evidence sheets and analyses from its tables. */
final class EvidenceTables {

  private final SeedTable tables;
  private final Map<String, Citation> citations = new LinkedHashMap<>();
  private final Map<String, ResidueClass> classes = new HashMap<>();
  private final Map<String, Site> sites = new LinkedHashMap<>();
  private final Map<String, EvidenceSheet> sheets = new LinkedHashMap<>();
  private final Map<String, Analysis> analyses = new LinkedHashMap<>();

  EvidenceTables(SeedTable tables) {
    this.tables = tables;
  }

  /** Adds everything to the study. */
  void fill(Study study) {
    tables.rows("citations").forEach(this::citation);
    study.getCitations().addAll(citations.values());
    ResidueKinds.standard().forEach(k -> residueClass(study, k.id(), k.name(), k.definition(), k.source()));
    tables.rows("residue-classes")
        .forEach(r -> residueClass(study, r.get("id"), r.get("name"), r.get("definition"), r.get("source")));
    tables.rows("sites").forEach(this::site);
    study.getSites().addAll(sites.values());
    tables.rows("sheets").forEach(this::sheet);
    tables.rows("claims").forEach(this::claim);
    tables.rows("residues").forEach(this::residue);
  }

  /** Adds the analyses of the sheets. */
  void analyses() {
    tables.rows("analyses").forEach(row -> sheet(row.get("holder")).getAnalyses().add(analysis(row)));
    components();
  }

  /** A citation by id. */
  Citation citation(String id) {
    return require(citations, id);
  }

  /** A residue class by its short name. */
  ResidueClass residueClass(String id) {
    return require(classes, id);
  }

  /** An evidence sheet by id. */
  EvidenceSheet sheet(String id) {
    return require(sheets, id);
  }

  static <T> T require(Map<String, T> all, String id) {
    T found = all.get(id);
    if (found == null) {
      throw new IllegalArgumentException("Nothing is called “" + id + "” among " + all.keySet());
    }
    return found;
  }

  private void citation(Row row) {
    Citation citation = NEW.createCitation();
    citation.setId(row.get("id"));
    citation.setName(row.get("id"));
    citation.setAuthors(row.orNull("authors"));
    citation.setYear(row.orNull("year"));
    citation.setTitle(row.orNull("title"));
    citation.setContainer(row.orNull("container"));
    citation.setVolume(row.orNull("volume"));
    citation.setPages(row.orNull("pages"));
    citation.setPublisher(row.orNull("publisher"));
    citation.setDoi(row.orNull("doi"));
    citation.setUrl(row.orNull("url"));
    citation.setKind(row.orNull("kind"));
    citation.setNote(row.orNull("note"));
    citations.put(citation.getId(), citation);
  }

  private void residueClass(Study study, String id, String name, String definition, String source) {
    ResidueClass residueClass = NEW.createResidueClass();
    residueClass.setId(id);
    residueClass.setName(name);
    residueClass.setDefinition(definition);
    residueClass.setSource(source);
    classes.put(id, residueClass);
    study.getResidueClasses().add(residueClass);
  }

  private void site(Row row) {
    Site site = NEW.createSite();
    site.setId(row.get("id"));
    site.setName(row.get("name"));
    site.setRegion(row.orNull("region"));
    site.setCountry(row.orNull("country"));
    sites.put(site.getId(), site);
  }

  private void sheet(Row row) {
    EvidenceSheet sheet = NEW.createEvidenceSheet();
    sheet.setId(row.get("id"));
    sheet.setName(row.get("name"));
    sheet.setFeature(row.orNull("feature"));
    sheet.setNote(row.orNull("note"));
    sheet.setSamplingFraction(number(row, "sampling_fraction"));
    sheet.setRecordedOn(row.orNull("recorded_on"));
    context(require(sites, row.get("site")), row.get("context"), row.orNull("period")).getSheets().add(sheet);
    sheets.put(sheet.getId(), sheet);
  }

  private static Context context(Site site, String name, String period) {
    List<Context> known = site.getContexts().stream().filter(c -> c.getName().equals(name)).toList();
    if (!known.isEmpty()) {
      return known.get(0);
    }
    Context context = NEW.createContext();
    context.setName(name);
    context.setPeriod(period);
    site.getContexts().add(context);
    return context;
  }

  private void claim(Row row) {
    Claim claim = Make.value(NEW.createClaim(), row.get("variable"), row.get("typed"), row.get("unit"));
    cite(claim, row);
    claim.setConfidence(row.word("confidence", Confidence.class));
    claim.setPickedBecause(row.orNull("picked_because"));
    claim.setPicked(claim.getPickedBecause() != null);
    claim.setPreservationLimit(number(row, "preservation_limit_m"));
    claim.setLimitBecause(row.orNull("limit_because"));
    sheet(row.get("sheet")).getClaims().add(claim);
  }

  private void residue(Row row) {
    ResidueMass mass = Make.mass(NEW.createResidueMass(), row.get("typed"), row.get("unit"));
    mass.setResidueClass(residueClass(row.get("class")));
    mass.setCount(row.get("count").isEmpty() ? null : Integer.valueOf(row.get("count")));
    cite(mass, row);
    sheet(row.get("sheet")).getResidues().add(mass);
  }

  private static Double number(Row row, String column) {
    return row.orNull(column) == null ? null : Double.valueOf(row.orNull(column));
  }

  /** Puts where a value was read into it. */
  void cite(Reading reading, Row row) {
    reading.setCitation(citation(row.get("citation")));
    reading.setPage(row.orNull("page"));
    reading.setVerbatim(row.orNull("verbatim"));
    reading.setNote(row.orNull("note"));
    reading.setHow(HowGot.READ_FROM_REPORT);
  }

  private Analysis analysis(Row row) {
    Analysis analysis = NEW.createAnalysis();
    analysis.setId(row.get("id"));
    analysis.setName(row.get("name"));
    analysis.setMaterial(row.word("material", Material.class));
    analysis.setSpecimen(row.orNull("specimen"));
    analysis.setIronBasis(row.word("iron_basis", IronBasis.class));
    analysis.setCitation(citation(row.get("citation")));
    analysis.setPage(row.orNull("page"));
    analysis.setNote(row.orNull("note"));
    analysis.setMethod(row.orNull("method"));
    analysis.setLaboratory(row.orNull("laboratory"));
    if (row.orNull("total") != null) {
      analysis.setTotalTyped(row.get("total"));
      analysis.setTotal(Double.parseDouble(row.get("total")) / 100);
    }
    analyses.put(analysis.getId(), analysis);
    return analysis;
  }

  private void components() {
    for (Row row : tables.rows("components")) {
      Component component = Make.percent(NEW.createComponent(), row.get("typed"));
      component.setSymbol(row.get("symbol"));
      component.setHow(HowGot.READ_FROM_REPORT);
      require(analyses, row.get("analysis")).getComponents().add(component);
    }
  }
}
