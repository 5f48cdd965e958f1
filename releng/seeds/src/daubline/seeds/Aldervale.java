package daubline.seeds;

import static daubline.seeds.Make.NEW;

import daubline.base.Variables;
import daubline.model.Claim;
import daubline.model.RemainsSheet;
import daubline.model.Series;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.model.VariableDefinition;
import daubline.model.Visit;
import daubline.seeds.SeedTable.Row;
import daubline.session.StudyVariables;
import java.util.List;

/** The demonstration study: an invented season in an invented valley, with every part of a study in it. */
final class Aldervale extends SeedStudy {

  private static final String LOGGED = "trial-g07";

  private final SeedTable tables = new SeedTable(folder());
  private final EvidenceTables evidence = new EvidenceTables(tables);

  @Override
  String folder() {
    return "aldervale";
  }

  @Override
  String name() {
    return "Aldervale (invented)";
  }

  @Override
  void fill(Study study) {
    study.setNote("Everything in this study is invented: the valley, the people, the sites, the reports and every number.");
    study.setQuestion("What stood on the furnace bases of Kiln Acre and Wether Sike?");
    study.setLanguage("en");
    study.setLicence("CC0-1.0");
    study.setCreatedOn("2031-01-15");
    variable(study);
    AldervaleTeam team = new AldervaleTeam(tables, study);
    team.fill();
    evidence.fill(study);
    evidence.analyses();
    AldervaleStore store = new AldervaleStore(tables, study);
    store.fill();
    new AldervaleFurnaces(tables, study, evidence).fill();
    Series series = series();
    team.fill(series);
    study.getSeries().add(series);
    AldervaleFiles files = new AldervaleFiles(this, study);
    tables.rows("recipes").forEach(row -> trial(study, series, recipe(row), store, files));
    files.laboratory(series.getTrials());
    tables.rows("photographs").forEach(row -> photograph(series, files, row));
    tables.rows("visits").forEach(row -> visit(study, series, row));
    file("README.md", tables.file("README.md"));
  }

  private static void variable(Study study) {
    VariableDefinition moss = NEW.createVariableDefinition();
    moss.setId("moss_cover");
    moss.setName("Moss cover of the ruin");
    moss.setGroup("Remains");
    moss.setType("number");
    moss.setQuantity("fraction");
    moss.setUnit("%");
    moss.setLow(0.0);
    moss.setHigh(1.0);
    moss.setStages("remains");
    moss.setEvidencedBy("return visits only");
    moss.setMeaning("Share of the outer wall under moss, by eye; shows how fast a ruin greens over.");
    moss.setSource("the team's own variable");
    study.getVariables().add(moss);
  }

  private static Series series() {
    Series series = NEW.createSeries();
    series.setId("series-2031");
    series.setName("Season 2031");
    series.setQuestion("Which of three reconstructions leaves remains consistent with Kiln Acre 1, "
        + "and can it be told from its rivals?");
    series.setPlan("Pilot in furnace A; furnaces A, B and C in turn, two fires each; then one new build of whichever "
        + "is still in question. At the end A takes the air of trial 1 with the ore of trial 2, because both had changed "
        + "together, and B is burnt as in trial 3 again, because too little says how far equal trials differ. "
        + "The way the slag leaves changes only with the furnace; air flow is set on the day.");
    series.setBudget("500 kg graded charcoal, 235 kg graded ore, clay for four furnaces, five people on ten Saturdays");
    series.setSeed(20310412L);
    series.setStopCriteria("A carbon monoxide alarm sounds and does not stop at the next post. The wall burns through. "
        + "Wind above force 5, or the fire watch says so. Anybody is hurt or unwell. Anybody calls stop.");
    return series;
  }

  private Recipe recipe(Row row) {
    Row build = tables.rows("builds").stream().filter(b -> b.get("id").equals(row.get("build"))).findFirst().orElseThrow();
    return new Recipe(row, build);
  }

  private void trial(Study study, Series series, Recipe recipe, AldervaleStore store, AldervaleFiles files) {
    Smelt smelt = new Smelt(recipe, store.shares());
    Trial trial = new AldervaleTrial(recipe, smelt, study).trial(series.getTrials(), tables.rows("predictions"));
    trial.getLog().addAll(new AldervaleLog(recipe, study).entries(tables.rows("entries")));
    boolean blind = recipe.number() > 6;
    trial.setRemains(new AldervaleRemains(recipe, smelt, evidence).sheet(Make.find(study.getPeople(), "person-sunniva"), blind));
    if (recipe.id().equals(LOGGED)) {
      files.logger(trial, recipe);
    }
    series.getTrials().add(trial);
  }

  private void photograph(Series series, AldervaleFiles files, Row row) {
    String holder = row.get("holder");
    if (holder.startsWith("sheet-")) {
      evidence.sheet(holder).getFiles().add(files.photograph(row));
    } else {
      Make.find(series.getTrials(), holder).getFiles().add(files.photograph(row));
    }
  }

  private void visit(Study study, Series series, Row row) {
    Visit visit = NEW.createVisit();
    visit.setId(row.get("id"));
    visit.setName(row.get("name"));
    visit.setNote(row.orNull("note"));
    visit.setDueOn(row.orNull("due_on"));
    visit.setVisitedOn(row.orNull("visited_on"));
    visit.setNotVisitedBecause(row.orNull("not_visited_because"));
    visit.setEndedBecause(row.orNull("ended_because"));
    if (visit.getVisitedOn() != null) {
      visit.setRemains(visited(study, visit, row));
    }
    Make.find(series.getTrials(), row.get("trial")).getVisits().add(visit);
  }

  private RemainsSheet visited(Study study, Visit visit, Row row) {
    RemainsSheet sheet = NEW.createRemainsSheet();
    sheet.setName("Ruin, " + row.get("name").toLowerCase(java.util.Locale.ROOT));
    sheet.setRecordedBy(Make.find(study.getPeople(), row.get("recorder")));
    sheet.setRecordedOn(visit.getVisitedOn());
    Variables variables = StudyVariables.of(study);
    List<Row> claims = tables.rows("visit-claims").stream().filter(c -> c.get("visit").equals(visit.getId())).toList();
    for (Row claim : claims) {
      Claim made = Make.value(NEW.createClaim(), variables.get(claim.get("variable")), claim.get("typed"), claim.get("unit"));
      made.setBy(sheet.getRecordedBy());
      sheet.getClaims().add(made);
    }
    return sheet;
  }
}
