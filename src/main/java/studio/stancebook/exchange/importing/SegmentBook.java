package studio.stancebook.exchange.importing;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import studio.stancebook.catalogue.CatalogueRules;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.exchange.mapping.NamedSegment;
import studio.stancebook.exchange.table.TextLimit;
import studio.stancebook.problem.Impossible;

/**
 * The segments that there are and, if so wished, those that a file adds; finds one by its key or its name. A first reading of
 * the file takes note of all that it names; after that nothing is added.
 */
final class SegmentBook {

    /** More new segments than this in one file: the wrong column was taken. */
    static final int MOST_NEW = 200;

    /** Longer words than this are no segment's name. */
    private static final int MOST_WORD = 200;

    private final boolean create;
    private final Map<String, String> pointed = new HashMap<>();
    private final Set<String> missing = new LinkedHashSet<>();
    private final Set<String> keys = new HashSet<>();
    private final Map<String, String> keyByName = new HashMap<>();
    private final Map<String, String> added = new LinkedHashMap<>();
    private final Set<String> there = new HashSet<>();

    /**
     * @param pointed keys of known segments, by the words that stand for them
     * @throws Impossible if there is no segment of such a key
     */
    SegmentBook(List<SegmentView> known, boolean create, Map<String, String> pointed) {
        this.create = create;
        Set<String> shared = new HashSet<>();
        for (SegmentView segment : known) {
            keys.add(segment.key());
            if (keyByName.put(lower(segment.name()), segment.key()) != null) {
                shared.add(lower(segment.name()));
            }
        }
        keyByName.keySet().removeAll(shared);
        pointed.forEach(this::point);
    }

    private void point(String words, String key) {
        if (!keys.contains(key)) {
            throw Impossible.ofField(
                    "segments",
                    "\"" + TextLimit.shown(words) + "\" cannot stand for the segment \"" + TextLimit.shown(key)
                            + "\", which is not there.");
        }
        this.pointed.put(lower(words), key);
    }

    private static String lower(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** Takes note of a segment that the file names. */
    void note(NamedSegment named) {
        String words = named.text().strip();
        boolean nameable = !words.isEmpty() && words.length() <= MOST_WORD && missing.size() < MOST_NEW;
        if (nameable && !isKnown(words)) {
            missing.add(words);
        }
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
        String aim = pointed.get(lower(text));
        if (aim != null) {
            return Optional.of(aim);
        }
        Optional<String> known =
                keys.contains(text) ? Optional.of(text) : Optional.ofNullable(keyByName.get(lower(text)));
        if (known.isPresent()) {
            return known;
        }
        Optional<String> made = CatalogueRules.keyOf(text);
        return made.filter(keys::contains)
                .or(() -> create ? made.filter(key -> add(key, name.isEmpty() ? text : name)) : Optional.empty());
    }

    private boolean isKnown(String words) {
        return keys.contains(words)
                || keyByName.containsKey(lower(words))
                || pointed.containsKey(lower(words))
                || CatalogueRules.keyOf(words).filter(keys::contains).isPresent();
    }

    /** Words of the file that are no segment that was there; the first of them. */
    List<String> missing() {
        return List.copyOf(missing);
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
                : "There is no such segment. Say which one it is, make it first, or have missing segments made.";
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
