package daubline.analysis.deposit;

import daubline.base.Finding;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What of a study goes into an archive.
 *
 * @param folder the study's folder, where its files are
 * @param tables its public rows
 * @param withheld what was left out or changed, in sentences
 * @param unnamed names that must not be published, for looking through files that go out as they are
 */
public record DepositData(Path folder, List<Rows> tables, List<String> withheld, List<String> unnamed) {

  public DepositData {
    tables = List.copyOf(tables);
    withheld = List.copyOf(withheld);
    unnamed = List.copyOf(unnamed);
  }

  /** The public rows of an open study; the study is not changed. */
  public static DepositData of(StudySession session, Disclosure disclosure) {
    PublicCopy.Result copy = PublicCopy.of(session.study(), disclosure);
    return new DepositData(session.folder(), StudyRows.of(copy.study()), copy.withheld(), HiddenNames.of(session.study()).spellings());
  }

  /**
   * Puts the rows together and takes them apart again.
   *
   * @return what was lost on the way; empty when nothing was
   */
  public static List<Finding> losses(List<Rows> tables) {
    StudyFromRows.Result back = StudyFromRows.read(tables);
    List<Finding> findings = new ArrayList<>(back.findings());
    List<Rows> again = StudyRows.of(back.study());
    for (Rows table : tables) {
      List<List<String>> found = again.stream().filter(t -> t.name().equals(table.name())).findFirst().map(Rows::rows).orElse(List.of());
      if (!found.equals(table.rows())) {
        findings.add(Finding.error("deposit.loss", "data/" + table.name() + ".csv", "its rows do not come back unchanged when they are read again",
            "report this; until it is mended, add the study's own files to the deposit"));
      }
    }
    return findings;
  }
}
