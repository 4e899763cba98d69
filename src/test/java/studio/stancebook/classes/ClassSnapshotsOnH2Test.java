package studio.stancebook.classes;

import studio.stancebook.StudioTest;

@StudioTest
class ClassSnapshotsOnH2Test extends ClassSnapshotsTest {}
