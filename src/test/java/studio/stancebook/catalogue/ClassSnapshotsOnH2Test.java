package studio.stancebook.catalogue;

import studio.stancebook.StudioTest;

@StudioTest
class ClassSnapshotsOnH2Test extends ClassSnapshotsTest {}
