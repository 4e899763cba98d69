package studio.stancebook.measure;

/** What must be said beside a value. */
public enum Note {
    /** Typed from a specification sheet; there is no geometry to compute it from. */
    TYPED("as typed, not computed from geometry"),
    /** No loaded radius is recorded, so the free radius stands in. */
    UNLOADED_TYRE("unloaded tyre"),
    /** A flotation size, whose real diameter is smaller than its name. */
    NOMINAL_DIAMETER("nominal diameter of a flotation size");

    private final String label;

    Note(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
