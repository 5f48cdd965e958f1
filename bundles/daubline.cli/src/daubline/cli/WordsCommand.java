package daubline.cli;

import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.record.Desk;
import daubline.record.RecordWords;
import daubline.record.WordTable;
import daubline.session.StudySession;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The pick-lists of the run log: says them, or sets one. */
@Command(name = "words", mixinStandardHelpOptions = true,
    description = "List the words offered in the run log for flame, smoke, sound and inlet; with a list and words, set them and save. “-” goes back to the standard.")
final class WordsCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Parameters(index = "1", arity = "0..1", paramLabel = "LIST", description = "what is looked at, as listed")
  private String list;

  @Parameters(index = "2", arity = "0..1", paramLabel = "WORDS", description = "words with semicolons between them, or -")
  private String words;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = words == null ? study.unread() : study.unreadToChange()) {
      WordTable table = new WordTable(new Desk(session, () -> DecimalSign.POINT, new RecordWords(Locale.ENGLISH)));
      if (list == null) {
        for (int row = 0; row < table.rows(); row++) {
          say(table, row);
        }
        return Out.DONE;
      }
      int row = row(table);
      Optional<Finding> wrong = words == null ? Optional.empty() : table.put(row, 1, words.strip().equals("-") ? "" : words);
      if (wrong.isPresent()) {
        return Out.findings(List.of(wrong.get()));
      }
      if (words != null) {
        session.save();
      }
      say(table, row);
      return Out.DONE;
    }
  }

  private int row(WordTable table) {
    for (int row = 0; row < table.rows(); row++) {
      if (table.text(row, 0).equalsIgnoreCase(list.strip())) {
        return row;
      }
    }
    throw new IllegalArgumentException("“" + list + "” is not chosen from words in the run log – “words STUDY” lists what is");
  }

  private static void say(WordTable table, int row) {
    boolean own = !table.text(row, 1).equals(table.text(row, 2));
    Out.line("%s: %s%s", table.text(row, 0), table.text(row, 1), own ? " (standard: " + table.text(row, 2) + ")" : "");
    table.finding(row, 1).ifPresent(f -> Out.line("  %s", f));
  }
}
