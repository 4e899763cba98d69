package studio.stancebook.catalogue;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class ColdClassOnPostgresTest extends ColdClassTest {}
