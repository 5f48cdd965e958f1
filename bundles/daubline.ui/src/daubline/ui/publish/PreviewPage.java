package daubline.ui.publish;

import daubline.analysis.StudyResults;
import daubline.analysis.deposit.DepositData;
import daubline.charts.Figures;
import daubline.base.Wording;
import daubline.charts.NamedFigure;
import daubline.charts.WordedFigure;
import daubline.export.Discretion;
import daubline.export.Style;
import daubline.export.Table;
import daubline.export.Tables;
import daubline.export.format.TerminalText;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** What will be written: every table and figure, and what the public will not see. */
final class PreviewPage extends WizardPage {

  private final OpenStudy study;
  private final FormPage form;
  private final DepositPage deposit;
  private final List<String> texts = new ArrayList<>();
  private org.eclipse.swt.widgets.List list;
  private Text text;

  PreviewPage(OpenStudy study, FormPage form, DepositPage deposit) {
    super("preview", Words.of("publish.preview"), null);
    this.study = study;
    this.form = form;
    this.deposit = deposit;
    setDescription(Words.of("publish.preview.about"));
  }

  @Override
  public void createControl(Composite parent) {
    SashForm page = new SashForm(parent, SWT.HORIZONTAL);
    list = new org.eclipse.swt.widgets.List(page, SWT.BORDER | SWT.V_SCROLL | SWT.SINGLE);
    list.setData("id", "publish-preview-list");
    Pages.named(list, Words.of("publish.preview"), "");
    text = new Text(page, SWT.BORDER | SWT.MULTI | SWT.READ_ONLY | SWT.H_SCROLL | SWT.V_SCROLL);
    text.setData("id", "publish-preview-text");
    text.setFont(JFaceResources.getTextFont());
    Pages.named(text, Words.of("publish.preview"), "");
    page.setWeights(2, 3);
    list.addListener(SWT.Selection, e -> text.setText(list.getSelectionIndex() < 0 ? "" : texts.get(list.getSelectionIndex())));
    setControl(page);
  }

  @Override
  public void setVisible(boolean visible) {
    if (visible) {
      fill();
    }
    super.setVisible(visible);
  }

  private void add(String name, String content) {
    list.add(name);
    texts.add(content);
  }

  private void fill() {
    list.removeAll();
    texts.clear();
    Optional<StudyResults> results = study.results();
    if (results.isEmpty()) {
      setMessage(Words.of("publish.preview.wait"), INFORMATION);
      return;
    }
    setMessage(null);
    if (deposit.isWanted()) {
      List<String> withheld = DepositData.of(study.session(), deposit.disclosure()).withheld();
      add(Words.of("publish.preview.withheld", withheld.size()), withheld.isEmpty() ? Words.of("publish.preview.nothing") : String.join("\n", withheld));
    }
    Wording wording = Wording.of(form.language()).keeping(results.get().snapshot().names());
    Style style = form.options(daubline.analysis.ComparisonOptions.standard()).style().in(wording);
    Discretion discretion = new Discretion(results.get().snapshot().record().people());
    Tables.all().forEach(spec -> table(discretion.table(spec.build(results.get(), form.tables()).in(wording)), style));
    Figures.all().forEach(spec -> figures(wording.apply(spec.title()), spec.all(results.get()).stream().map(f -> WordedFigure.of(f, wording)).map(f -> f.reading(discretion::text)).toList()));
    list.select(0);
    list.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
  }

  private void table(Table table, Style style) {
    add(Words.of("publish.preview.table", table.title(), table.rows().size()), new TerminalText(style).text(table));
  }

  private void figures(String title, List<NamedFigure> figures) {
    if (figures.isEmpty()) {
      add(Words.of("publish.preview.nofigure", title), Words.of("figures.nothing"));
    }
    figures.forEach(f -> add(Words.of("publish.preview.figure", f.title()), f.figure().caption()));
  }
}
