package studio.stancebook.exchange;

import studio.stancebook.StudioTest;

@StudioTest
class ImportCallsOnH2Test extends ImportCallsTest {}
