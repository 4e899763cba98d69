package studio.stancebook.exchange;

import studio.stancebook.StudioTest;

@StudioTest
class ReferenceClassesOnH2Test extends ReferenceClassesTest {}
