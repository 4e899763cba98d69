package studio.stancebook.measure;

/** Another server over the same database was found to have changed the list of measures. */
public record MeasuresChangedElsewhere() {}
