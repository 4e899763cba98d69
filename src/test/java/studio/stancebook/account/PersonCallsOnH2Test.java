package studio.stancebook.account;

import studio.stancebook.StudioTest;

@StudioTest
class PersonCallsOnH2Test extends PersonCallsTest {}
