package org.roofspring.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.codegen.merge.java.JControlModel;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;

/**
 * Writes the Java code of the site model from {@code site.ecore} and {@code site.genmodel}. The code is written whole,
 * never merged: it is committed, and nobody edits it by hand.
 */
public final class Generate {
    private static final String MODEL = "src/main/resources/model/site.genmodel";

    private Generate() {
    }

    /**
     * Generates into the folder that is given or, with one argument, into the bundle itself.
     *
     * @param arguments the folder of the bundle, and optionally the folder to write {@code src-gen} into
     */
    public static void main(String[] arguments) throws IOException {
        Path bundle = Path.of(arguments[0]).toRealPath();
        generate(bundle, arguments.length > 1 ? Path.of(arguments[1]) : bundle);
    }

    /**
     * Writes the generated code anew; what was in {@code src-gen} before is gone.
     *
     * @param bundle the folder of the bundle that holds the model
     * @param target the folder in which {@code src-gen} is written
     * @return the folder {@code src-gen}
     * @throws IllegalStateException when the model has errors or code cannot be made from it
     */
    public static Path generate(Path bundle, Path target) throws IOException {
        EcorePackage.eINSTANCE.eClass();
        GenModelPackage.eINSTANCE.eClass();
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(GenModelPackage.eNS_URI,
                GenModelGeneratorAdapterFactory.DESCRIPTOR);
        Path sources = target.resolve("src-gen");
        deleteTree(sources);
        EcorePlugin.getPlatformResourceMap().put("org.roofspring.site",
                URI.createFileURI(target.toAbsolutePath() + "/"));
        GenModel model = load(bundle.resolve(MODEL));
        check("The model has errors", model.diagnose());
        Generator generator = new WholeFileGenerator();
        generator.setInput(model);
        check("No code could be made", generator.generate(model, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE,
                new BasicMonitor()));
        return sources;
    }

    /** Writes whole files: merging with older code would need the Java tools of the workbench. */
    private static final class WholeFileGenerator extends Generator {
        @Override
        public JControlModel getJControlModel() {
            if (jControlModel == null) {
                jControlModel = new JControlModel();
            }
            return jControlModel;
        }
    }

    private static GenModel load(Path file) {
        ResourceSet resources = new ResourceSetImpl();
        for (String extension : List.of("ecore", "genmodel")) {
            resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put(extension,
                    new EcoreResourceFactoryImpl());
        }
        GenModel model = (GenModel) resources.getResource(URI.createFileURI(file.toAbsolutePath().toString()), true)
                .getContents().get(0);
        EcoreUtil.resolveAll(resources);
        model.reconcile();
        model.setCanGenerate(true);
        model.setValidateModel(true);
        model.setCodeFormatting(false);
        return model;
    }

    private static void check(String problem, Diagnostic diagnostic) {
        if (diagnostic.getSeverity() >= Diagnostic.ERROR) {
            throw new IllegalStateException(problem + ": " + diagnostic.getMessage() + " "
                    + diagnostic.getChildren());
        }
    }

    private static void deleteTree(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> tree = Files.walk(folder)) {
                for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}
