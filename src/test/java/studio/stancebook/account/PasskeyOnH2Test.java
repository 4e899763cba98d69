package studio.stancebook.account;

import studio.stancebook.StudioTest;

@StudioTest
class PasskeyOnH2Test extends PasskeyTest {}
