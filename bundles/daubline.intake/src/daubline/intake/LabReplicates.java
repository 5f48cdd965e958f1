package daubline.intake;

import daubline.intake.Recognised.Aspect;
import daubline.intake.Recognised.State;
import daubline.intake.raw.RawRow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Recognises repeated measurements of one sample by their names: the same name, dup or rep behind it, a and b, 1 and 2. */
final class LabReplicates {

  private static final Pattern WORD = Pattern.compile("(.*?\\S)(?:[\\s_\\-./(\\[]+|(?<=\\d))(?:dup|duplicate|duplikat|rep|repeat|replicate|wdh|wiederholung|doppel|rerun)\\.?\\s*\\d*[)\\]]?",
      Pattern.CASE_INSENSITIVE);
  private static final Pattern LETTER = Pattern.compile("(.*?[\\d\\p{L}])(?:[\\s_\\-./(]+|(?<=\\d))([a-h])\\)?");
  private static final Pattern DIGIT = Pattern.compile("(.*?[\\d\\p{L}])[\\s_\\-./(#]+([1-9])\\)?");

  private static final String SAID = "stated";

  private final Table table;
  private final IntakeOptions options;
  private final Predicate<String> isHome;
  private final List<Recognised> recognised;
  private final Map<Integer, List<RawRow>> joined = new HashMap<>();
  private final List<RawRow> passedOver = new ArrayList<>();

  /**
   * A recognition.
   *
   * @param isHome whether a text is the name of a trial, lot or sheet: T4-1 and T4-2 are two samples of trial T4
   */
  LabReplicates(Table table, IntakeOptions options, Predicate<String> isHome, List<Recognised> recognised) {
    this.table = table;
    this.options = options;
    this.isHome = isHome;
    this.recognised = recognised;
  }

  /** Rows of which another gives the mean, by its number. */
  Map<Integer, List<RawRow>> joined() {
    return joined;
  }

  /** Rows that are no analyses of their own. */
  List<RawRow> passedOver() {
    return passedOver;
  }

  private record Group(String name, String why, List<RawRow> rows) {
  }

  /** Puts what is recognised into the texts of the rows. */
  void mark(List<RawRow> rows, Map<Integer, Map<String, String>> cells) {
    if (Labs.isLong(table) || Labs.column(table, "replicate").isPresent() || table.fixed().containsKey("replicate")) {
      return;
    }
    List<Group> groups = groups(rows, cells);
    if (groups.isEmpty()) {
      return;
    }
    String way = options.get("replicates").orElse("kept");
    boolean said = options.get("replicates").isPresent() || groups.stream().allMatch(g -> g.why().equals(SAID));
    State state = said || Labs.isConfirmed(options, Aspect.REPLICATE) ? State.STATED : State.GUESSED;
    recognised.add(new Recognised(Aspect.REPLICATE, "*", way, groups.stream().map(g -> g.name() + ": " + g.rows().size() + ", " + g.why())
        .collect(Collectors.joining("; ")), state, "replicates", List.of("kept", "joined", "apart")));
    if (!way.equals("apart")) {
      groups.forEach(g -> mark(g, way.equals("joined"), cells));
    }
  }

  private void mark(Group group, boolean join, Map<Integer, Map<String, String>> cells) {
    List<String> taken = new ArrayList<>();
    for (RawRow row : group.rows()) {
      Map<String, String> texts = cells.computeIfAbsent(row.number(), n -> new TreeMap<>());
      String name = Labs.text(table, row, "name");
      String own = join ? group.name() : free(name, taken);
      taken.add(Heading.key(own));
      if (!own.equals(name)) {
        texts.put("name", own);
      }
      if (!join) {
        texts.put("replicate", group.name());
      }
      recognised.add(new Recognised(Aspect.REPLICATE, Labs.shown(table, row), group.name(), join ? "goes into the mean" : own.equals(name)
          ? "an analysis of its own" : "an analysis of its own, called “" + own + "”", State.READ, "row:" + row.number() + ":replicate", List.of(group.name(), "-")));
    }
    if (join) {
      List<RawRow> others = group.rows().subList(1, group.rows().size());
      joined.put(group.rows().get(0).number(), others);
      passedOver.addAll(others);
    }
  }

