package studio.stancebook.upkeep.backup;

/**
 * A column of a table.
 *
 * @param name as the database spells it
 */
record Column(String name, Kind kind) {}
