package studio.stancebook.edge;

import jakarta.servlet.http.HttpServletRequest;

/** Tells the edge that whoever sent a request has proved who they are, so that its body may be read at length. */
public final class Admission {

    private Admission() {}

    /** Lets the body of this request be as long as others allow, and take the time that it needs. */
    public static void grant(HttpServletRequest request) {
        MeasuredBody.admit(request);
    }

    /** Whether a request announces a body, if only by a length that is none. */
    public static boolean hasBody(HttpServletRequest request) {
        String length = request.getHeader("Content-Length");
        return (length != null && !length.equals("0")) || request.getHeader("Transfer-Encoding") != null;
    }

    /** Whether the body of a request is short enough, and says so, to be read before anybody is admitted. */
    public static boolean isShort(HttpServletRequest request) {
        long length = request.getContentLengthLong();
        return length >= 0 && length <= MeasuredBody.STRANGERS_BYTES;
    }
}
