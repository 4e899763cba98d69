package studio.stancebook.classes;

import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.classes.layout.ClassLayout;

/** A class and the packages that a transaction adds to it, told as they are written so that they need not be read back. */
final class ClassGrowth {

    private final ClassSnapshot before;
    private final ClassUpdate update = new ClassUpdate();
    private ClassRows rows;
    private boolean whole = true;

    /** @param before the class as it was before the transaction changed it */
    ClassGrowth(ClassSnapshot before) {
        this.before = before;
        this.rows = before.rows();
    }

    /** @param fingerprint of the layout of their values; with another one than the class has, not all of it is known */
    void add(String fingerprint, List<ClassRow> added) {
        whole &= before.layout().fingerprint().equals(fingerprint);
        if (whole) {
            rows = rows.with(added, update);
        }
    }

    /** The class with what was added, if that is all that leads to a revision; else null. */
    @Nullable
    ClassSnapshot at(long revision, ClassLayout layout) {
        boolean known = whole && layout == before.layout() && revision == before.revision() + 1;
        return known ? before.updated(revision, rows, update) : null;
    }
}
