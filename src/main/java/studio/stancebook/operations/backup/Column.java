package studio.stancebook.operations.backup;

/**
 * A column of a table.
 *
 * @param name as the database spells it
 */
record Column(String name, ColumnKind kind) {}
