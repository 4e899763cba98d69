package studio.stancebook.catalogue;

import studio.stancebook.StudioTest;

@StudioTest
class SegmentCallsOnH2Test extends SegmentCallsTest {}
