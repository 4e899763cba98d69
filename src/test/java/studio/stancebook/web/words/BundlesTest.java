package studio.stancebook.web.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class BundlesTest {

    @Test
    void haveNoWordsThatNothingSpeaksOf() {
        assertEquals(Set.of(), Bundles.unused());
    }

    /** So that two modules cannot take each other's words. */
    @Test
    void nameTheirKeysAfterThemselves() {
        Map<String, Set<String>> strangers = new TreeMap<>(Bundles.keysByFile());
        assertTrue(strangers.containsKey("web"));
        strangers.replaceAll((file, keys) -> {
            Set<String> others = new TreeSet<>(keys);
            others.removeIf(key -> key.startsWith(file + "."));
            return others;
        });
        strangers.values().removeIf(Set::isEmpty);
        assertEquals(Map.of(), strangers);
    }

    /** Spring reads only the bundles that the settings list. */
    @Test
    void areAllListedInTheSettings() {
        String settings = Template.read(java.nio.file.Path.of("src/main/resources/application.yml"));
        Set<String> unlisted = new TreeSet<>(Bundles.keysByFile().keySet());
        unlisted.removeIf(file -> settings.contains("messages/" + file));
        assertEquals(Set.of(), unlisted);
    }
}
