package studio.stancebook.catalogue;

import studio.stancebook.drawing.rendering.CachedFragment;

/**
 * The class of a segment as a picture. It shows what the bands allow, of which this module knows nothing: the module of bands
 * draws it.
 */
public interface SegmentPicture {

    CachedFragment of(SegmentView segment);
}
