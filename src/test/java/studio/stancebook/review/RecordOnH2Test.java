package studio.stancebook.review;

import studio.stancebook.StudioTest;

@StudioTest
class RecordOnH2Test extends RecordTest {}
