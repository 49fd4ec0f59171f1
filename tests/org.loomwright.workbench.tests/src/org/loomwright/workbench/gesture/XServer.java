// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import java.io.IOException;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Mouse and keyboard of an X server, moved through its test extension, so that what arrives in a window is what arrives when a
 * person does it: with the pointer's place, the modifiers, double clicks and the grabs of menus, which events put into the
 * toolkit's own queue lack on GTK. Speaks the protocol itself (X Window System Protocol, X.org release 11; XTEST 2.2), since
 * a test must not need a program that is not there.
 */
final class XServer implements AutoCloseable {
    private static final int HEAD = 32;
    private static final int OPEN = 1;
    private static final int KEY_PRESS = 2;
    private static final int KEY_RELEASE = 3;
    private static final int BUTTON_PRESS = 4;
    private static final int BUTTON_RELEASE = 5;
    private static final int MOTION = 6;
    private static final int GET_INPUT_FOCUS = 43;
    private static final int QUERY_EXTENSION = 98;
    private static final int GET_KEYBOARD_MAPPING = 101;
    private static final int FAKE_INPUT = 2;
    private static final String COOKIE = "MIT-MAGIC-COOKIE-1";

    /**
     * Where a character or key lies on the keyboard.
     *
     * @param code  key
     * @param shift needs shift
     */
    record Stroke(int code, boolean shift) {
    }

    private final SocketChannel channel;
    private final Map<Integer, Stroke> strokes = new LinkedHashMap<>();
    private final int extension;

    private XServer(SocketChannel channel) throws IOException {
        this.channel = channel;
        ByteBuffer setup = hello();
        int least = setup.get(34) & 0xFF;
        int most = setup.get(35) & 0xFF;
        extension = extension();
        keyboard(least, most - least + 1);
    }

    /** The server that the tests' windows are on. */
    static XServer open() throws IOException {
        String display = System.getenv("DISPLAY");
        if (display == null || !display.matches(":[0-9]+(\\.[0-9]+)?")) {
            throw new IOException("the robot needs an X server on this machine, as xvfb-run gives; DISPLAY is " + display);
        }
        String number = display.substring(1).split("\\.")[0];
        return new XServer(SocketChannel.open(UnixDomainSocketAddress.of("/tmp/.X11-unix/X" + number)));
    }

    private ByteBuffer hello() throws IOException {
        byte[] cookie = cookie();
        byte[] name = cookie.length == 0 ? new byte[0] : COOKIE.getBytes(StandardCharsets.US_ASCII);
        ByteBuffer out = buffer(12 + padded(name.length) + padded(cookie.length));
        out.put((byte) 'l').put((byte) 0).putShort((short) 11).putShort((short) 0).putShort((short) name.length)
                .putShort((short) cookie.length).putShort((short) 0);
        out.put(name).position(12 + padded(name.length));
        out.put(cookie).position(out.capacity());
        send(out);
        ByteBuffer head = receive(8);
        ByteBuffer rest = receive(4 * (head.getShort(6) & 0xFFFF));
        if (head.get(0) != OPEN) {
            throw new IOException("the X server refuses: " + StandardCharsets.US_ASCII.decode(rest));
        }
        return buffer(8 + rest.capacity()).put(head).put(rest);
    }

    private static byte[] cookie() throws IOException {
        String file = System.getenv("XAUTHORITY");
        if (file == null || !Files.isRegularFile(Path.of(file))) {
            return new byte[0];
        }
        ByteBuffer entries = ByteBuffer.wrap(Files.readAllBytes(Path.of(file)));
        while (entries.remaining() > 2) {
            entries.getShort();
            field(entries);
            field(entries);
            String name = new String(field(entries), StandardCharsets.US_ASCII);
            byte[] data = field(entries);
            if (name.equals(COOKIE)) {
                return data;
            }
        }
        return new byte[0];
    }

