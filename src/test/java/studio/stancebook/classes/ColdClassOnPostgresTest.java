package studio.stancebook.classes;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class ColdClassOnPostgresTest extends ColdClassTest {}
