package daubline.ui.record;

import daubline.record.print.PaperSize;
import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.study.Notices;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.FileDialog;

/** Writes paper into a file that the person names, and shows it with the program that the desktop has for it. */
public final class PrintFile {

  private static final Set<String> LETTER_COUNTRIES = Set.of("US", "CA", "MX", "PH", "CL", "CO", "VE");

  private PrintFile() {
  }

  /** Writes onto a size of paper. */
  public interface Writer {
    /** Writes, and says which signs no typeface of this machine has. */
    Set<String> write(PaperSize size, OutputStream out) throws IOException;
  }

  /** Asks for a file, writes and shows it. */
  public static void choose(String name, Writer writer) {
    FileDialog dialog = new FileDialog(Over.shell(), SWT.SAVE);
    dialog.setFileName(name);
    dialog.setOverwrite(true);
    dialog.setFilterExtensions(new String[] {"*.pdf"});
    String chosen = dialog.open();
    if (chosen != null && write(Path.of(chosen), writer)) {
      Program.launch(chosen);
    }
  }

  /** Writes a file; a failure is shown, with what to do. */
  public static boolean write(Path file, Writer writer) {
    try (OutputStream out = Files.newOutputStream(file)) {
      Set<String> lost = writer.write(paper(), out);
      if (!lost.isEmpty()) {
        Notices.show(Words.of("print.lost", String.join(" ", lost)), Words.of("print.lost.remedy"));
      }
      return true;
    } catch (IOException e) {
      Notices.show(Words.of("print.failed", file.getFileName()), Words.of("print.failed.remedy", String.valueOf(e.getMessage())));
      return false;
    }
  }

  /** The paper of the country. */
  static PaperSize paper() {
    return LETTER_COUNTRIES.contains(Locale.getDefault().getCountry()) ? PaperSize.LETTER : PaperSize.A4;
  }
}
