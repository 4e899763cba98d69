package studio.stancebook.exchange.importing;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import studio.stancebook.catalogue.CatalogueRules;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.exchange.mapping.NamedSegment;

/**
 * The segments that there are and, if so wished, those that a file adds; finds one by its key or its name. A first reading of
 * the file takes note of all that it names; after that nothing is added.
 */
final class SegmentBook {

    /** More new segments than this in one file: the wrong column was taken. */
    static final int MOST_NEW = 200;

    private final boolean create;
    private final Set<String> keys = new HashSet<>();
    private final Map<String, String> keyByName = new HashMap<>();
    private final Map<String, String> added = new LinkedHashMap<>();
    private final Set<String> there = new HashSet<>();

    SegmentBook(List<SegmentView> known, boolean create) {
        this.create = create;
        Set<String> shared = new HashSet<>();
        for (SegmentView segment : known) {
            keys.add(segment.key());
            if (keyByName.put(lower(segment.name()), segment.key()) != null) {
                shared.add(lower(segment.name()));
            }
        }
        keyByName.keySet().removeAll(shared);
    }

    private static String lower(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** Takes note of a segment that the file names. */
    void note(NamedSegment named) {
        find(named.text(), named.name()).filter(key -> !added.containsKey(key)).ifPresent(there::add);
    }

    /** The keys of the segments that the file names and that there are. */
    Set<String> there() {
        return Set.copyOf(there);
    }

    /**
     * The key of a segment; empty when there is none and none may be made.
     *
     * @param text its key or its name
     * @param name what to call it if it has to be made; empty for {@code text}
     */
    Optional<String> find(String text, String name) {
        Optional<String> known =
                keys.contains(text) ? Optional.of(text) : Optional.ofNullable(keyByName.get(lower(text)));
        if (known.isPresent()) {
            return known;
        }
        Optional<String> made = CatalogueRules.keyOf(text);
        return made.filter(keys::contains)
                .or(() -> create ? made.filter(key -> add(key, name.isEmpty() ? text : name)) : Optional.empty());
    }

    private boolean add(String key, String name) {
        if (added.size() == MOST_NEW
                || CatalogueRules.key(key).isPresent()
                || CatalogueRules.name("name", name.strip()).isPresent()) {
            return false;
        }
        keys.add(key);
        added.put(key, name.strip());
        return true;
    }

    /** Why {@link #find} found nothing. */
    String refusal() {
        if (added.size() == MOST_NEW) {
            return "The file needs more than " + MOST_NEW + " new segments; is this the column of the segments?";
        }
        return create
                ? "It gives no key for a new segment: use letters a to z or digits, and not the word new alone."
                : "There is no such segment. Make it first, or have missing segments made.";
    }

    /** Names of the segments that the file adds, by their keys. */
    Map<String, String> added() {
        return new LinkedHashMap<>(added);
    }

    /** Names of those of the added segments that are needed. */
    List<String> newNames(Set<String> needed) {
        return added.entrySet().stream()
                .filter(entry -> needed.contains(entry.getKey()))
                .map(Map.Entry::getValue)
                .toList();
    }
}
