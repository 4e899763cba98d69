package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The packaged jar says what it is made of: a software bill of materials in CycloneDX 1.6 (ECMA-424). */
class SbomIT {

    private static final String SBOM = "META-INF/sbom/application.cdx.json";
    private static final String LIBRARIES = "BOOT-INF/lib/";

    /** Spring Boot puts it in when it packages the jar, so nothing depends on it. */
    private static final String HOW_TO_START = LIBRARIES + "spring-boot-jarmode-tools-";

    @Test
    void listsEveryLibraryOfTheJarByItsHash() throws Exception {
        try (JarFile jar = new JarFile(PackagedJar.find().toFile())) {
            Map<String, String> packed = libraries(jar);
            Map<String, String> listed = components(jar).stream()
                    .filter(component -> packed.containsKey(fileName(component)))
                    .collect(Collectors.toMap(SbomIT::fileName, SbomIT::sha256));

            assertThat(packed).hasSizeGreaterThan(100);
            assertThat(listed)
                    .as("The SBOM is out of date: mvn -Psbom generate-resources writes it anew")
                    .isEqualTo(packed);
        }
    }

    @Test
    void namesDatabaseAndServerAsOthersNameThem() throws IOException {
        try (JarFile jar = new JarFile(PackagedJar.find().toFile())) {
            assertThat(components(jar))
                    .extracting(component -> component.get("purl").asString().replaceFirst("@.*", ""))
                    .contains("pkg:maven/com.h2database/h2", "pkg:maven/org.apache.tomcat.embed/tomcat-embed-core");
            assertThat(jar.getManifest().getMainAttributes().getValue("Sbom-Location"))
                    .isEqualTo(SBOM);
        }
    }

    private static List<JsonNode> components(JarFile jar) throws IOException {
        try (InputStream file = jar.getInputStream(jar.getEntry(SBOM))) {
            JsonNode bom = new JsonMapper().readTree(file);
            assertThat(bom.get("bomFormat").asString()).isEqualTo("CycloneDX");
            return bom.get("components").valueStream().toList();
        }
    }

    private static String fileName(JsonNode component) {
        return component.get("name").asString() + "-" + component.get("version").asString() + ".jar";
    }

    private static String sha256(JsonNode component) {
        return component
                .get("hashes")
                .valueStream()
                .filter(hash -> hash.get("alg").asString().equals("SHA-256"))
                .map(hash -> hash.get("content").asString())
                .collect(Collectors.joining());
    }

    private static Map<String, String> libraries(JarFile jar) throws Exception {
        Map<String, String> found = new TreeMap<>();
        List<JarEntry> entries = jar.stream()
                .filter(entry -> entry.getName().startsWith(LIBRARIES)
                        && entry.getName().endsWith(".jar")
                        && !entry.getName().startsWith(HOW_TO_START))
                .toList();
        for (JarEntry entry : entries) {
            found.put(entry.getName().substring(LIBRARIES.length()), sha256(jar, entry));
        }
        return found;
    }

    private static String sha256(JarFile jar, JarEntry entry) throws Exception {
        try (InputStream content = jar.getInputStream(entry)) {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content.readAllBytes()));
        }
    }
}
