package studio.stancebook.catalogue;

import studio.stancebook.StudioTest;

@StudioTest
class CatalogueOnH2Test extends CatalogueTest {}
