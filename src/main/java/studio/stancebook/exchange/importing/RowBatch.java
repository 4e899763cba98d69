package studio.stancebook.exchange.importing;

import java.util.List;

/**
 * Some rows that come in.
 *
 * @param added new packages
 * @param updated changes of packages that are there
 */
record RowBatch(List<Accepted> added, List<RowUpdate> updated) {

    boolean isEmpty() {
        return added.isEmpty() && updated.isEmpty();
    }
}
