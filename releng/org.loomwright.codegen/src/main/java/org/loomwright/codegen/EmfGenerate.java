// SPDX-License-Identifier: EPL-2.0
package org.loomwright.codegen;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

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
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceFactoryImpl;

/**
 * Generates the Java code of an EMF generator model without a running workbench.
 *
 * <p>Does nothing when the code was generated from the same files before. Arguments: {@code model} or {@code edit}, the generator model's file, then one {@code PROJECT=FOLDER} for each
 * project that the generator model writes to. Ends with exit code 1 and the reasons on standard error when the
 * metamodel is faulty or a file cannot be written.
 */
public final class EmfGenerate {

    private EmfGenerate() {
    }

    /** Runs the generator; see the class comment for the arguments. */
    public static void main(String[] args) {
        if (args.length < 3) {
            throw new IllegalArgumentException("usage: EmfGenerate model|edit GENMODEL PROJECT=FOLDER...");
        }
        Map<String, Path> projects = new TreeMap<>();
        for (int i = 2; i < args.length; i++) {
            int equals = args[i].indexOf('=');
            projects.put(args[i].substring(0, equals), absolute(args[i].substring(equals + 1)));
        }
        projects.forEach((name, folder) ->
            EcorePlugin.getPlatformResourceMap().put(name, URI.createFileURI(folder + "/")));
        Path genModelFile = absolute(args[1]);
        GenModel genModel = load(URI.createFileURI(genModelFile.toString()));
        String output;
        Object projectType;
        switch (args[0]) {
            case "model" -> {
                output = genModel.getModelDirectory();
                projectType = GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE;
            }
            case "edit" -> {
                output = genModel.getEditDirectory();
                projectType = GenBaseGeneratorAdapter.EDIT_PROJECT_TYPE;
            }
            default -> throw new IllegalArgumentException("expected model or edit, found " + args[0]);
        }
        String generatorName = args[0] + " " + GenModel.class.getProtectionDomain().getCodeSource().getLocation().getPath()
            .replaceAll(".*/", "");
        GeneratedFolder folder = new GeneratedFolder(fileOf(output, projects), genModelFile.getParent(), generatorName);
        if (folder.isUpToDate()) {
            return;
        }
        check(Diagnostician.INSTANCE.validate(genModel), "the generator model is faulty");
        check(genModel.diagnose(), "the metamodel is faulty");
        folder.empty();
        check(generator(genModel).generate(genModel, projectType, new BasicMonitor()), "generation failed");
        folder.markUpToDate();
    }

    private static Path absolute(String path) {
        return Path.of(path).toAbsolutePath().normalize();
    }

    private static Path fileOf(String workspacePath, Map<String, Path> projects) {
        String[] parts = workspacePath.substring(1).split("/", 2);
        return projects.get(parts[0]).resolve(parts[1]);
    }

    private static GenModel load(URI uri) {
        ResourceSet resources = new ResourceSetImpl();
        var factories = resources.getResourceFactoryRegistry().getExtensionToFactoryMap();
        factories.put("ecore", new EcoreResourceFactoryImpl());
        factories.put("genmodel", new XMIResourceFactoryImpl());
        resources.getURIConverter().getURIMap().putAll(EcorePlugin.computePlatformURIMap(false));
        GenModelPackage.eINSTANCE.eClass();
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(GenModelPackage.eNS_URI,
            GenModelGeneratorAdapterFactory.DESCRIPTOR);
        GenModel genModel = (GenModel) resources.getResource(uri, true).getContents().get(0);
        genModel.reconcile();
        genModel.setCanGenerate(true);
        genModel.setUpdateClasspath(false);
        genModel.setBundleManifest(false);
        genModel.setValidateModel(true);
        return genModel;
    }

    private static Generator generator(GenModel genModel) {
        Generator generator = new Generator() {
            @Override
            public JControlModel getJControlModel() {
                // merging needs a JDT workspace, and nothing in the output folder is edited by hand
                return new JControlModel() {
                    @Override
                    public boolean canMerge() {
                        return false;
                    }
                };
            }
        };
        generator.setInput(genModel);
        return generator;
    }

    private static void check(Diagnostic diagnostic, String summary) {
        if (diagnostic.getSeverity() < Diagnostic.WARNING) {
            return;
        }
        print(diagnostic, "");
        if (diagnostic.getSeverity() >= Diagnostic.ERROR) {
            throw new IllegalStateException(summary + ": " + diagnostic.getMessage());
        }
    }

    private static void print(Diagnostic diagnostic, String indent) {
        System.err.println(indent + diagnostic.getMessage());
        if (diagnostic.getException() != null) {
            diagnostic.getException().printStackTrace();
        }
        for (Diagnostic child : diagnostic.getChildren()) {
            print(child, indent + "  ");
        }
    }
}
