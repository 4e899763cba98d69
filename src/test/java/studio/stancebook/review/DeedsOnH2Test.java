package studio.stancebook.review;

import studio.stancebook.StudioTest;

@StudioTest
class DeedsOnH2Test extends DeedsTest {}
