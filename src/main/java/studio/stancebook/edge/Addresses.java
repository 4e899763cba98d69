package studio.stancebook.edge;

import org.apache.catalina.connector.Request;

/** Addresses as the container has them, before anything else knows them. */
final class Addresses {

    private Addresses() {}

    /** Whether a request is for an address that begins so; not if its address could not be read. */
    static boolean isBelow(String start, Request request) {
        String path = request.getDecodedRequestURI();
        return path != null
                && request.getContext() != null
                && path.startsWith(request.getContext().getPath() + start);
    }
}
