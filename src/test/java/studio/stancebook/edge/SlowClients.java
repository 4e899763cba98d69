package studio.stancebook.edge;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Connections that begin a request and then send a byte now and then. */
final class SlowClients implements AutoCloseable {

    private final Selector selector = Selector.open();
    private final List<SocketChannel> open = new ArrayList<>();

    /** @param addresses from how many addresses, one after the other, from 127.0.1.1 on */
    SlowClients(int port, String begin, int count, int addresses) throws IOException {
        for (int i = 0; i < count; i++) {
            SocketChannel channel = SocketChannel.open();
            channel.bind(new InetSocketAddress("127.0.1." + (1 + i % addresses), 0));
            channel.connect(new InetSocketAddress("127.0.0.1", port));
            channel.configureBlocking(false);
            channel.register(selector, SelectionKey.OP_READ);
            open.add(channel);
            send(channel, begin);
        }
    }

    /** Sends a byte on each that is open still, after a while in which those that are answered or hung up on are noted. */
    void dribble(long millis) throws IOException {
        long end = System.nanoTime() + millis * 1_000_000;
        for (long left = millis; left > 0; left = (end - System.nanoTime()) / 1_000_000) {
            selector.select(left);
            for (SelectionKey key : selector.selectedKeys()) {
                note((SocketChannel) key.channel());
            }
            selector.selectedKeys().clear();
        }
        for (SocketChannel channel : List.copyOf(open)) {
            send(channel, "x");
        }
    }

    int stillOpen() {
        return open.size();
    }

    private void note(SocketChannel channel) throws IOException {
        try {
            if (channel.read(ByteBuffer.allocate(8192)) < 0) {
                drop(channel);
            }
        } catch (IOException hungUp) {
            drop(channel);
        }
    }

    private void send(SocketChannel channel, String text) throws IOException {
        try {
            channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.ISO_8859_1)));
        } catch (IOException hungUp) {
            drop(channel);
        }
    }

    private void drop(SocketChannel channel) throws IOException {
        channel.close();
        open.remove(channel);
    }

    @Override
    public void close() throws IOException {
        for (SocketChannel channel : open) {
            channel.close();
        }
        selector.close();
    }
}
