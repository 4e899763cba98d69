package studio.stancebook.catalogue.internal;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.CatalogueRules;
import studio.stancebook.catalogue.IssueCause;

/**
 * A question before it is kept.
 *
 * @param valueKey the dimension or measure it is about; null when it is about the whole
 * @param question on one line, cut to 500 characters
 */
public record RaisedIssue(IssueCause cause, @Nullable String valueKey, String question) {

    public RaisedIssue {
        question = CatalogueRules.shortened(question);
    }

    /** True if this asks the same; a value that is far from its class is asked about once, whatever the class is now. */
    boolean asks(RaisedIssue other) {
        boolean sameValue = cause == other.cause && Objects.equals(valueKey, other.valueKey);
        return sameValue && (cause == IssueCause.FAR_FROM_CLASS || question.equals(other.question));
    }
}
