package daubline.session;

import daubline.base.Finding;
import daubline.model.ModelPackage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.FeatureNotFoundException;
import org.eclipse.emf.ecore.xmi.ClassNotFoundException;
import org.eclipse.emf.ecore.xmi.PackageNotFoundException;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;

/** How a study's XMI files are read and written: one element a line, ids as references, no document type, no entities. */
final class StudyXmi {

  private static final String DISALLOW_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";
  private static final Map<String, Boolean> PARSER = Map.of(
      DISALLOW_DOCTYPE, true,
      "http://xml.org/sax/features/external-general-entities", false,
      "http://xml.org/sax/features/external-parameter-entities", false);
  private static final Map<Object, Object> LOAD = Map.of(
      XMLResource.OPTION_PARSER_FEATURES, PARSER, XMLResource.OPTION_DEFER_IDREF_RESOLUTION, true);
  private static final Map<Object, Object> SAVE = Map.of(
      XMLResource.OPTION_ENCODING, "UTF-8", XMLResource.OPTION_PROCESS_DANGLING_HREF, XMLResource.OPTION_PROCESS_DANGLING_HREF_RECORD);

  private StudyXmi() {
  }

  /** A resource set that knows the study model and nothing else, with or without a platform around it. */
  static ResourceSet newSet() {
    ResourceSetImpl set = new ResourceSetImpl() {
      /** Only what the session read itself is looked at; a reference never makes the tool fetch another file. */
      @Override
      public Resource getResource(URI uri, boolean loadOnDemand) {
        return super.getResource(uri, false);
      }
    };
    set.getPackageRegistry().put(ModelPackage.eNS_URI, ModelPackage.eINSTANCE);
    set.getResourceFactoryRegistry().getExtensionToFactoryMap().put("xmi", (Resource.Factory) StudyXmi::newResource);
    set.setURIResourceMap(new HashMap<>());
    return set;
  }

  private static Resource newResource(URI uri) {
    XMIResourceImpl resource = new XMIResourceImpl(uri);
    resource.setIntrinsicIDToEObjectMap(new HashMap<>());
    return resource;
  }

  /** Reads one file's content into a resource of the set. */
  static Resource read(ResourceSet set, URI uri, byte[] content, String place) throws StudyException {
    Resource resource = set.createResource(uri);
    try {
      resource.load(new ByteArrayInputStream(content), LOAD);
      return resource;
    } catch (IOException | RuntimeException e) {
      throw new StudyException(complaint(e, place), e);
    }
  }

  private static Finding complaint(Exception e, String place) {
    Throwable root = e;
    while (root.getCause() != null && root.getCause() != root) {
      root = root.getCause();
    }
    String message = String.valueOf(root.getMessage());
    if (message.contains("DOCTYPE") || message.contains("disallow-doctype-decl")) {
      return Finding.error("study.doctype", place, "the file declares a document type, which a study file never does",
          "it was not written by this tool; restore it from a copy you trust");
    }
    if (root instanceof FeatureNotFoundException || root instanceof ClassNotFoundException || root instanceof PackageNotFoundException) {
      return Finding.error("study.newer", place, "the file holds something unknown here: " + message,
          "it may come from a newer version; open it with that version");
    }
    return Finding.error("study.broken", place, "the file cannot be read: " + message,
        "it may be cut off; restore it from the backups of the study or from another copy. Nothing was changed");
  }

  /** The bytes that saving a resource would write. */
  static byte[] write(Resource resource) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 14);
    try {
      resource.save(out, SAVE);
    } catch (IOException e) {
      throw new IllegalStateException("Writing to memory failed", e);
    }
    return out.toByteArray();
  }
}
