package studio.stancebook.exchange;

import studio.stancebook.StudioTest;

@StudioTest
class RoundTripOnH2Test extends RoundTripTest {}
