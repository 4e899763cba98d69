package studio.stancebook.measure;

import java.util.Comparator;

/**
 * What must be said beside a value.
 *
 * @param kind what it is about
 * @param label the words
 */
public record Note(NoteKind kind, String label) implements Comparable<Note> {

    /** Typed from a specification sheet; there is no geometry to compute it from. */
    public static final Note TYPED = new Note(NoteKind.TYPED, "as typed, not computed from geometry");
    /** No loaded radius is recorded, so the free radius stands in. */
    public static final Note UNLOADED_TYRE = new Note(NoteKind.UNLOADED_TYRE, "unloaded tyre");
    /** A flotation size, whose real diameter is smaller than its name. */
    public static final Note NOMINAL_DIAMETER =
            new Note(NoteKind.NOMINAL_DIAMETER, "nominal diameter of a flotation size");

    /** The kinds of notes, in the order in which they are shown. */
    public enum NoteKind {
        TYPED,
        UNLOADED_TYRE,
        NOMINAL_DIAMETER,
        /** The underbody does not reach as far as the value asks for. */
        UNDERBODY_IN_PART
    }

    @Override
    public int compareTo(Note other) {
        return Comparator.comparing(Note::kind).thenComparing(Note::label).compare(this, other);
    }
}
