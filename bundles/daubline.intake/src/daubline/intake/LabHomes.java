package daubline.intake;

import daubline.intake.Recognised.Aspect;
import daubline.intake.Recognised.State;
import daubline.intake.raw.RawRow;
import daubline.model.Analysis;
import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.Lot;
import daubline.model.Named;
import daubline.model.Sample;
import daubline.model.Series;
import daubline.model.Site;
import daubline.model.Study;
import daubline.model.Trial;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Recognises by its name which trial, lot or evidence sheet a sample belongs to. */
final class LabHomes {

  /**
   * Where samples may belong.
   *
   * @param text as a person says it
   * @param name its own name
   * @param cells the texts by which a row says it
   * @param samples names of the samples of a trial
   * @param analyses names of the analyses it has already
   */
  private record Home(String text, String name, Map<String, String> cells, List<String> samples, List<String> analyses) {
  }

  private final Table table;
  private final IntakeOptions options;
  private final List<Recognised> recognised;
  private final List<Home> homes = new ArrayList<>();

  LabHomes(Study study, Table table, IntakeOptions options, List<Recognised> recognised) {
    this.table = table;
    this.options = options;
    this.recognised = recognised;
    for (Series series : study.getSeries()) {
      for (Trial trial : series.getTrials()) {
        add("trial", trial, Map.of("trial", String.valueOf(trial.getId())), trial.getSamples(), trial.getAnalyses());
      }
    }
    for (Lot lot : study.getLots()) {
      add("lot", lot, Map.of("lot", String.valueOf(lot.getId())), List.of(), lot.getAnalyses());
    }
    for (Site site : study.getSites()) {
      for (Context context : site.getContexts()) {
        for (EvidenceSheet sheet : context.getSheets()) {
          add("sheet", sheet, Map.of("site", String.valueOf(site.getName()), "sheet", String.valueOf(sheet.getId())), List.of(), sheet.getAnalyses());
        }
      }
    }
  }

  private void add(String kind, Named object, Map<String, String> cells, List<Sample> samples, List<Analysis> analyses) {
    String name = object.getName() == null || object.getName().isBlank() ? String.valueOf(object.getId()) : object.getName();
    boolean taken = homes.stream().anyMatch(h -> h.text().equals(kind + " " + name));
    homes.add(new Home(kind + " " + (taken ? object.getId() : name), name, cells, names(samples), names(analyses)));
  }

  private static List<String> names(List<? extends Named> all) {
    return all.stream().map(Named::getName).filter(n -> n != null && !n.isBlank()).map(Heading::key).toList();
  }

  /** Whether a text is the name of a trial, lot or sheet, so that it is no sample's. */
  boolean isHome(String text) {
    return homes.stream().anyMatch(h -> Heading.key(h.name()).equals(Heading.key(text)));
  }

  /** Puts what is recognised into the texts of the rows that do not say it themselves. */
  void place(List<RawRow> rows, Map<Integer, Map<String, String>> cells) {
    List<RawRow> open = rows.stream().filter(r -> !isSaid(r)).toList();
    if (open.size() > 1) {
      String all = options.family("of").getOrDefault("*", "");
      recognised.add(new Recognised(Aspect.BELONGING, "*", all, open.size() + " of " + rows.size() + " do not say in a column what they belong to",
          all.isEmpty() ? State.READ : State.STATED, "of:*", choices()));
    }
    for (RawRow row : open) {
      place(row, cells);
    }
  }

  private boolean isSaid(RawRow row) {
    return List.of("trial", "lot", "site", "sheet").stream().anyMatch(c -> !Labs.text(table, row, c).isEmpty());
  }

  private void place(RawRow row, Map<Integer, Map<String, String>> cells) {
    Map<String, String> of = options.family("of");
    String stated = of.getOrDefault(String.valueOf(row.number()), of.getOrDefault("*", ""));
    String setting = "of:" + row.number();
    String name = Labs.text(table, row, "name");
    Optional<Home> said = homes.stream().filter(h -> Heading.key(h.text()).equals(Heading.key(stated)) || h.cells().containsValue(stated)).findFirst();
    Optional<Home> known = said.isPresent() || !stated.isEmpty() ? said : only(homes.stream().filter(h -> h.samples().contains(Heading.key(name))).toList())
        .or(() -> only(homes.stream().filter(h -> h.analyses().contains(Heading.key(name))).toList()))
        .or(() -> only(homes.stream().filter(h -> Heading.key(h.name()).equals(Heading.key(name))).toList()));
    Optional<Home> guess = stated.isEmpty() ? known.or(() -> byBeginning(name)) : said;
    guess.ifPresent(home -> cells.computeIfAbsent(row.number(), n -> new TreeMap<>()).putAll(texts(home, name)));
    boolean confirmed = Labs.isConfirmed(options, Aspect.BELONGING);
    State state = said.isPresent() ? State.STATED : known.isPresent() ? State.READ : guess.isEmpty() ? State.OPEN : confirmed ? State.STATED : State.GUESSED;
    String why = said.isPresent() ? "stated" : known.isPresent() ? "a sample, analysis or thing of this very name is there"
        : guess.isPresent() ? "the name begins like it" : stated.isEmpty() ? "the name begins like no trial, lot or sheet of the study"
        : "“" + stated + "” is no trial, lot or sheet of the study";
    recognised.add(new Recognised(Aspect.BELONGING, Labs.shown(table, row), guess.map(Home::text).orElse(""), why, state, setting, choices()));
  }

  private Map<String, String> texts(Home home, String name) {
    Map<String, String> texts = new TreeMap<>(home.cells());
    if (home.samples().contains(Heading.key(name)) && Labs.column(table, "sample").isEmpty()) {
      texts.put("sample", name);
    }
    return texts;
  }

  private static Optional<Home> only(List<Home> some) {
    return some.size() == 1 ? Optional.of(some.get(0)) : Optional.empty();
  }

  /** The home with the longest name with which a text begins, up to the end of a word. */
  private Optional<Home> byBeginning(String text) {
    List<Home> some = homes.stream().filter(h -> begins(text, h.name())).sorted(Comparator.comparingInt((Home h) -> h.name().length()).reversed()).toList();
    boolean unclear = some.size() > 1 && some.get(0).name().length() == some.get(1).name().length();
    return some.isEmpty() || unclear ? Optional.empty() : Optional.of(some.get(0));
  }

  private static boolean begins(String text, String name) {
    String a = Heading.key(text);
    String b = Heading.key(name);
    if (!a.startsWith(b) || a.length() == b.length()) {
      return a.equals(b);
    }
    char last = b.charAt(b.length() - 1);
    char next = a.charAt(b.length());
    // a word ends where a letter follows a digit, as in T4a, but T1 is no beginning of T12
    return Character.isDigit(last) ? !Character.isDigit(next) : !Character.isLetterOrDigit(next);
  }

  private List<String> choices() {
    return homes.stream().map(Home::text).toList();
  }
}
