package studio.stancebook.operations.backup;

import org.jspecify.annotations.Nullable;

/**
 * Something that counts by itself.
 *
 * @param name of a sequence, or of the table of an identity column
 * @param column the identity column; null for a sequence
 * @param next the value that it gives out next
 */
record Counter(String name, @Nullable String column, long next) {

    /** The statement that makes it go on from there; the same on every database. */
    String restart(String nameInStore, @Nullable String columnInStore) {
        String quoted = StoredTable.quoted(nameInStore);
        return columnInStore == null
                ? "ALTER SEQUENCE " + quoted + " RESTART WITH " + next
                : "ALTER TABLE " + quoted + " ALTER COLUMN " + StoredTable.quoted(columnInStore) + " RESTART WITH "
                        + next;
    }
}
