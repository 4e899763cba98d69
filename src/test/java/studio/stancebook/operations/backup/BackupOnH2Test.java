package studio.stancebook.operations.backup;

import studio.stancebook.StudioTest;

@StudioTest
class BackupOnH2Test extends BackupTest {}
