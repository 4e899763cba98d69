// Stand-in until the module lands: the tyre and geometry helper replaces this file.
@org.jspecify.annotations.NullMarked
package studio.stancebook.geometry;
