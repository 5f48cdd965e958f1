package daubline.ui.commands;

import daubline.ui.Words;
import daubline.ui.study.Recent;
import daubline.ui.study.Start;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.actions.CompoundContributionItem;

/** The studies opened lately as lines of a menu. */
public final class RecentStudies extends CompoundContributionItem {

  @Override
  protected IContributionItem[] getContributionItems() {
    List<Path> studies = Recent.studies();
    return studies.isEmpty() ? new IContributionItem[] {new ActionContributionItem(nothing())}
        : studies.stream().map(folder -> new ActionContributionItem(new Opening(folder))).toArray(IContributionItem[]::new);
  }

  private static Action nothing() {
    Action none = new Action(Words.of("recent.none")) {
    };
    none.setEnabled(false);
    return none;
  }

  private static final class Opening extends Action {
    private final Path folder;

    Opening(Path folder) {
      super((folder.getFileName() + "  –  " + folder.getParent()).replace("&", "&&"));
      this.folder = folder;
    }

    @Override
    public void run() {
      Start.open(() -> folder);
    }
  }
}
