package daubline.ui.look;

import java.util.Locale;
import java.util.Optional;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Path;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ImageRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.Image;

/** The icons of our own; each is a drawing icons/&lt;name&gt;.svg. */
public enum Icon {
  STUDY, SITE, CONTEXT, EVIDENCE, RECONSTRUCTION, SERIES, TRIAL, RUNLOG, LOT, BLOOM, SLAG, SAMPLE, COMPARE, CHECKS, WHEREFROM, DEPOSIT, FIGURE,
  FILE, PERSON, CITATION, SAFETY, CONSISTENT, NOT_CONSISTENT, NOT_TESTED, CHECK_NEEDED, DAUBLINE;

  /** Its description, for actions and menus. */
  public ImageDescriptor descriptor() {
    String file = "icons/" + name().toLowerCase(Locale.ROOT) + ".svg";
    return Optional.ofNullable(FileLocator.find(Platform.getBundle("daubline.ui"), new Path(file)))
        .map(ImageDescriptor::createFromURL).orElseGet(ImageDescriptor::getMissingImageDescriptor);
  }

  /** The image; the platform disposes of it. */
  public Image image() {
    ImageRegistry registry = JFaceResources.getImageRegistry();
    String key = "daubline.ui.icon." + name();
    if (registry.get(key) == null) {
      registry.put(key, descriptor());
    }
    return registry.get(key);
  }
}