    private static byte[] field(ByteBuffer entries) {
        byte[] field = new byte[entries.getShort() & 0xFFFF];
        entries.get(field);
        return field;
    }

    private int extension() throws IOException {
        byte[] name = "XTEST".getBytes(StandardCharsets.US_ASCII);
        ByteBuffer out = request(QUERY_EXTENSION, 0, 8 + padded(name.length));
        out.putShort(4, (short) name.length);
        out.position(8).put(name).position(out.capacity());
        send(out);
        ByteBuffer answer = answer();
        if (answer.get(8) == 0) {
            throw new IOException("the X server has no test extension");
        }
        return answer.get(9) & 0xFF;
    }

    private void keyboard(int first, int count) throws IOException {
        ByteBuffer out = request(GET_KEYBOARD_MAPPING, 0, 8);
        out.put(4, (byte) first).put(5, (byte) count);
        send(out);
        ByteBuffer answer = answer();
        int each = answer.get(1) & 0xFF;
        for (int level = 0; level < 2; level++) {
            for (int key = 0; key < count; key++) {
                int symbol = answer.getInt(HEAD + 4 * (key * each + level));
                if (symbol != 0) {
                    strokes.putIfAbsent(symbol, new Stroke(first + key, level == 1));
                }
            }
        }
    }

    /** Where a symbol lies on the keyboard; for Latin-1 characters the symbol is the character. */
    Stroke stroke(int symbol) {
        Stroke stroke = strokes.get(symbol);
        if (stroke == null) {
            throw new IllegalArgumentException("the keyboard has no key for symbol 0x" + Integer.toHexString(symbol));
        }
        return stroke;
    }

    /** Presses a key or lets it go. */
    void key(int code, boolean down) {
        fake(down ? KEY_PRESS : KEY_RELEASE, code, 0, 0);
    }

    /** Presses a button or lets it go; 1 is the first. */
    void button(int number, boolean down) {
        fake(down ? BUTTON_PRESS : BUTTON_RELEASE, number, 0, 0);
    }

    /** Moves the pointer; px of the screen. */
    void pointer(int x, int y) {
        fake(MOTION, 0, x, y);
    }

    private void fake(int type, int detail, int x, int y) {
        try {
            ByteBuffer out = request(extension, FAKE_INPUT, 36);
            out.put(4, (byte) type).put(5, (byte) detail).putShort(24, (short) x).putShort(26, (short) y);
            send(out);
            // an answer comes only after the server has done what was asked before
            send(request(GET_INPUT_FOCUS, 0, 4));
            answer();
        } catch (IOException gone) {
            throw new java.io.UncheckedIOException("the X server does not answer", gone);
        }
    }

    private static ByteBuffer request(int code, int detail, int length) {
        ByteBuffer out = buffer(length);
        out.put(0, (byte) code).put(1, (byte) detail).putShort(2, (short) (length / 4));
        return out.position(length);
    }

    /** The next answer; events and such, which nobody asked for, do not come to a client without windows. */
    private ByteBuffer answer() throws IOException {
        ByteBuffer head = receive(HEAD);
        if (head.get(0) == 0) {
            throw new IOException("the X server refuses a request with error " + (head.get(1) & 0xFF));
        }
        if (head.get(0) != 1) {
            return answer();
        }
        ByteBuffer rest = receive(4 * head.getInt(4));
        return buffer(HEAD + rest.capacity()).put(head).put(rest);
    }

    private static ByteBuffer buffer(int length) {
        return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static int padded(int length) {
        return (length + 3) / 4 * 4;
    }

    private void send(ByteBuffer out) throws IOException {
        out.flip();
        while (out.hasRemaining()) {
            channel.write(out);
        }
    }

    private ByteBuffer receive(int length) throws IOException {
        ByteBuffer in = buffer(length);
        while (in.hasRemaining()) {
            if (channel.read(in) < 0) {
                throw new IOException("the X server hung up");
            }
        }
        return in.rewind();
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
