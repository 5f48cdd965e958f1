package daubline.ui.table;

import daubline.base.Finding;
import daubline.session.StudyException;
import daubline.session.merge.Merging;
import daubline.session.merge.Side;
import daubline.session.merge.StudyMerge;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Pages;
import daubline.ui.look.TitledDialog;
import daubline.ui.study.Notices;
import daubline.ui.study.OpenStudy;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;

/** Lists what two people changed differently, field by field, lets a person choose, and puts the copies together as one change. */
final class MergingDialog extends TitledDialog {

  private final OpenStudy study;
  private final Merging merging;
  private final StudyMerge merge;
  private final List<Finding> files;
  private final MergingModel model;
  private Grid grid;

  MergingDialog(Shell shell, OpenStudy study, Merging merging) throws StudyException {
    super(shell);
    this.study = study;
    this.merging = merging;
    this.merge = merging.compare(study.session());
    this.files = merging.files(study.session());
    this.model = new MergingModel(merge, this::say);
  }

  @Override
  protected void configureShell(Shell shell) {
    super.configureShell(shell);
    shell.setText(Words.of("merging.title"));
    PlatformUI.getWorkbench().getHelpSystem().setHelp(shell, "daubline.help.merging");
  }

  @Override
  protected Point getInitialSize() {
    return new Point(1000, 560);
  }

  @Override
  protected Control createDialogArea(Composite parent) {
    setTitle(Words.of("merging.heading", merging.source().getFileName(), study.name()));
    Composite page = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
    page.setLayout(new GridLayout(2, false));
    page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    Label about = new Label(page, SWT.WRAP);
    String found = merge.isThreeWay() ? Words.of("merging.threeway", merging.base().map(b -> b.getFileName().toString()).orElse("")) : Words.of("merging.twoway");
    about.setText(files.isEmpty() ? found : found + "\n" + files.stream().map(f -> f.where() + ": " + Words.said(f))
        .collect(Collectors.joining("\n")));
    GridData wide = new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1);
    wide.widthHint = 900;
    about.setLayoutData(wide);
    grid = new Grid(page, Words.of("merging.title"), model);
    grid.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1));
    grid.control().setData("id", "mergingGrid");
    all(page, "merging.mine", Side.MINE);
    all(page, "merging.theirs", Side.THEIRS);
    return page;
  }

  private void all(Composite page, String key, Side side) {
    Button button = new Button(page, SWT.PUSH);
    button.setText(Words.of(key));
    button.setData("id", key);
    button.setEnabled(!merge.conflicts().isEmpty());
    Pages.named(button, Words.of(key), "");
    button.addListener(SWT.Selection, e -> model.chooseAll(side));
  }

  @Override
  protected void createButtonsForButtonBar(Composite parent) {
    createButton(parent, IDialogConstants.OK_ID, Words.of("merging.do"), true);
    createButton(parent, IDialogConstants.CANCEL_ID, Words.of("import.cancel"), false);
    boolean nothing = merge.conflicts().isEmpty() && merge.taken().isEmpty() && files.isEmpty();
    getButton(IDialogConstants.OK_ID).setEnabled(!nothing);
    say();
  }

  private void say() {
    int open = merge.conflicts().size() - model.choices().size();
    setMessage(Words.of("merging.counts", merge.taken().size(), merge.conflicts().size(), open), open > 0 ? IMessageProvider.WARNING : IMessageProvider.NONE);
    if (grid != null) {
      grid.refresh();
    }
  }


  @Override
  protected void okPressed() {
    try {
      List<String> lost = merging.apply(study.session(), model.choices(), Words.of("change.merging", merging.source().getFileName()));
      super.okPressed();
      if (!lost.isEmpty()) {
        Notices.show(Words.of("merging.lost"), String.join("\n", lost));
      }
    } catch (StudyException e) {
      Notices.show(e.finding());
    }
  }

}
