package daubline.session;

import daubline.base.Finding;
import daubline.model.Identified;
import daubline.model.Study;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What can be noticed while a study is read: missing parts, references that lead nowhere, ids that stand twice. */
final class LoadChecks {

  private LoadChecks() {
  }

  /**
   * Checks a study just read.
   *
   * @throws StudyException when a part is missing, since saving would lose it
   */
  static List<Finding> of(Study study, ResourceSet resources, StudyFolder folder) throws StudyException {
    refuseMissingParts(study, folder);
    List<Finding> findings = new ArrayList<>();
    for (Resource resource : List.copyOf(resources.getResources())) {
      if (resource.getContents().stream().noneMatch(o -> o == study || o.eContainer() == study)) {
        findings.add(Finding.warning("study.orphan", resource.getURI().lastSegment(), "the study does not name this file",
            "it may come from another copy of the study; merge it by hand or take it away. It will not be saved again"));
      }
    }
    danglingReferences(resources, findings);
    repeatedIds(study, findings);
    return findings;
  }

  private static void refuseMissingParts(Study study, StudyFolder folder) throws StudyException {
    List<EObject> parts = new ArrayList<>(study.getSites());
    parts.addAll(study.getSeries());
    for (EObject part : parts) {
      if (part.eIsProxy()) {
        String file = EcoreUtil.getURI(part).trimFragment().lastSegment();
        throw new StudyException(Finding.error("study.part", folder.root().toString(), "the file " + file + " of the study is missing",
            "restore it from a backup or another copy; the study is not opened, so that nothing gets lost"));
      }
    }
  }

  private static void danglingReferences(ResourceSet resources, List<Finding> findings) {
    EcoreUtil.UnresolvedProxyCrossReferencer.find(resources).forEach((proxy, uses) -> {
      EObject user = uses.iterator().next().getEObject();
      String id = user instanceof Identified identified ? identified.getId() : "";
      findings.add(Finding.warning("study.dangling", user.eClass().getName() + " " + id,
          "refers to “" + EcoreUtil.getURI(proxy).fragment() + "”, which is not there",
          "choose what it should refer to, or clear it").about(id == null ? "" : id, ""));
    });
  }

  private static void repeatedIds(Study study, List<Finding> findings) {
    Map<String, EObject> seen = new HashMap<>();
    for (Iterator<EObject> all = study.eAllContents(); all.hasNext();) {
      if (all.next() instanceof Identified object && object.getId() != null && seen.put(object.getId(), object) != null) {
        findings.add(Finding.error("study.id", object.eClass().getName() + " " + object.getId(), "this id stands twice in the study",
            "give one of the two another id in the file, then mend the references to it").about(object.getId(), ""));
      }
    }
  }
}
