package studio.stancebook.catalogue;

import studio.stancebook.StudioTest;

@StudioTest
class ColdClassOnH2Test extends ColdClassTest {}
