package daubline.ui.views;

import daubline.model.BlindRecording;
import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Lies over what would show run or evidence while somebody records blind, and says why nothing is there and how to end it. */
public final class Veil {

  private final Composite area;
  private final StackLayout stack = new StackLayout();
  private final Composite body;
  private final Composite over;
  private final Label said;

  /** A veil that is lifted. */
  public Veil(Composite area) {
    this.area = area;
    area.setLayout(stack);
    body = new Composite(area, SWT.NONE);
    body.setLayout(new org.eclipse.swt.layout.FillLayout());
    over = Pages.plain(area, 1);
    said = Pages.text(over, "", Fonts.PLAIN.font(), 200);
    said.setData("id", "veil");
    stack.topControl = body;
  }

  /** What is covered; the content is made in it. */
  public Composite body() {
    return body;
  }

  /** Lies over the content while somebody records blind in this study; returns whether it does. */
  public boolean fall(Optional<OpenStudy> study) {
    Optional<BlindRecording> on = study.flatMap(OpenStudy::blind);
    String text = on.map(Veil::why).orElse("");
    if (!text.equals(said.getText())) {
      said.setText(text);
      stack.topControl = on.isPresent() ? over : body;
      area.layout(true, true);
    }
    return on.isPresent();
  }

  /** When a recording began, in the order of the language and the time of this machine; as written when that is no time. */
  public static String when(BlindRecording on) {
    try {
      return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT).withLocale(Locale.getDefault())
          .format(Instant.parse(String.valueOf(on.getBegun())).atZone(ZoneId.systemDefault()));
    } catch (DateTimeException e) {
      return String.valueOf(on.getBegun());
    }
  }

  /** The sentence that says why nothing is shown. */
  public static String why(BlindRecording on) {
    return Words.of("blind.veil", on.getBy() == null ? "?" : OpenStudy.nameOf(on.getBy()), when(on)).replace("&", "&&");
  }
}
