package studio.stancebook.edge;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.channels.SocketChannel;
import org.apache.catalina.util.NetMaskSet;
import org.apache.tomcat.util.net.NioEndpoint;
import org.jspecify.annotations.Nullable;

/** Takes no more connections from an address that has its share, unless it is a proxy, which speaks for many. */
final class LimitedEndpoint extends NioEndpoint {

    private int perAddress = Integer.MAX_VALUE;
    private NetMaskSet proxies = new NetMaskSet();

    void limit(int connectionsPerAddress, NetMaskSet exceptFor) {
        this.perAddress = connectionsPerAddress;
        this.proxies = exceptFor;
    }

    @Override
    protected boolean setSocketOptions(SocketChannel connection) {
        InetAddress address = address(connection);
        boolean hasRoom = address != null && (proxies.contains(address) || count(address) < perAddress);
        if (!hasRoom) {
            destroySocket(connection); // which the container does for those alone that it has taken
            return false;
        }
        return super.setSocketOptions(connection);
    }

    private long count(InetAddress address) {
        return connections.keySet().stream()
                .filter(open -> address.equals(address(open)))
                .count();
    }

    private static @Nullable InetAddress address(SocketChannel connection) {
        try {
            return connection.getRemoteAddress() instanceof InetSocketAddress remote ? remote.getAddress() : null;
        } catch (IOException closed) {
            return null;
        }
    }
}
