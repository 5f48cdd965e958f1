package daubline.session;

import daubline.base.FileFault;
import daubline.base.Finding;
import daubline.model.Identified;
import daubline.model.Study;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The study in memory beside the bytes of its files: what is on disk, and what saving would write now. */
final class StudyDocument {

  private final StudyFolder folder;
  private final ResourceSet resources;
  private final Study study;
  private final Map<String, byte[]> onDisk = new TreeMap<>();
  private final Map<String, byte[]> current = new TreeMap<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Recorder recorder = new Recorder();

  private StudyDocument(StudyFolder folder, ResourceSet resources, Study study) {
    this.folder = folder;
    this.resources = resources;
    this.study = study;
  }

  /** A new study that is on no disk yet. */
  static StudyDocument of(StudyFolder folder, Study study) {
    ResourceSet resources = StudyXmi.newSet();
    study.setFormat(Migrations.CURRENT);
    resources.createResource(uri(folder, StudyFolder.STUDY_FILE)).getContents().add(study);
    Ids.complete(study);
    StudyDocument document = new StudyDocument(folder, resources, study);
    document.track();
    document.attachParts();
    return document;
  }

  /** Reads the study of a folder. */
  static StudyDocument load(StudyFolder folder) throws StudyException {
    Map<String, byte[]> files = readFiles(folder);
    return load(folder, files, files);
  }

  /** Reads a study from files that differ from those on disk: recovered ones. */
  static StudyDocument load(StudyFolder folder, Map<String, byte[]> onDisk, Map<String, byte[]> files) throws StudyException {
    ResourceSet resources = StudyXmi.newSet();
    Map<String, byte[]> upgraded = Migrations.upgrade(files, folder.root().toString());
    for (Map.Entry<String, byte[]> file : upgraded.entrySet()) {
      StudyXmi.read(resources, uri(folder, file.getKey()), file.getValue(), folder.file(file.getKey()).toString());
    }
    Resource root = resources.getResource(uri(folder, StudyFolder.STUDY_FILE), false);
    if (root.getContents().size() != 1 || !(root.getContents().get(0) instanceof Study study)) {
      throw notAStudy(folder);
    }
    EcoreUtil.resolveAll(resources);
    StudyDocument document = new StudyDocument(folder, resources, study);
    document.onDisk.putAll(onDisk);
    study.setFormat(Migrations.CURRENT);
    document.findings.addAll(LoadChecks.of(study, resources, folder));
    document.track();
    document.attachParts();
    return document;
  }

  static Map<String, byte[]> readFiles(StudyFolder folder) throws StudyException {
    if (!folder.holdsStudy()) {
      throw notAStudy(folder);
    }
    Map<String, byte[]> files = new LinkedHashMap<>();
    try {
      for (String file : folder.modelFiles()) {
        files.put(file, Files.readAllBytes(folder.file(file)));
      }
    } catch (IOException e) {
      throw unreachable(folder.root(), e);
    }
    return files;
  }

  private static StudyException notAStudy(StudyFolder folder) {
    return new StudyException(Finding.error("study.none", folder.root().toString(), "this folder holds no study",
        "name a folder that holds a file " + StudyFolder.STUDY_FILE));
  }

  static StudyException unreachable(Path place, IOException e) {
    return new StudyException(Finding.error("study.unreachable", place.toString(),
        FileFault.what(e),
        "check that the folder is there, that the disk is not full and that you may write to it"), e);
  }

  private static URI uri(StudyFolder folder, String relative) {
    return URI.createFileURI(folder.file(relative).toString());
  }

  StudyFolder folder() {
    return folder;
  }

  ResourceSet resources() {
    return resources;
  }

  Recorder recorder() {
    return recorder;
  }

