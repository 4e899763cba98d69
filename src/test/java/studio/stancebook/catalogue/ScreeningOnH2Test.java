package studio.stancebook.catalogue;

import studio.stancebook.StudioTest;

@StudioTest
class ScreeningOnH2Test extends ScreeningTest {}
