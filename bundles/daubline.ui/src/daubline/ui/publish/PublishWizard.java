package daubline.ui.publish;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.deposit.DepositData;
import daubline.analysis.deposit.Disclosure;
import daubline.publication.Publication;
import daubline.publication.PublicationOptions;
import daubline.session.StudyException;
import daubline.session.StudyImage;
import daubline.session.StudySession;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import daubline.ui.study.Notices;
import daubline.ui.study.OpenStudy;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;

/** Writes everything that leaves a study. */
public final class PublishWizard extends Wizard {

  private final OpenStudy study;
  private final FormPage form;
  private final DepositPage deposit;

  private PublishWizard(OpenStudy study) {
    this.study = study;
    this.form = new FormPage(study);
    this.deposit = new DepositPage(study);
    setWindowTitle(Words.of("publish.title"));
    setNeedsProgressMonitor(true);
  }

  /** Asks what to write and where, and writes it. */
  public static void open(Shell shell, OpenStudy study) {
    WizardDialog dialog = new WizardDialog(shell, new PublishWizard(study)) {
      @Override
      protected Button createButton(Composite parent, int id, String label, boolean isDefault) {
        String own = switch (id) {
          case IDialogConstants.BACK_ID -> Words.of("publish.back");
          case IDialogConstants.NEXT_ID -> Words.of("publish.next");
          case IDialogConstants.FINISH_ID -> Words.of("publish.do");
          case IDialogConstants.CANCEL_ID -> Words.of("publish.cancel");
          default -> label;
        };
        return super.createButton(parent, id, own, isDefault);
      }
    };
    dialog.setHelpAvailable(false);
    dialog.setPageSize(560, 380);
    dialog.create();
    PlatformUI.getWorkbench().getHelpSystem().setHelp(dialog.getShell(), "daubline.help.publish");
    Pages.nameMessage(dialog.getShell(), Words.of("dialog.message"));
    dialog.open();
  }

  @Override
  public void addPages() {
    addPage(form);
    addPage(deposit);
    addPage(new PreviewPage(study, form, deposit));
  }

  @Override
  public boolean performFinish() {
    ComparisonOptions comparison = ComparisonOptions.standard();
    PublicationOptions options = deposit.complete(form.options(comparison));
    Disclosure disclosure = deposit.disclosure();
    StudyImage image = study.session().image();
    Path folder = form.folder();
    Publication.Written[] written = new Publication.Written[1];
    try {
      getContainer().run(true, true, monitor -> written[0] = write(image, folder, disclosure, comparison, options, monitor));
    } catch (InterruptedException e) {
      form.say(Words.of("publish.stopped"));
      getContainer().showPage(form);
      return false;
    } catch (InvocationTargetException e) {
      Notices.show(Words.of("publish.failed"), String.valueOf(e.getCause().getMessage()) + "\n\n" + Words.of("publish.failed.remedy"));
      return false;
    }
    MessageDialog.openInformation(getShell(), Words.of("publish.done"), Summary.of(written[0], folder));
    return true;
  }

  private static Publication.Written write(StudyImage image, Path folder, Disclosure disclosure, ComparisonOptions comparison, PublicationOptions options,
      IProgressMonitor monitor) throws InvocationTargetException, InterruptedException {
    monitor.beginTask(Words.of("publish.comparing"), IProgressMonitor.UNKNOWN);
    try (StudySession copy = image.read()) {
      StudyResults results = StudyComparison.of(copy, comparison);
      Optional<DepositData> data = options.deposit().isEmpty() ? Optional.empty() : Optional.of(DepositData.of(copy, disclosure));
      SubMonitor[] steps = new SubMonitor[1];
      return Publication.write(results, data, folder, options, (what, done, all) -> {
        steps[0] = steps[0] == null ? SubMonitor.convert(monitor, all) : steps[0];
        steps[0].worked(1);
        monitor.subTask(what);
        return !monitor.isCanceled();
      });
    } catch (CancellationException e) {
      throw new InterruptedException(e.getMessage());
    } catch (StudyException | IOException | RuntimeException e) {
      throw new InvocationTargetException(e);
    }
  }
}
