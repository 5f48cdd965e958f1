package daubline.ui.sheet;

import daubline.base.Finding;
import daubline.base.Severity;
import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.look.Passage;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;

/**
 * What is to be said of a result, a line each: what needs a look first, with a triangle, then the notes, with a ring.
 */
final class FindingLines {

  private final Composite lines;
  private final Passage warnings;
  private final Passage notes;

  FindingLines(Composite parent, String id, int wrap) {
    lines = Pages.tight(parent, 1);
    lines.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
    warnings = Pages.passage(lines, Fonts.PLAIN, Hue.LINING, wrap);
    notes = Pages.passage(lines, Fonts.PLAIN, Hue.QUIET, wrap);
    List.of(warnings, notes).forEach(l -> l.setData("id", id));
  }

  Composite control() {
    return lines;
  }

  /** Shows findings, errors before warnings before notes. */
  void show(List<Finding> findings) {
    say(warnings, "△ ", findings.stream().filter(f -> f.severity() != Severity.NOTE).sorted(Comparator.comparing(f -> !f.isError())).toList());
    say(notes, "○ ", findings.stream().filter(f -> f.severity() == Severity.NOTE).toList());
  }

  private static void say(Passage passage, String mark, List<Finding> findings) {
    passage.setText(findings.stream().map(f -> mark + Words.said(f)).collect(Collectors.joining("\n")));
    passage.setVisible(!findings.isEmpty());
    ((GridData) passage.getLayoutData()).exclude = findings.isEmpty();
  }
}
