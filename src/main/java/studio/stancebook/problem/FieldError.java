package studio.stancebook.problem;

/**
 * One field of a request that cannot be accepted.
 *
 * @param field the path of the field, such as {@code dimensions.wheelbase}
 * @param message the value given and what is accepted, for a person
 */
public record FieldError(String field, String message) {}