  private static String free(String name, List<String> taken) {
    String free = name;
    for (int i = 2; taken.contains(Heading.key(free)); i++) {
      free = name + " (" + i + ")";
    }
    return free;
  }

  private List<Group> groups(List<RawRow> rows, Map<Integer, Map<String, String>> cells) {
    List<RawRow> left = new ArrayList<>(rows.stream().filter(r -> !Labs.text(table, r, "name").isEmpty() && !isApart(r)).toList());
    List<Group> groups = new ArrayList<>(stated(left));
    groups.addAll(find(left, cells, this::same, "the same name"));
    groups.addAll(find(left, cells, r -> stem(WORD, r), "the name says so"));
    groups.addAll(find(left, cells, r -> stem(LETTER, r), "the names differ in a last letter"));
    groups.addAll(find(left, cells, r -> stem(DIGIT, r), "the names differ in a last digit"));
    groups.sort(Comparator.comparingInt(g -> g.rows().get(0).number()));
    return groups;
  }

  private boolean isApart(RawRow row) {
    return "-".equals(options.family("row").get(row.number() + ":replicate"));
  }

  /** The groups that a person states row by row. */
  private List<Group> stated(List<RawRow> left) {
    Map<String, List<RawRow>> by = left.stream().filter(r -> options.family("row").containsKey(r.number() + ":replicate"))
        .collect(Collectors.groupingBy(r -> options.family("row").get(r.number() + ":replicate"), LinkedHashMap::new, Collectors.toList()));
    by.values().forEach(left::removeAll);
    return by.entrySet().stream().map(e -> new Group(e.getKey(), SAID, e.getValue())).toList();
  }

  private Optional<String> same(RawRow row) {
    return Optional.of(Labs.text(table, row, "name"));
  }

  private Optional<String> stem(Pattern pattern, RawRow row) {
    Matcher m = pattern.matcher(Labs.text(table, row, "name"));
    return m.matches() && !isHome.test(m.group(1)) ? Optional.of(m.group(1)) : Optional.empty();
  }

  private List<Group> find(List<RawRow> left, Map<Integer, Map<String, String>> cells, java.util.function.Function<RawRow, Optional<String>> stem, String why) {
    Map<String, List<RawRow>> by = new LinkedHashMap<>();
    Map<String, String> names = new HashMap<>();
    for (RawRow row : left) {
      stem.apply(row).ifPresent(s -> {
        String key = Heading.key(s) + "|" + home(row, cells);
        names.putIfAbsent(key, s);
        by.computeIfAbsent(key, k -> new ArrayList<>()).add(row);
      });
    }
    by.forEach((key, some) -> left.stream().filter(r -> !some.contains(r) && (Heading.key(Labs.text(table, r, "name")) + "|" + home(r, cells)).equals(key))
        .findFirst().ifPresent(r -> some.add(0, r)));
    List<Group> groups = by.entrySet().stream().filter(e -> e.getValue().size() > 1 && differ(e.getValue()))
        .map(e -> new Group(names.get(e.getKey()), why, List.copyOf(e.getValue()))).toList();
    groups.forEach(g -> left.removeAll(g.rows()));
    return groups;
  }

  /** Rows that are wholly alike are the same row twice, not two measurements. */
  private static boolean differ(List<RawRow> rows) {
    return rows.stream().map(RawRow::cells).distinct().count() == rows.size();
  }

  private String home(RawRow row, Map<Integer, Map<String, String>> cells) {
    return List.of("trial", "lot", "site", "context", "sheet").stream().map(c ->
        cells.getOrDefault(row.number(), Map.of()).getOrDefault(c, Heading.key(Labs.text(table, row, c)))).collect(Collectors.joining("|"));
  }
}
