package studio.stancebook.problem;

/** A kind of content that is not read here. */
public class UnsupportedMedia extends Refusal {

    public UnsupportedMedia(String message) {
        super(ProblemType.UNSUPPORTED_MEDIA, message);
    }
}
