package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Path;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Every class, icon and text that a plugin.xml names is there. */
class PluginWalkTest {

  private static List<Bundle> bundles() {
    return Arrays.stream(FrameworkUtil.getBundle(PluginWalkTest.class).getBundleContext().getBundles())
        .filter(b -> b.getSymbolicName().startsWith("daubline.") && b.getEntry("plugin.xml") != null).toList();
  }

  @Test
  void everythingNamedIsThere() throws Exception {
    List<String> missing = new ArrayList<>();
    int seen = 0;
    for (Bundle bundle : bundles()) {
      Document xml;
      try (InputStream in = bundle.getEntry("plugin.xml").openStream()) {
        xml = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
      }
      NodeList all = xml.getElementsByTagName("*");
      for (int i = 0; i < all.getLength(); i++) {
        seen += check(bundle, (Element) all.item(i), missing);
      }
    }
    assertTrue(missing.isEmpty(), missing.toString());
    assertTrue(seen > 60, "only " + seen + " names were checked");
  }

  private static int check(Bundle bundle, Element element, List<String> missing) {
    int seen = 0;
    for (String attribute : new String[] {"class", "defaultHandler"}) {
      String name = element.getAttribute(attribute);
      if (name.startsWith("daubline.")) {
        seen++;
        try {
          bundle.loadClass(name).getDeclaredConstructor();
        } catch (ReflectiveOperationException e) {
          missing.add(bundle.getSymbolicName() + ": " + name);
        }
      }
    }
    String icon = element.getAttribute("icon");
    if (!icon.isEmpty()) {
      seen++;
      URL found = icon.startsWith("platform:") ? resolve(icon) : FileLocator.find(bundle, new Path(icon));
      if (found == null) {
        missing.add(bundle.getSymbolicName() + ": " + icon);
      }
    }
    for (String attribute : new String[] {"name", "label"}) {
      String key = element.getAttribute(attribute);
      if (key.startsWith("%")) {
        seen++;
        if (org.eclipse.core.runtime.Platform.getResourceString(bundle, key).equals(key)) {
          missing.add(bundle.getSymbolicName() + ": " + key);
        }
      }
    }
    return seen;
  }

  private static URL resolve(String icon) {
    try {
      return FileLocator.resolve(new URL(icon));
    } catch (java.io.IOException e) {
      return null;
    }
  }
}