  Study study() {
    return study;
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  private void track() {
    study.eAdapters().add(recorder);
    resources.getResources().forEach(resource -> resource.setModified(true));
  }

  /** Gives each site and each series a file of its own, and takes the file of a removed one away. */
  void attachParts() {
    study.getSites().forEach(site -> attach(site, StudyFolder.SITES));
    study.getSeries().forEach(series -> attach(series, StudyFolder.SERIES));
    for (Resource resource : List.copyOf(resources.getResources())) {
      boolean orphan = resource.getContents().stream().noneMatch(o -> o == study || o.eContainer() == study);
      if (orphan) {
        current.remove(relative(resource));
        resources.getResources().remove(resource);
      }
    }
    serialise();
  }

  private void attach(Identified part, String subfolder) {
    if (((InternalEObject) part).eDirectResource() == null) {
      URI uri = uri(folder, subfolder + "/" + URI.encodeSegment(part.getId(), true) + ".xmi");
      Resource resource = Optional.ofNullable(resources.getResource(uri, false)).orElseGet(() -> resources.createResource(uri));
      resource.getContents().clear();
      resource.getContents().add(part);
      resource.setModified(true);
      study.eResource().setModified(true);
    } else if (!resources.getResources().contains(part.eResource())) {
      resources.getResources().add(part.eResource());
      part.eResource().setModified(true);
    }
  }

  private void serialise() {
    for (Resource resource : resources.getResources()) {
      if (resource.isModified()) {
        current.put(relative(resource), StudyXmi.write(resource));
        resource.setModified(false);
      }
    }
  }

  private String relative(Resource resource) {
    Path file = Path.of(resource.getURI().toFileString());
    return folder.root().relativize(file).toString().replace('\\', '/');
  }

  /** The files whose content differs from the disk, by relative path; null content for files to take away. */
  Map<String, byte[]> changedFiles() {
    Map<String, byte[]> changed = new TreeMap<>();
    current.forEach((file, content) -> {
      if (!Arrays.equals(content, onDisk.get(file))) {
        changed.put(file, content);
      }
    });
    onDisk.keySet().stream().filter(file -> !current.containsKey(file)).forEach(file -> changed.put(file, null));
    return changed;
  }

  /** All files as saving would write them. */
  Map<String, byte[]> files() {
    return current;
  }

  /** Writes the changed files: parts first, the study last, so that it never names a part that is not there. */
  void save() throws StudyException {
    Map<String, byte[]> changed = changedFiles();
    List<String> order = new ArrayList<>(changed.keySet());
    order.sort((a, b) -> Boolean.compare(a.equals(StudyFolder.STUDY_FILE), b.equals(StudyFolder.STUDY_FILE)));
    for (String file : order) {
      if (changed.get(file) != null) {
        write(file, changed.get(file));
      }
    }
    for (String file : order) {
      if (changed.get(file) == null) {
        remove(file);
      }
    }
  }

  private void write(String file, byte[] content) throws StudyException {
    try {
      StudyFolder.writeAtomically(folder.file(file), content);
      onDisk.put(file, content);
    } catch (IOException e) {
      throw unreachable(folder.file(file), e);
    }
  }

  private void remove(String file) throws StudyException {
    try {
      Files.deleteIfExists(folder.file(file));
      onDisk.remove(file);
    } catch (IOException e) {
      throw unreachable(folder.file(file), e);
    }
  }

  /** The files whose content on disk is no longer what was read or saved last. */
  List<String> changedOutside() throws StudyException {
    Map<String, byte[]> now = folder.holdsStudy() ? readFiles(folder) : Map.of();
    List<String> changed = new ArrayList<>();
    now.forEach((file, content) -> {
      if (!Arrays.equals(content, onDisk.get(file))) {
        changed.add(file);
      }
    });
    onDisk.keySet().stream().filter(file -> !now.containsKey(file)).forEach(changed::add);
    return changed;
  }

  void refuseIfChangedOutside() throws StudyException {
    List<String> changed = changedOutside();
    if (!changed.isEmpty()) {
      throw new StudyException(Finding.error("study.changed", folder.root().toString(),
          "changed by somebody else since it was opened: " + String.join(", ", changed),
          "save a copy under another name and compare, or save over it if you are sure"));
    }
  }

  Optional<EObject> find(String id) {
    return resources.getResources().stream().map(r -> r.getEObject(id)).filter(Objects::nonNull).findFirst();
  }

  String digest() {
    return digest(current);
  }

  static String digest(Map<String, byte[]> files) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      new TreeMap<>(files).forEach((file, content) -> {
        digest.update(file.getBytes(StandardCharsets.UTF_8));
        digest.update(content);
      });
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
