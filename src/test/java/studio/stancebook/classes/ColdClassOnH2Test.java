package studio.stancebook.classes;

import studio.stancebook.StudioTest;

@StudioTest
class ColdClassOnH2Test extends ColdClassTest {}
