package org.nestyear.data.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.security.SecureRandom;
import java.util.HashSet;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class FeedSecretTest {
    @Test
    void aSecretOpensItsOwnHashAndNoOther() {
        SecureRandom random = new SecureRandom();
        Set<String> texts = new HashSet<>();
        for (int i = 0; i < 200; i++) {
            FeedSecret secret = FeedSecret.make(random);
            FeedSecret other = FeedSecret.make(random);
            assertThat(FeedSecret.opens(secret.text(), secret.hash())).isTrue();
            assertThat(FeedSecret.opens(other.text(), secret.hash())).isFalse();
            // RFC 3986 §2.3: unreserved characters, which no address escapes. 32 of 6 bits each are 192 bits.
            assertThat(secret.text()).matches("[A-Za-z0-9_-]{32}");
            texts.add(secret.text());
        }
        assertThat(texts).hasSize(200);
    }

    @Test
    void oneChangedCharacterAnywhereDoesNotOpen() {
        FeedSecret secret = new FeedSecret("AbCdEfGhIjKlMnOpQrStUvWxYz012345");
        for (int i = 0; i < secret.text().length(); i++) {
            StringBuilder wrong = new StringBuilder(secret.text());
            wrong.setCharAt(i, wrong.charAt(i) == '_' ? '-' : '_');
            assertThat(FeedSecret.opens(wrong.toString(), secret.hash())).isFalse();
        }
        for (String wrong : new String[] {"", "AbC", secret.text() + "x", secret.text() + "\n", "ş".repeat(32)}) {
            assertThat(FeedSecret.opens(wrong, secret.hash())).isFalse();
        }
    }

    @Test
    void theHashIsSha256OfTheText() {
        // printf 'AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA' | sha256sum (GNU coreutils)
        assertThat(new FeedSecret("A".repeat(32)).hash())
                .isEqualTo("22a48051594c1949deed7040850c1f0f8764537f5191be56732d16a54c1d8153");
    }

    @Test
    void neitherTextNorMessageGivesTheSecretAway() {
        FeedSecret secret = new FeedSecret("AbCdEfGhIjKlMnOpQrStUvWxYz012345");
        assertThat(secret.toString()).doesNotContain(secret.text());
        assertThatThrownBy(() -> new FeedSecret("AbCdEfGhIjKlMnOpQrStUvWxYz01234"))
                .isInstanceOf(IllegalArgumentException.class)
                .message()
                .doesNotContain("AbCd");
        assertThatThrownBy(() -> FeedSecret.opens(secret.text(), "no hash"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void namedUuidsAreThoseOfTheStandard() {
        // RFC 9562, appendix A.4: version 5, name space of domain names, "www.example.com".
        UUID dns = UUID.fromString("6ba7b810-9dad-11d1-80b4-00c04fd430c8");
        assertThat(NamedUuid.of(dns, "www.example.com"))
                .isEqualTo(UUID.fromString("2ed6657d-e927-568b-95e1-2665a8aea6a2"));
    }
}
