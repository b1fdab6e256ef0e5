package org.nestyear.data.exchange;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.regex.Pattern;

/**
 * The secret end of a feed's address. Whoever knows the address may read the feed, so the text is shown once, when the
 * link is made; only its {@link #hash()} is kept, and revoking a link is forgetting that hash.
 *
 * <p>192 random bits as base64url without padding (RFC 4648 §5): 32 characters that need no escaping in a path. A plain
 * SHA-256 is enough to keep, because a text of that many random bits cannot be guessed from its hash as a password can.
 *
 * @param text 32 characters of {@code A-Z a-z 0-9 - _}
 */
public record FeedSecret(String text) {
    private static final int RANDOM_BYTES = 24;
    private static final Pattern SHAPE = Pattern.compile("[A-Za-z0-9_-]{32}");
    private static final Pattern HASH_SHAPE = Pattern.compile("[0-9a-f]{64}");

    /**
     * @throws IllegalArgumentException if the text is not of that shape; the message does not repeat the text
     */
    public FeedSecret {
        if (!SHAPE.matcher(text).matches()) {
            throw new IllegalArgumentException("a feed secret is 32 characters of A-Z, a-z, 0-9, - and _");
        }
    }

    /** A new secret from the caller's source of randomness. */
    public static FeedSecret make(SecureRandom random) {
        byte[] bytes = new byte[RANDOM_BYTES];
        random.nextBytes(bytes);
        return new FeedSecret(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    /** SHA-256 of the text, 64 lower-case hexadecimal digits: all that is kept. */
    public String hash() {
        return HexFormat.of().formatHex(sha256(text));
    }

    /**
     * True if the presented text is the secret behind the kept hash. Takes the same time however many characters agree.
     *
     * @param presented what stood in the address; any text, nothing is thrown
     * @param keptHash a {@link #hash()}
     * @throws IllegalArgumentException if the kept hash is not 64 lower-case hexadecimal digits
     */
    public static boolean opens(String presented, String keptHash) {
        if (!HASH_SHAPE.matcher(keptHash).matches()) {
            throw new IllegalArgumentException("a kept feed hash is 64 hexadecimal digits, lower case");
        }
        // The shape tells nothing about the secret; it keeps a long address from being hashed.
        return SHAPE.matcher(presented).matches()
                && MessageDigest.isEqual(sha256(presented), HexFormat.of().parseHex(keptHash));
    }

    /** Never the secret, so that it cannot slip into a log. */
    @Override
    public String toString() {
        return "FeedSecret[text=withheld]";
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.US_ASCII));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
