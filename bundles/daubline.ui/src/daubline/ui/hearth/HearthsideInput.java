package daubline.ui.hearth;

import daubline.ui.Words;
import daubline.ui.look.Icon;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** The input of the one start page. */
public final class HearthsideInput implements IEditorInput {

  /** The only one. */
  public static final HearthsideInput ONLY = new HearthsideInput();

  private HearthsideInput() {
  }

  @Override
  public boolean exists() {
    return false;
  }

  @Override
  public ImageDescriptor getImageDescriptor() {
    return Icon.DAUBLINE.descriptor();
  }

  @Override
  public String getName() {
    return Words.of("hearth.name");
  }

  @Override
  public IPersistableElement getPersistable() {
    return null;
  }

  @Override
  public String getToolTipText() {
    return Words.of("hearth.tip");
  }

  @Override
  public <T> T getAdapter(Class<T> adapter) {
    return null;
  }
}
