package daubline.ui.views;

import daubline.base.Finding;
import daubline.model.Hazard;
import daubline.model.Permission;
import daubline.model.Series;
import daubline.session.team.Readiness;
import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.sheet.Sheets;
import daubline.ui.study.OpenStudy;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Shown all day: the stop criteria, the hazards and permissions of the study, and the usual cautions. */
public final class SafetyView extends StudyPart {

  private static final List<String> CARDS = List.of("gas", "burns", "water", "dust", "crowd");
  private static final int WRAP = 240;

  private ScrolledComposite scroll;
  private OpenStudy of;
  private String shown = "";

  @Override
  protected void fill(Composite area) {
    scroll = new ScrolledComposite(area, SWT.V_SCROLL);
    scroll.setShowFocusedControl(true);
    scroll.setExpandHorizontal(true);
    scroll.setExpandVertical(true);
    scroll.setBackground(Hue.ASH.color());
    scroll.addListener(SWT.Resize, e -> size());
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    String now = study.map(SafetyView::digest).orElse("-");
    if (now.equals(shown) && of == study.orElse(null)) {
      return;
    }
    shown = now;
    of = study.orElse(null);
    Control old = scroll.getContent();
    Composite page = Pages.plain(scroll, 1);
    Pages.text(page, Words.of("safety.frame"), Fonts.STRONG.font(), WRAP);
    study.ifPresent(s -> own(page, s));
    Pages.heading(page, Words.of("safety.cards"));
    CARDS.forEach(card -> Pages.text(page, Words.of("safety.card." + card), Fonts.PLAIN.font(), WRAP));
    Pages.text(page, Words.of("safety.lines"), Fonts.PLAIN.font(), WRAP);
    scroll.setContent(page);
    if (old != null) {
      old.dispose();
    }
    size();
  }

  /** What the view shows of a study, so that it is rebuilt only when that changed. */
  private static String digest(OpenStudy study) {
    StringBuilder text = new StringBuilder(study.name());
    study.session().study().getSeries().forEach(s -> text.append(s.getName()).append(s.getStopCriteria()));
    study.session().study().getHazards().forEach(h -> text.append(h.getName()).append(h.getControl()).append(h.getNotApplicableBecause()).append(h.getOwner()).append(h.getReviewOn()));
    study.session().study().getPermissions().forEach(p -> text.append(p.getName()).append(p.getReference()).append(p.getValidFrom()).append(p.getValidUntil()));
    return text.toString();
  }

  private static void own(Composite page, OpenStudy study) {
    for (Series series : study.session().study().getSeries()) {
      boolean none = text(series.getStopCriteria()).isEmpty();
      if (!none) {
        Pages.heading(page, Words.of("safety.stop", OpenStudy.nameOf(series)));
      }
      Pages.text(page, none ? Words.of("safety.stop.none", OpenStudy.nameOf(series)) : series.getStopCriteria(), Fonts.LARGER.font(), WRAP);
    }
    Pages.heading(page, Words.of("safety.hazards"));
    List<Hazard> hazards = study.session().study().getHazards();
    hazards.forEach(h -> flagged(page, Words.of("safety.hazard", OpenStudy.nameOf(h), text(h.getControl()).isEmpty() ? text(h.getNotApplicableBecause()) : h.getControl()),
        Readiness.of(h, LocalDate.now().toString())));
    Pages.heading(page, Words.of("safety.permissions"));
    List<Permission> permissions = study.session().study().getPermissions();
    String today = LocalDate.now().toString();
    permissions.forEach(p -> flagged(page, Words.of("safety.permission", OpenStudy.nameOf(p), text(p.getReference()), text(p.getValidUntil())), Readiness.ended(p, today)));
    if (hazards.isEmpty() && permissions.isEmpty()) {
      Pages.text(page, Words.of("safety.none"), Fonts.PLAIN.font(), WRAP);
    }
    edit(page, study, "record.hazards");
    edit(page, study, "record.permissions");
  }

  /** A line, and below it what has run out or is missing. */
  private static void flagged(Composite page, String line, Optional<Finding> finding) {
    Pages.text(page, line, Fonts.PLAIN.font(), WRAP);
    finding.ifPresent(f -> Pages.text(page, "△ " + Words.said(f), Fonts.STRONG.font(), WRAP).setForeground(Hue.LINING.color()));
  }

  /** A button that opens the table in which it is written. */
  private static void edit(Composite page, OpenStudy study, String key) {
    Button button = new Button(page, SWT.PUSH);
    button.setText(Words.of(key) + "…");
    button.setData("id", "safety." + key);
    Pages.named(button, Words.of(key), Words.of("safety.edit"));
    button.addListener(SWT.Selection, e -> Sheets.open(study.session().study()).ifPresent(editor -> editor.show(key)));
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }

  private void size() {
    if (scroll.getContent() != null && scroll.getClientArea().width > 0) {
      scroll.setMinHeight(scroll.getContent().computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
    }
  }

  @Override
  protected boolean isShownBlind() {
    return true;
  }

  @Override
  public void setFocus() {
    scroll.setFocus();
  }
}
