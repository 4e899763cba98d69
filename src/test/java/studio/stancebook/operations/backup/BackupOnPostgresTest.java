package studio.stancebook.operations.backup;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class BackupOnPostgresTest extends BackupTest {}
