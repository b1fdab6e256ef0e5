package org.nestyear.app.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;

/** Finds a port on this computer that nobody listens on. */
final class FreePort {
    private static final int FIRST = 8080;
    private static final int TRIED = 20;

    private FreePort() {}

    /**
     * The port to serve on.
     *
     * @throws IllegalArgumentException with one sentence if the port asked for is taken, or none is free
     */
    static int choose(ServeOptions options) {
        if (options.port().isPresent()) {
            int asked = options.port().get();
            if (asked != 0 && !isFree(asked)) {
                throw new IllegalArgumentException(
                        "port " + asked + " is in use; expected a free one. Maybe Nestyear is already running there.");
            }
            return asked;
        }
        for (int port = FIRST; port < FIRST + TRIED; port++) {
            if (isFree(port)) {
                return port;
            }
        }
        throw new IllegalArgumentException(
                "the ports " + FIRST + " to " + (FIRST + TRIED - 1) + " are all in use; name a free one with --port.");
    }

    private static boolean isFree(int port) {
        try (ServerSocket socket = new ServerSocket()) {
            socket.setReuseAddress(true);
            socket.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
