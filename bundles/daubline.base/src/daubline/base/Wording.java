package daubline.base;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the tool says, in a language other than English: findings, titles, headings, captions, reasons, lettering, names of
 * variables and criteria. All of it is written in English where it is made; here the English text is the key to the other one,
 * from the tables of shared/. {0}, {1} … stand for names, numbers and what a person typed, {0#} for a number alone. What is not there
 * stays English.
 */
public final class Wording implements UnaryOperator<String> {

  private static final Pattern PLACE = Pattern.compile("\\{(\\d)(#?)}");
  private static final Pattern SENTENCE_END = Pattern.compile("(?<=[a-z)\\d%]\\.) (?=[\\p{Lu}\\d])");
  /** Names of variables, after which a value may stand. */
  private static final Set<String> NAMES = Variables.standard().all().stream().map(Variable::name).collect(Collectors.toUnmodifiableSet());
  private static final String NUMBER = "([\\d.,−-]+)";
  private static final Pattern NOTE = Pattern.compile("(\\p{Lu}[^()]*)( \\([^()]*\\)\\.)");
  private static final int REMEMBERED = 20_000;
  /** Everything as it is made. */
  public static final Wording ENGLISH = new Wording(Map.of(), List.of(), Set.of());

  private final Map<String, String> whole;
  private final List<Sentence> sentences;
  private final Set<String> own;
  /** What was asked before: a chart asks for the same words at every stroke. */
  private final Map<String, String> told = new ConcurrentHashMap<>();

  /** A sentence with places: what it looks like, the longest piece of it that is fixed, and what to say instead. */
  private record Sentence(Pattern english, List<Integer> places, String fixed, int letters, String other) {

    static Sentence of(String english, String other) {
      StringBuilder pattern = new StringBuilder();
      List<Integer> places = new ArrayList<>();
      Matcher m = PLACE.matcher(english);
      int end = 0;
      while (m.find()) {
        pattern.append(Pattern.quote(english.substring(end, m.start()))).append(m.group(2).isEmpty() ? "(.+?)" : NUMBER);
        places.add(Integer.valueOf(m.group(1)));
        end = m.end();
      }
      pattern.append(Pattern.quote(english.substring(end)));
      String[] pieces = PLACE.split(english);
      String fixed = Arrays.stream(pieces).max(Comparator.comparingInt(String::length)).orElse("");
      return new Sentence(Pattern.compile(pattern.toString(), Pattern.DOTALL), places, fixed, String.join("", pieces).length(), other);
    }
  }

  private Wording(Map<String, String> whole, List<Sentence> sentences, Set<String> own) {
    this.whole = whole;
    this.sentences = sentences;
    this.own = own;
  }

  /**
   * The words of a language.
   *
   * @param language a two-letter code; all stays English in one that the tool is not written in
   */
  public static Wording of(String language) {
    return language.equals(CatalogueWords.GERMAN) ? German.WORDS : ENGLISH;
  }

  /** The same, but some texts stay as they are: the names that a person gave, which may look like words of the tool. */
  public Wording keeping(Collection<String> names) {
    return this == ENGLISH ? this : new Wording(whole, sentences, Set.copyOf(names));
  }

  /** The two-letter code of the language. */
  public String language() {
    return this == ENGLISH ? "en" : CatalogueWords.GERMAN;
  }

  /** Whether everything stays as it is. */
  public boolean isEnglish() {
    return this == ENGLISH;
  }

  /** A finding with its sentences in this language; place and code stay. */
  public Finding in(Finding f) {
    return new Finding(f.severity(), f.code(), f.where(), apply(f.what()), apply(f.remedy()), f.subject(), f.variable());
  }

  /** A text in this language, with what stands in its places; as it is when it is not known. */
  @Override
  public String apply(String english) {
    if (this == ENGLISH || english.isEmpty() || own.contains(english)) {
      return english;
    }
    String known = whole.get(english);
    if (known == null && (known = told.get(english)) == null) {
      known = eachOf(english, true).or(() -> sentences.stream().filter(s -> english.contains(s.fixed())).map(s -> filled(s, english)).flatMap(Optional::stream).findFirst())
          .or(() -> parts(english)).orElse(english);
      if (told.size() > REMEMBERED) {
        told.clear();
      }
      told.put(english, known);
    }
    return known;
  }

  /**
   * What a word for missing, present or absent means.
   *
   * @param word in this language or in English, in whatever case; any other text means none
   */
  public Optional<ValueKind> kind(String word) {
    return Arrays.stream(ValueKind.values()).filter(k -> k.isMissing() || k.isYesNo())
        .filter(k -> k.word().equalsIgnoreCase(word.strip()) || apply(k.word()).equalsIgnoreCase(word.strip())).findFirst();
  }

  /** Whether a text is known as it stands. */
  public boolean knows(String english) {
    return whole.containsKey(english) || sentences.stream().anyMatch(s -> s.english().matcher(english).matches());
  }

  /** Several sentences, each told by itself; when only whole ones count, each must be known. */
  private Optional<String> eachOf(String english, boolean whole) {
    List<String> several = List.of(SENTENCE_END.split(english));
    boolean known = several.size() > 1 && (!whole || several.stream().noneMatch(s -> apply(s).equals(s)));
    return known ? Optional.of(several.stream().map(this).collect(Collectors.joining(" "))) : Optional.empty();
  }

  /** Several sentences; a list of which every part is known; or a known word before a number, a unit or another known text. */
  private Optional<String> parts(String english) {
    Optional<String> several = eachOf(english, false);
    if (several.isPresent()) {
      return several;
    }
    for (String between : List.of("; ", ", ", " or ", " × ")) {
      List<String> list = List.of(english.split(between));
      if (list.size() > 1 && list.stream().allMatch(part -> isNumber(part) || !apply(part).equals(part))) {
        return Optional.of(list.stream().map(this).collect(Collectors.joining(whole.getOrDefault(between, between))));
      }
    }
    return headed(english).or(() -> noted(english));
  }

  /** A sentence as a note: with a capital, and in brackets whom it is about. */
  private Optional<String> noted(String english) {
    Matcher m = NOTE.matcher(english);
    if (!m.matches()) {
      return Optional.empty();
    }
    String sentence = Character.toLowerCase(m.group(1).charAt(0)) + m.group(1).substring(1);
    String other = apply(sentence);
    return other.equals(sentence) ? Optional.empty() : Optional.of(Character.toUpperCase(other.charAt(0)) + other.substring(1) + m.group(2));
  }

  private Optional<String> headed(String english) {
    for (int end = english.length() - 1; end > 1; end--) {
      if (" :".indexOf(english.charAt(end)) >= 0 && whole.containsKey(english.substring(0, end)) && !own.contains(english.substring(0, end))) {
        boolean colon = english.charAt(end) == ':';
        int next = colon && english.startsWith(" ", end + 1) ? end + 2 : end + 1;
        String rest = english.substring(next);
        if (isNumber(rest) || colon && !apply(rest).equals(rest) || NAMES.contains(english.substring(0, end)) && whole.containsKey(rest)) {
          return Optional.of(whole.get(english.substring(0, end)) + english.substring(end, next) + apply(rest));
        }
      }
    }
    return Optional.empty();
  }

  /** Whether a text is a number with or without its unit, as far as its first sign tells. */
  private static boolean isNumber(String text) {
    return !text.isEmpty() && (Character.isDigit(text.charAt(0)) || "+±≥≤<>–-−([".indexOf(text.charAt(0)) >= 0);
  }

  private Optional<String> filled(Sentence sentence, String english) {
    Matcher m = sentence.english().matcher(english);
    if (!m.matches()) {
      return Optional.empty();
    }
    Map<Integer, String> parts = new HashMap<>();
    for (int i = 0; i < sentence.places().size(); i++) {
      // what stands in a place may be a sentence of its own
      parts.putIfAbsent(sentence.places().get(i), apply(m.group(i + 1)));
    }
    return Optional.of(PLACE.matcher(sentence.other()).replaceAll(p -> Matcher.quoteReplacement(parts.get(Integer.valueOf(p.group(1))))));
  }

  /** Read once, when somebody first asks. */
  private static final class German {
    static final Wording WORDS = read();

    private static Wording read() {
      Map<String, String> whole = new HashMap<>(variables());
      List<Sentence> sentences = new ArrayList<>();
      for (NamedCsvRecord row : SharedTable.rows("criteria_de.csv")) {
        whole.put(row.getField("english_name"), row.getField("name"));
        whole.put(row.getField("english_meaning"), row.getField("meaning"));
      }
      Stream.of("findings_de.csv", "results_de.csv").flatMap(table -> SharedTable.rows(table).stream()).forEach(row -> {
        String english = row.getField("english");
        if (PLACE.matcher(english).find()) {
          sentences.add(Sentence.of(english, row.getField("german")));
        } else {
          whole.put(english, row.getField("german"));
        }
      });
      // the sentence with most of its own is meant
      sentences.sort(Comparator.comparingInt(Sentence::letters).reversed());
      return new Wording(whole, sentences, Set.of());
    }

    /** Names, groups and words of variables; a word that means different things is left to where its variable is known. */
    private static Map<String, String> variables() {
      CatalogueWords words = CatalogueWords.of(CatalogueWords.GERMAN);
      Map<String, Set<String>> all = new HashMap<>();
      for (Variable v : Variables.standard().all()) {
        Variable told = words.told(v);
        all.computeIfAbsent(v.name(), n -> new HashSet<>()).add(told.name());
        all.computeIfAbsent(v.name().toLowerCase(Locale.ROOT), n -> new HashSet<>()).add(told.name());
        all.computeIfAbsent(v.group(), n -> new HashSet<>()).add(told.group());
        all.computeIfAbsent(v.meaning(), n -> new HashSet<>()).add(told.meaning());
        v.words().forEach(w -> all.computeIfAbsent(w, n -> new HashSet<>()).add(words.word(v.id(), w)));
      }
      return all.entrySet().stream().filter(e -> e.getValue().size() == 1).collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().iterator().next()));
    }
  }
}
