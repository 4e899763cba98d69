package studio.stancebook.catalogue.internal;

import java.util.ArrayList;
import java.util.List;

/** A long list in parts that one SQL statement can name. */
final class Chunks {

    private static final int SIZE = 500;

    private Chunks() {}

    static <T> List<List<T>> of(List<T> all) {
        List<List<T>> parts = new ArrayList<>();
        for (int from = 0; from < all.size(); from += SIZE) {
            parts.add(all.subList(from, Math.min(all.size(), from + SIZE)));
        }
        return parts;
    }
}
