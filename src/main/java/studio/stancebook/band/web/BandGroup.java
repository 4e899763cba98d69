package studio.stancebook.band.web;

import java.util.List;

/**
 * Measures that stand together on the page of all bands.
 *
 * @param label of the group
 */
record BandGroup(String label, List<BandRow> rows) {

    BandGroup {
        rows = List.copyOf(rows);
    }
}
