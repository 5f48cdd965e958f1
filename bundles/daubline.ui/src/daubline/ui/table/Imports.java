package daubline.ui.table;

import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.study.Notices;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;

/** Begins the import of a table into the current study. */
public final class Imports {

  private Imports() {
  }

  /** Whether a file can be a table. */
  public static boolean isTable(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return isBibliography(file) || name.endsWith(".csv") || name.endsWith(".xlsx") || name.endsWith(".tsv") || name.endsWith(".txt");
  }

  /** Whether a file is named as a bibliographic file, which holds citations. */
  public static boolean isBibliography(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return name.endsWith(".bib") || name.endsWith(".ris");
  }

  /** Asks for a file and previews it. */
  public static void choose() {
    FileDialog dialog = new FileDialog(Over.shell(), SWT.OPEN);
    dialog.setFilterExtensions(new String[] {"*.csv;*.xlsx;*.tsv;*.txt;*.bib;*.ris", "*.*"});
    String file = dialog.open();
    if (file != null) {
      start(Path.of(file));
    }
  }

  /** Previews a file for the current study. */
  public static void start(Path file) {
    Optional<OpenStudy> study = Studies.get().current();
    if (study.isEmpty()) {
      Notices.show(Words.of("import.nostudy", file.getFileName()), Words.of("import.nostudy.remedy"));
    } else {
      new ImportDialog(Over.shell(), study.get(), file).open();
    }
  }
}
