package org.nestyear.app.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import org.jspecify.annotations.Nullable;

/**
 * A secret made at each start. Only who has seen the start address can open the pages, so that other accounts and
 * programs on the same computer cannot.
 *
 * @param value the secret, or empty when the keeper asked for none
 */
record LaunchToken(String value) {
    private static final int BYTES = 24;

    static LaunchToken random() {
        byte[] bytes = new byte[BYTES];
        new SecureRandom().nextBytes(bytes);
        return new LaunchToken(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    static LaunchToken none() {
        return new LaunchToken("");
    }

    boolean isRequired() {
        return !value.isEmpty();
    }

    /** True when this is the secret; takes the same time wherever the first wrong letter stands. */
    boolean matches(@Nullable String offered) {
        return offered != null
                && isRequired()
                && MessageDigest.isEqual(
                        value.getBytes(StandardCharsets.UTF_8), offered.getBytes(StandardCharsets.UTF_8));
    }

    // A secret must not reach a log by way of a record's own text.
    @Override
    public String toString() {
        return "LaunchToken[" + (isRequired() ? "set" : "none") + "]";
    }
}
