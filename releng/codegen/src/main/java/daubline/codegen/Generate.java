package daubline.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceFactoryImpl;

/** Writes the code of the study model, or checks that what is there is what the model generates. */
public final class Generate {

  private static final String BUNDLE = "daubline.model";

  private Generate() {
  }

  /**
   * Generates or checks.
   *
   * @param args the folder of the bundles, and "write" or "check"
   */
  public static void main(String[] args) throws IOException {
    Path bundle = Path.of(args[0]).toAbsolutePath().normalize().resolve(BUNDLE);
    Path temporary = Files.createTempDirectory("daubline-codegen");
    copy(bundle.resolve("model"), Files.createDirectories(temporary.resolve(BUNDLE)).resolve("model"));
    generate(temporary.resolve(BUNDLE));
    boolean current = content(temporary.resolve(BUNDLE).resolve("src-gen")).equals(content(bundle.resolve("src-gen")));
    if (args[1].equals("check")) {
      if (!current) {
        System.err.println(bundle.resolve("src-gen") + " is not what model/study.ecore generates. Type: releng/regenerate");
        System.exit(1);
      }
      System.out.println("generated code is current");
    } else {
      delete(bundle.resolve("src-gen"));
      copy(temporary.resolve(BUNDLE).resolve("src-gen"), bundle.resolve("src-gen"));
      System.out.println("generated into " + bundle.resolve("src-gen"));
    }
    delete(temporary);
  }

  private static void generate(Path bundle) {
    EcorePlugin.getPlatformResourceMap().put(BUNDLE, URI.createFileURI(bundle + "/"));
    Map<String, Object> factories = Resource.Factory.Registry.INSTANCE.getExtensionToFactoryMap();
    factories.put("ecore", new EcoreResourceFactoryImpl());
    factories.put("genmodel", new XMIResourceFactoryImpl());
    GenModelPackage.eINSTANCE.eClass();
    ResourceSetImpl resources = new ResourceSetImpl();
    resources.getURIConverter().getURIMap().putAll(EcorePlugin.computePlatformURIMap(true));
    GenModel model = (GenModel) resources.getResource(uri("study.genmodel"), true).getContents().get(0);
    EPackage study = (EPackage) resources.getResource(uri("study.ecore"), true).getContents().get(0);
    // the genmodel holds only settings; the classes are those of the Ecore
    model.getGenPackages().get(0).initialize(study);
    model.reconcile();
    model.setCanGenerate(true);
    complainOf(model.diagnose());
    Generator generator = new Generator();
    generator.getAdapterFactoryDescriptorRegistry().addDescriptor(GenModelPackage.eNS_URI, GenModelGeneratorAdapterFactory.DESCRIPTOR);
    generator.setInput(model);
    String kind = GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE;
    complainOf(generator.generate(model, kind, kind, new BasicMonitor()));
  }

  private static URI uri(String file) {
    return URI.createPlatformResourceURI(BUNDLE + "/model/" + file, true);
  }

  private static void complainOf(Diagnostic diagnostic) {
    if (diagnostic.getSeverity() >= Diagnostic.ERROR) {
      throw new IllegalStateException(diagnostic + " " + diagnostic.getChildren(), diagnostic.getException());
    }
  }

  private static Map<String, String> content(Path folder) throws IOException {
    Map<String, String> content = new TreeMap<>();
    for (Path file : Files.exists(folder) ? walk(folder) : List.<Path>of()) {
      if (Files.isRegularFile(file)) {
        content.put(folder.relativize(file).toString(), Files.readString(file));
      }
    }
    return content;
  }

  private static void copy(Path from, Path to) throws IOException {
    for (Path file : walk(from)) {
      Path target = to.resolve(from.relativize(file).toString());
      if (Files.isDirectory(file)) {
        Files.createDirectories(target);
      } else {
        Files.copy(file, target);
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    for (Path file : Files.exists(folder) ? walk(folder).stream().sorted(Comparator.reverseOrder()).toList() : List.<Path>of()) {
      Files.delete(file);
    }
  }

  private static List<Path> walk(Path folder) throws IOException {
    try (var files = Files.walk(folder)) {
      return files.toList();
    }
  }
}
