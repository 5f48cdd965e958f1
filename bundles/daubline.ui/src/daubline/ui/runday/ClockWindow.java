package daubline.ui.runday;

import daubline.ui.Words;
import daubline.ui.look.Pages;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Shell;

/** The clock in a window of its own, for a second screen or a stand: its figures fill it, to be read from afar. F11 fills the screen. */
final class ClockWindow {

  private final Shell shell;
  private final ClockFace face;

  ClockWindow(Shell parent) {
    shell = new Shell(parent.getDisplay(), SWT.SHELL_TRIM);
    shell.setText(Words.of("run.window.title"));
    shell.setImages(parent.getImages());
    shell.setLayout(new FillLayout());
    face = new ClockFace(shell);
    Pages.named(face, Words.of("run.window.title"), "");
    face.addListener(SWT.KeyDown, e -> {
      if (e.keyCode == SWT.F11) {
        shell.setFullScreen(!shell.getFullScreen());
      } else if (e.keyCode == SWT.ESC) {
        shell.setFullScreen(false);
      }
    });
    shell.setSize(900, 600);
    shell.open();
  }

  void show(List<RunScreen.Figure> figures) {
    face.show(figures);
  }

  boolean isClosed() {
    return shell.isDisposed();
  }

  void close() {
    shell.dispose();
  }
}
