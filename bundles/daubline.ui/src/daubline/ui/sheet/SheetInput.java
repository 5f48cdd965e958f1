package daubline.ui.sheet;

import daubline.ui.look.Icon;
import daubline.ui.study.OpenStudy;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** One object of an open study, to be edited. */
public final class SheetInput implements IEditorInput {

  private final OpenStudy study;
  private final EObject object;

  /** An input. */
  public SheetInput(OpenStudy study, EObject object) {
    this.study = study;
    this.object = object;
  }

  /** The study. */
  public OpenStudy study() {
    return study;
  }

  /** The object. */
  public EObject object() {
    return object;
  }

  @Override
  public boolean exists() {
    return false;
  }

  @Override
  public ImageDescriptor getImageDescriptor() {
    return Icon.EVIDENCE.descriptor();
  }

  @Override
  public String getName() {
    return OpenStudy.nameOf(object);
  }

  @Override
  public IPersistableElement getPersistable() {
    return null;
  }

  @Override
  public String getToolTipText() {
    return getName() + " – " + study.name();
  }

  @Override
  public <T> T getAdapter(Class<T> adapter) {
    return null;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SheetInput i && i.object == object;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(object);
  }
}
