package studio.stancebook.measure;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class MeasureCallsOnPostgresTest extends MeasureCallsTest {}
