package studio.stancebook.band;

import studio.stancebook.StudioTest;

@StudioTest
class BandCallsOnH2Test extends BandCallsTest {}
