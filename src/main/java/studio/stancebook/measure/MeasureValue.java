package studio.stancebook.measure;

/** What a measure gives for one side view. */
public sealed interface MeasureValue permits Measured, NotMeasurable {}
