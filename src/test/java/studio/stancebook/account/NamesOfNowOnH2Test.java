package studio.stancebook.account;

import studio.stancebook.StudioTest;

@StudioTest
class NamesOfNowOnH2Test extends NamesOfNowTest {}
