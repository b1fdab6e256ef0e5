package org.nestyear.data.exchange;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;

/**
 * Version 5 UUIDs: the same name always gives the same one (RFC 9562 §5.5). RFC 7986 §5.3 asks for UUIDs as calendar
 * UIDs, because they give nothing away.
 */
final class NamedUuid {
    /** The name space of everything this program names; drawn once at random. */
    private static final UUID OURS = UUID.fromString("8ac9f0b4-d142-48cc-832b-8b92f20ddbbf");

    private NamedUuid() {}

    static UUID of(String name) {
        return of(OURS, name);
    }

    static UUID of(UUID space, String name) {
        byte[] text = name.getBytes(StandardCharsets.UTF_8);
        ByteBuffer input = ByteBuffer.allocate(2 * Long.BYTES + text.length);
        input.putLong(space.getMostSignificantBits()).putLong(space.getLeastSignificantBits());
        input.put(text);
        ByteBuffer hash = ByteBuffer.wrap(sha1(input.array()));
        long high = (hash.getLong() & ~0xF000L) | 0x5000L;
        long low = (hash.getLong() & 0x3FFF_FFFF_FFFF_FFFFL) | 0x8000_0000_0000_0000L;
        return new UUID(high, low);
    }

    private static byte[] sha1(byte[] input) {
        try {
            return MessageDigest.getInstance("SHA-1").digest(input);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-1", e);
        }
    }
}
