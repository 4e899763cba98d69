package studio.stancebook.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Collects what is wrong with a request: the first errors, and the number of all, however many there are. */
public final class ErrorList {

    /** Most errors that are listed. */
    public static final int MOST_LISTED = 20;

    private final List<FieldError> listed = new ArrayList<>();
    private int count;

    /** A list that begins with these errors. */
    public static ErrorList of(List<FieldError> errors) {
        ErrorList list = new ErrorList();
        errors.forEach(list::add);
        return list;
    }

    public void add(FieldError error) {
        add(() -> error);
    }

    /** Counts an error, which is made only if it is listed. */
    public void add(Supplier<FieldError> error) {
        if (count < MOST_LISTED) {
            listed.add(error.get());
        }
        count++;
    }

    /** Adds what a refusal objects to. */
    public void addAll(Refusal refusal) {
        refusal.errors().forEach(this::add);
        count += refusal.errorCount() - refusal.errors().size();
    }

    public boolean isEmpty() {
        return count == 0;
    }

    /** The first errors in the order in which they were found. */
    public List<FieldError> listed() {
        return List.copyOf(listed);
    }

    /** The number of all errors. */
    public int count() {
        return count;
    }

    /** The first message, which stands for all where only one can be told. */
    public String firstMessage() {
        return listed.get(0).message();
    }
}
