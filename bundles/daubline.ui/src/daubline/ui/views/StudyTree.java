package daubline.ui.views;

import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.Series;
import daubline.model.Site;
import daubline.model.Trial;
import daubline.ui.Words;
import daubline.ui.look.Hue;
import daubline.ui.look.Icon;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StyledCellLabelProvider;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.graphics.Image;

/** What the study tree shows: studies, their branches, and the objects on them. */
final class StudyTree extends StyledCellLabelProvider implements ITreeContentProvider {

  @Override
  public Object[] getElements(Object input) {
    return Studies.get().all().toArray();
  }

  @Override
  public Object[] getChildren(Object parent) {
    return switch (parent) {
      case OpenStudy study -> Branch.of(study).toArray();
      case Branch branch -> branch.isCovered() ? new Object[0] : branch.content().toArray();
      case Site site -> site.getContexts().toArray();
      case Context context -> context.getSheets().toArray();
      case Series series -> Span.of(series, trials(series)).toArray();
      case Span span -> span.trials().toArray();
      default -> new Object[0];
    };
  }

  /** The trials in their order, which tells which is which; by their code names while somebody records blind. */
  private static List<Trial> trials(Series series) {
    return OpenStudy.isBlind(series) ? series.getTrials().stream().sorted(Comparator.comparing(OpenStudy::nameOf)).toList() : series.getTrials();
  }

  @Override
  public boolean hasChildren(Object element) {
    return getChildren(element).length > 0;
  }

  @Override
  public Object getParent(Object element) {
    if (element instanceof Branch branch) {
      return branch.study();
    }
    if (element instanceof Span span) {
      return span.series();
    }
    if (element instanceof Trial trial && trial.eContainer() instanceof Series series && series.getTrials().size() > Span.MOST) {
      return Span.of(series, trials(series)).stream().map(Span.class::cast).filter(s -> s.trials().contains(trial)).findFirst().orElse(null);
    }
    if (element instanceof EObject object) {
      EObject container = object.eContainer();
      return container instanceof daubline.model.Study ? branchOf(object).orElse(null) : container;
    }
    return null;
  }

  private static Optional<Branch> branchOf(EObject object) {
    return Studies.get().all().stream().flatMap(s -> Branch.of(s).stream()).filter(b -> b.content().contains(object)).findFirst();
  }

  @Override
  public void update(ViewerCell cell) {
    String text = text(cell.getElement());
    String aside = aside(cell.getElement());
    cell.setText(aside.isEmpty() ? text : text + "  " + aside);
    StyleRange range = new StyleRange(text.length(), cell.getText().length() - text.length(), Hue.QUIET.color(), null);
    cell.setStyleRanges(aside.isEmpty() ? null : new StyleRange[] {range});
    cell.setImage(image(cell.getElement()));
    super.update(cell);
  }

  static String text(Object element) {
    return switch (element) {
      case OpenStudy study -> (study.session().isDirty() ? "*" : "") + study.name();
      case Branch branch -> Words.of(branch.key());
      case Span span -> Words.of("tree.span", span.from() + 1, span.from() + span.trials().size());
      case EObject object -> OpenStudy.nameOf(object);
      default -> String.valueOf(element);
    };
  }

  private static String aside(Object element) {
    return switch (element) {
      case Branch branch -> String.valueOf(branch.content().size());
      case Trial trial -> trial.getStatus() == null || OpenStudy.isBlind(trial) ? "" : Words.of(trial.getStatus())
          + (trial.getKind() == daubline.base.TrialKind.DEMONSTRATION ? ", " + Words.of(trial.getKind()) : "");
      case EvidenceSheet sheet -> sheet.getFeature() == null || OpenStudy.isBlind(sheet) ? "" : sheet.getFeature();
      default -> "";
    };
  }

  private static Image image(Object element) {
    return switch (element) {
      case OpenStudy study -> Icon.STUDY.image();
      case Branch branch -> branch.icon().image();
      case Site site -> Icon.SITE.image();
      case Context context -> Icon.CONTEXT.image();
      case EvidenceSheet sheet -> Icon.EVIDENCE.image();
      case Series series -> Icon.SERIES.image();
      case Span span -> Icon.TRIAL.image();
      case Trial trial -> Icon.TRIAL.image();
      case daubline.model.Reconstruction r -> Icon.RECONSTRUCTION.image();
      case daubline.model.FurnaceBuild b -> Icon.DAUBLINE.image();
      case daubline.model.Lot lot -> Icon.LOT.image();
      case daubline.model.Citation citation -> Icon.CITATION.image();
      case daubline.model.Person person -> Icon.PERSON.image();
      case daubline.model.ResidueClass residue -> Icon.SLAG.image();
      case daubline.model.VariableDefinition variable -> Icon.SAMPLE.image();
      default -> null;
    };
  }
}
