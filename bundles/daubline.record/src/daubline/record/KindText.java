package daubline.record;

import daubline.base.Finding;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * Kinds of entries as they are typed from paper: the whole word, the key of the day, or a beginning that only one kind has, in
 * the language of the desk before that of the study.
 *
 * @param desk where it is written
 */
record KindText(Desk desk) {

  /** The word of a kind in the language of the desk. */
  String word(EventKind kind) {
    return desk.words().of("kind." + kind.word());
  }

  /** All words. */
  List<String> words() {
    return EventKind.distinct().stream().map(this::word).toList();
  }

  /** The kind that a text stands for; empty when it stands for none, for several or when it is blank. */
  Optional<EventKind> read(String typed) {
    List<EventKind> meant = meant(typed);
    return meant.size() == 1 ? Optional.of(meant.get(0)) : Optional.empty();
  }

  /** What is wrong with a text that is no one kind; nothing is wrong with a blank one. */
  Optional<Finding> complaint(String typed) {
    List<EventKind> meant = meant(typed);
    if (typed.isBlank() || meant.size() == 1) {
      return Optional.empty();
    }
    return Optional.of(meant.isEmpty() ? Finding.error("value.category", "", "“" + typed.strip() + "” is no kind of entry", "choose one of: " + String.join(", ", words()))
        : Finding.error(EntryTable.SEVERAL, "", "“" + typed.strip() + "” begins several kinds: " + String.join(", ", meant.stream().map(this::word).toList()),
            "type one letter more, or choose from the list (F4)"));
  }

  private List<EventKind> meant(String typed) {
    String text = typed.strip();
    if (text.isEmpty()) {
      return List.of();
    }
    List<EventKind> whole = EventKind.distinct().stream().filter(k -> text.equalsIgnoreCase(word(k)) || text.equalsIgnoreCase(k.word())).limit(1).toList();
    if (!whole.isEmpty()) {
      return whole;
    }
    Optional<EventKind> key = text.length() == 1 ? EventKind.ofKey(text.charAt(0)) : Optional.empty();
    if (key.isPresent()) {
      return List.of(key.get());
    }
    List<EventKind> own = begunBy(text, this::word);
    return own.isEmpty() ? begunBy(text, EventKind::word) : own;
  }

  private static List<EventKind> begunBy(String text, Function<EventKind, String> word) {
    String beginning = text.toLowerCase(Locale.ROOT);
    return EventKind.distinct().stream().filter(k -> word.apply(k).toLowerCase(Locale.ROOT).startsWith(beginning)).toList();
  }
}
