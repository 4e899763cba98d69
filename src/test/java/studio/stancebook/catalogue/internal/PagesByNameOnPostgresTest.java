package studio.stancebook.catalogue.internal;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class PagesByNameOnPostgresTest extends PagesByNameTest {}
