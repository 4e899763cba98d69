package studio.stancebook.exchange.importing;

import java.util.List;

/**
 * What a row changes of a package that is there.
 *
 * @param row as a person counts
 * @param packageId of the package
 * @param title its name, with the model year where it has one
 */
public record RowChange(long row, long packageId, String title, List<ValueChange> values) {

    public RowChange {
        values = List.copyOf(values);
    }
}
