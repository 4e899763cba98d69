package studio.stancebook.activity;

import studio.stancebook.StudioTest;

@StudioTest
class RecordOnH2Test extends RecordTest {}
