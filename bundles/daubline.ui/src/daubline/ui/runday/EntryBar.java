package daubline.ui.runday;

import daubline.base.Finding;
import daubline.record.runday.Draft;
import daubline.record.runday.RunDay;
import daubline.ui.Words;
import daubline.ui.explain.Explanations;
import daubline.ui.explain.WhatIsThis;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The line in which an entry is typed after its key: Enter writes it, Tab goes on, Esc drops it. */
final class EntryBar extends Composite {

  private final Label heading;
  private final Composite fields;
  private final Label message;
  private final List<Text> texts = new ArrayList<>();
  private final Runnable done;

  EntryBar(Composite parent, Runnable done) {
    super(parent, SWT.NONE);
    this.done = done;
    setLayout(new GridLayout(1, false));
    setBackground(Hue.BAND.color());
    heading = line(Fonts.STRONG);
    fields = new Composite(this, SWT.NONE);
    fields.setBackground(Hue.BAND.color());
    fields.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    message = line(Fonts.PLAIN);
    message.setData("id", "runMessage");
  }

  private Label line(Fonts font) {
    Label label = new Label(this, SWT.WRAP);
    label.setFont(font.font());
    label.setBackground(Hue.BAND.color());
    label.setForeground(Hue.INK.color());
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.widthHint = 300;
    label.setLayoutData(data);
    return label;
  }

  /** Says something when nothing is being typed. */
  void idle(String title, String text) {
    clear();
    heading.setText(title);
    say(text, false);
    folded(true);
  }

  /** Takes the room of the fields away while nothing is typed. */
  private void folded(boolean fold) {
    fields.setVisible(!fold);
    ((GridData) fields.getLayoutData()).exclude = fold;
    requestLayout();
    getParent().layout(true, true);
  }

  private void clear() {
    texts.clear();
    for (Control child : fields.getChildren()) {
      child.dispose();
    }
  }

  private void say(String text, boolean wrong) {
    message.setText(text.replace("&", "&&"));
    message.setForeground(wrong ? Hue.LINING.color() : Hue.INK.color());
  }

  /** Whether an entry is being typed. */
  boolean isTyping() {
    return !texts.isEmpty();
  }

  /** Asks for what goes with a key. */
  void ask(RunDay day, Draft draft) {
    ask(Words.of("run.entry", day.log().words().of("event." + draft.kind().name()), draft.at().toLocalTime()), draft.columns(),
        draft.columns().stream().map(c -> day.log().headingOf(c)).toList(), draft.columns().stream().map(c -> String.join(", ", day.log().wordsOf(c))).toList(),
        draft.offered(), typed -> day.write(draft, typed));
    for (int i = 0; i < texts.size(); i++) {
      String column = draft.columns().get(i);
      WhatIsThis.on(texts.get(i), () -> List.of(Explanations.event(draft.kind()), Explanations.said(day.log().headingOf(column), day.log().aboutOf(column))));
    }
  }

  /** Asks for one text. */
  void ask(String title, String label, Consumer<String> taker) {
    ask(title, List.of("reason"), List.of(label), List.of(""), List.of(""), typed -> {
      if (typed.get(0).isBlank()) {
        return Optional.of(Finding.error("text.empty", label, "nothing was typed", "write a few words"));
      }
      taker.accept(typed.get(0));
      return Optional.empty();
    });
  }

  private void ask(String title, List<String> ids, List<String> labels, List<String> words, List<String> offered,
      java.util.function.Function<List<String>, Optional<Finding>> writer) {
    clear();
    heading.setText(title);
    say(Words.of("run.how"), false);
    fields.setLayout(new GridLayout(2 * ids.size(), false));
    for (int i = 0; i < ids.size(); i++) {
      Label label = new Label(fields, SWT.NONE);
      label.setText(labels.get(i));
      label.setBackground(Hue.BAND.color());
      Text text = new Text(fields, SWT.BORDER);
      text.setFont(Fonts.LARGER.font());
      text.setText(offered.get(i));
      text.setData("id", "run." + ids.get(i));
      GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
      data.widthHint = 60;
      text.setLayoutData(data);
      Pages.named(text, labels.get(i), words.get(i));
      String said = words.get(i);
      text.addListener(SWT.FocusIn, e -> {
        say(said.isEmpty() ? Words.of("run.how") : said, false);
        // what is offered is replaced by what is typed
        text.selectAll();
      });
      text.addListener(SWT.KeyDown, e -> key(e.keyCode, writer));
      texts.add(text);
    }
    folded(false);
    texts.get(0).setFocus();
    texts.get(0).selectAll();
  }

  private void key(int keyCode, java.util.function.Function<List<String>, Optional<Finding>> writer) {
    if (keyCode == SWT.ESC) {
      done.run();
    } else if (keyCode == SWT.CR || keyCode == SWT.KEYPAD_CR) {
      Optional<Finding> complaint = writer.apply(texts.stream().map(Text::getText).toList());
      complaint.ifPresentOrElse(f -> say("△ " + f.where() + ": " + Words.said(f), true), done);
    }
  }
}
