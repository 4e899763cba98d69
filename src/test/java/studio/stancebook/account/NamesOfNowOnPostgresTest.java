package studio.stancebook.account;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class NamesOfNowOnPostgresTest extends NamesOfNowTest {}
