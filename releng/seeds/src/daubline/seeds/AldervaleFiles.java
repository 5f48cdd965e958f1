package daubline.seeds;

import static daubline.seeds.Make.NEW;

import daubline.model.Analysis;
import daubline.model.Channel;
import daubline.model.Component;
import daubline.model.DataFile;
import daubline.model.LoggerFile;
import daubline.model.Person;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.seeds.SeedTable.Row;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The files beside the study: the logger's, the laboratory's and the photographs. */
final class AldervaleFiles {

  private static final long LOGGER_SEED = 20310816;
  private static final double LOGGER_STARTED = 40;
  private static final double CLOCK_CORRECTION = -75;

  private final SeedStudy seed;
  private final Study study;

  AldervaleFiles(SeedStudy seed, Study study) {
    this.seed = seed;
    this.study = study;
  }

  /** Adds a logger's file to a trial. */
  void logger(Trial trial, Recipe recipe) {
    byte[] content = new StationLog(recipe, LOGGER_STARTED, LOGGER_SEED).file();
    String path = "logs/aldervale-" + recipe.number() + "-station.csv";
    LoggerFile file = seed.file(NEW.createLoggerFile(), path, "text/csv", content);
    file.setName("Station log of trial " + recipe.number());
    file.setNote("Started 40 minutes after first light by a clock that ran 75 seconds fast, as the sync mark showed; a gap "
        + "while the battery was changed; “open”, “saturated” and “removed” are states of a sensor, not numbers. "
        + "Columns count from 1.");
    file.setKind("logger");
    file.setDelimiter(";");
    file.setDecimal(",");
    file.setHeaderRows(2);
    file.setTimeColumn(1);
    file.setTimeFormat("HH:mm:ss");
    file.setStartAt(recipe.text("on") + "T" + StationLog.START + "+01:00");
    file.setOffset(CLOCK_CORRECTION);
    for (int i = 0; i < StationLog.CHANNELS.size(); i++) {
      Channel channel = NEW.createChannel();
      channel.setName(StationLog.CHANNELS.get(i).replace('_', ' '));
      channel.setColumn(i + 2);
      channel.setVariable(StationLog.CHANNELS.get(i));
      channel.setUnit(StationLog.UNITS.get(i));
      file.getChannels().add(channel);
    }
    trial.getLoggers().add(file);
  }

  /** Adds the laboratory's table of all slag analyses and names it in each of them. */
  void laboratory(List<Trial> trials) {
    List<Analysis> analyses = trials.stream().flatMap(t -> t.getAnalyses().stream()).toList();
    StringBuilder text = new StringBuilder("Sample,Component,wt%\n");
    for (Analysis analysis : analyses) {
      for (Component component : analysis.getComponents()) {
        line(text, analysis, component.getSymbol(), component.getTyped());
      }
      line(text, analysis, "Total", analysis.getTotalTyped());
    }
    byte[] content = text.toString().getBytes(StandardCharsets.UTF_8);
    DataFile file = seed.file(NEW.createDataFile(), "lab/slags-2031.csv", "text/csv", content);
    file.setId("file-lab-2031");
    file.setName("Slags of 2031 as delivered");
    file.setKind("laboratory");
    study.getFiles().add(file);
    analyses.forEach(analysis -> analysis.setFile(file));
  }

  private static void line(StringBuilder text, Analysis analysis, String symbol, String typed) {
    text.append(String.join(",", analysis.getSample().getName(), symbol, typed)).append('\n');
  }

  /** A photograph with its caption, rights and consent. */
  DataFile photograph(Row row) {
    String name = row.get("id").replaceFirst("photo-", "");
    DataFile file = seed.file(NEW.createDataFile(), "photos/" + name + ".png", "image/png", Picture.of(row.get("look")));
    file.setId(row.get("id"));
    file.setName(name);
    file.setKind("photograph");
    file.setCaption(row.get("caption"));
    file.setCapturedAt(row.get("captured_at"));
    file.setRights(row.get("rights"));
    Person person = row.orNull("person") == null ? null : Make.find(study.getPeople(), row.get("person"));
    file.setConsent(row.get("consent").equals("yes") && (person == null || person.isMayPublishPhotograph()));
    file.setNote(person == null ? null : "Shows " + person.getName() + ".");
    return file;
  }
}
