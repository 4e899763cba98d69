package studio.stancebook.measure;

/** The list of measures became another one: values that were computed with the list before have to be computed anew. */
public record StudioMeasuresChanged() {}
