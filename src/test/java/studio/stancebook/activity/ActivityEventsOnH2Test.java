package studio.stancebook.activity;

import studio.stancebook.StudioTest;

@StudioTest
class ActivityEventsOnH2Test extends ActivityEventsTest {}
