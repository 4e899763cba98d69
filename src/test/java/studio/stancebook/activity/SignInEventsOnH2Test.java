package studio.stancebook.activity;

import studio.stancebook.StudioTest;

@StudioTest
class SignInEventsOnH2Test extends SignInEventsTest {}
