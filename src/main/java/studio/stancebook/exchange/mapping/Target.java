package studio.stancebook.exchange.mapping;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Unit;

/** What a column can hold. */
public sealed interface Target {

    /** The key of what is set, such as {@code segment}, {@code wheelbase} or {@code tyre}. */
    String name();

    /** Which part of it the column holds, such as {@code rim} or {@code x}; empty for the whole. */
    default String part() {
        return "";
    }

    /** The unit in which its numbers are kept; null when it holds no numbers in a unit. */
    default @Nullable Unit unit() {
        return null;
    }

    /** Whether this is one of the fields beside the dimensions. */
    default boolean field() {
        return false;
    }

    /** One text that tells targets apart: {@code field:name}, {@code dimension:cowl:x}. */
    default String id() {
        return (field() ? "field:" : "dimension:") + name() + (part().isEmpty() ? "" : ":" + part());
    }

    /** The single values that it sets or helps to set, of which no two columns may set the same. */
    Set<String> sets();

    /** A field of the package. */
    record OfField(Field what) implements Target {

        @Override
        public String name() {
            return what.key();
        }

        @Override
        public boolean field() {
            return true;
        }

        @Override
        public Set<String> sets() {
            return Set.of(id());
        }
    }

    /**
     * One dimension, or the same one of both axles.
     *
     * @param name of the dimension, or {@code tyreDiameter}, {@code rimDiameter}
     * @param dimensions at least one, all of one unit
     */
    record OfScalar(String name, List<Dimension> dimensions) implements Target {

        static OfScalar of(Dimension dimension) {
            return new OfScalar(dimension.key(), List.of(dimension));
        }

        @Override
        public Unit unit() {
            return dimensions.get(0).unit();
        }

        @Override
        public Set<String> sets() {
            return Set.copyOf(dimensions.stream().map(Dimension::key).toList());
        }
    }

    /**
     * A tyre designation, whole or split over two columns.
     *
     * @param name {@code tyre}, {@code frontTyre} or {@code rearTyre}
     * @param axles which it is on
     */
    record OfTyre(String name, List<Axle> axles, TyrePart what) implements Target {

        @Override
        public String part() {
            return what.key();
        }

        @Override
        public Set<String> sets() {
            String half = what == TyrePart.RIM ? ":rim" : ":size";
            return Set.copyOf(axles.stream().map(axle -> axle.tyreKey() + half).toList());
        }
    }

    /** The parts that a designation is split into: {@code 195/60} and {@code R14}. */
    enum TyrePart {
        WHOLE(""),
        SIZE("size"),
        RIM("rim");

        private final String key;

        TyrePart(String key) {
            this.key = key;
        }

        String key() {
            return key;
        }
    }

    /**
     * A coordinate of a landmark.
     *
     * @param part {@code x} or {@code z}
     */
    record OfLandmark(Landmark landmark, String part) implements Target {

        @Override
        public String name() {
            return landmark.key();
        }

        @Override
        public Unit unit() {
            return Unit.MM;
        }

        @Override
        public Set<String> sets() {
            return Set.of(landmark.key() + "." + part);
        }
    }

    /**
     * A polyline as text, {@code x z; x z; ...}; a long one goes on in further columns.
     *
     * @param number 1 for the first column of it, 2 for the next
     */
    record OfPolyline(Polyline polyline, int number) implements Target {

        /** More columns than this are not needed for the most points there may be. */
        static final int MOST = 9;

        @Override
        public String name() {
            return polyline.key();
        }

        @Override
        public String part() {
            return number == 1 ? "" : Integer.toString(number);
        }

        @Override
        public Unit unit() {
            return Unit.MM;
        }

        @Override
        public Set<String> sets() {
            return Set.of(polyline.key() + "." + number);
        }
    }
}
