package studio.stancebook.activity;

import studio.stancebook.StudioTest;

@StudioTest
class FiftyWritersOnH2Test extends FiftyWritersTest {}
