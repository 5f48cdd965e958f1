package daubline.ui.study;

import daubline.session.backup.BackupReader;
import daubline.ui.Words;
import daubline.ui.sheet.SheetDrop;
import daubline.ui.table.Imports;
import daubline.ui.table.MergingStart;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/**
 * Opens what is dropped on the window: a study's folder or its study.xmi is opened, a table file is imported, a backup
 * is merged or becomes a study of its own, a picture or the file of a logger goes to the sheet in front.
 */
public final class FileDrop extends DropTargetAdapter {

  private final Consumer<List<Path>> taker;

  private FileDrop(Consumer<List<Path>> taker) {
    this.taker = taker;
  }

  /** Makes a control take files. */
  public static void on(Composite control) {
    on(control, FileDrop::take);
  }

  /** Makes a control take files in its own way. */
  public static void on(Control control, Consumer<List<Path>> taker) {
    DropTarget target = new DropTarget(control, DND.DROP_COPY | DND.DROP_DEFAULT | DND.DROP_LINK);
    target.setTransfer(FileTransfer.getInstance());
    target.addDropListener(new FileDrop(taker));
  }

  @Override
  public void dragEnter(DropTargetEvent event) {
    event.detail = Arrays.stream(event.dataTypes).anyMatch(FileTransfer.getInstance()::isSupportedType) ? DND.DROP_COPY : DND.DROP_NONE;
  }

  @Override
  public void drop(DropTargetEvent event) {
    if (event.data instanceof String[] files) {
      taker.accept(Arrays.stream(files).map(Path::of).toList());
    }
  }

  /** Opens or imports files as though they had been dropped. */
  public static void take(List<Path> files) {
    for (Path file : files) {
      if (Files.isDirectory(file)) {
        Start.open(() -> file);
      } else if (file.endsWith("study.xmi")) {
        Start.open(file::getParent);
      } else if (Studies.get().current().flatMap(OpenStudy::blind).isPresent() && (BackupReader.isBackup(file) || Imports.isTable(file))) {
        Notices.show(Words.of("drop.blind", file.getFileName()), Words.of("drop.blind.remedy"));
      } else if (BackupReader.isBackup(file)) {
        MergingStart.dropped(file);
      } else if (SheetDrop.take(file)) {
        // the sheet in front has a place for it
      } else if (Imports.isTable(file)) {
        Imports.start(file);
      } else if (SheetDrop.isPicture(file)) {
        Notices.show(Words.of("drop.picture", file.getFileName()), Words.of("drop.picture.remedy"));
      } else {
        Notices.show(Words.of("drop.unknown", file.getFileName()), Words.of("drop.remedy"));
      }
    }
  }
}
