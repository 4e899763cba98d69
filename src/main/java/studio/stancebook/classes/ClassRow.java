package studio.stancebook.classes;

/**
 * One package of a class while it is read or written; not kept in this form.
 *
 * @param modelYear 0 where there is none
 * @param origin ordinal of the origin
 * @param values every measure, NaN where there is none; not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
public record ClassRow(long id, String name, int modelYear, int origin, double[] values) {}
