package studio.stancebook.catalogue.internal;

import studio.stancebook.StudioTest;

@StudioTest
class PagesByNameOnH2Test extends PagesByNameTest {}
