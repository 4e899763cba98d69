package studio.stancebook.operations;

/**
 * How a process ended.
 *
 * @param console what it wrote, errors and all
 */
record Ended(int exitCode, String console) {}
