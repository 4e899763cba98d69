package studio.stancebook.review;

import studio.stancebook.StudioTest;

@StudioTest
class FiftyWritersOnH2Test extends FiftyWritersTest {}
