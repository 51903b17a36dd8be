package org.steelyard.samples;

import java.io.IOException;
import java.io.InputStream;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.xmlbeans.SchemaTypeLoader;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;

/**
 * The schemas of ECMA-376, all of them. The program ships the part of them that it uses, and its tests run with that
 * part, or they would not notice what is missing from it; so the whole stands in a class loader of its own. The build
 * puts the jar into {@code target/schemas}.
 */
final class SchemasOfTheStandard {

    private static final Path JAR = Path.of("target", "schemas", "poi-ooxml-full.jar");
    private static final String HOLDER = "org.apache.poi.schemas.ooxml.system.ooxml.TypeSystemHolder";

    /**
     * The schema leaves out what every writer sets, as XML 1.0 (section 2.10) has it, to keep spaces at a text's ends.
     */
    private static final String MARK_OF_SPACES = ": space@http://www.w3.org/XML/1998/namespace in element t@";

    private static final SchemaTypeLoader TYPES = load();

    private SchemasOfTheStandard() {}

    private static SchemaTypeLoader load() {
        try {
            Class<?> holder = new OwnJarFirst(jar().toUri().toURL()).loadClass(HOLDER);
            return (SchemaTypeLoader) holder.getField("typeSystem").get(null);
        } catch (ReflectiveOperationException | MalformedURLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Path jar() {
        if (!Files.isRegularFile(JAR)) {
            throw new IllegalStateException("no " + JAR + ": run mvn generate-test-resources once");
        }
        return JAR;
    }

    /** What is wrong with a part by its schema. */
    static List<String> faults(InputStream part) throws IOException {
        XmlObject whole;
        try {
            whole = TYPES.parse(part, null, new XmlOptions());
        } catch (XmlException e) {
            return List.of(String.valueOf(e.getMessage()));
        }
        if (!whole.schemaType().isDocumentType()) {
            return List.of("the schemas have no such part");
        }
        List<XmlError> errors = new ArrayList<>();
        whole.validate(new XmlOptions().setErrorListener(errors));
        return errors.stream()
                .map(XmlError::getMessage)
                .filter(message -> !message.contains(MARK_OF_SPACES))
                .distinct()
                .toList();
    }

    /** Takes what the jar has from the jar, and all else, as the XML library, from the tests. */
    private static final class OwnJarFirst extends URLClassLoader {

        OwnJarFirst(URL jar) {
            super(new URL[] {jar}, SchemasOfTheStandard.class.getClassLoader());
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            synchronized (getClassLoadingLock(name)) {
                Class<?> known = findLoadedClass(name);
                if (known != null) {
                    return known;
                }
                return findResource(name.replace('.', '/') + ".class") == null
                        ? super.loadClass(name, resolve)
                        : findClass(name);
            }
        }

        @Override
        public URL getResource(String name) {
            URL own = findResource(name);
            return own == null ? super.getResource(name) : own;
        }
    }
}
