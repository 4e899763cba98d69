package studio.stancebook.measure;

import studio.stancebook.StudioTest;

@StudioTest
class MeasureCallsOnH2Test extends MeasureCallsTest {}
