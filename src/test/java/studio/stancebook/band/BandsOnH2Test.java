package studio.stancebook.band;

import studio.stancebook.StudioTest;

@StudioTest
class BandsOnH2Test extends BandsTest {}
