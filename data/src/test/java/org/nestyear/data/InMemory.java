package org.nestyear.data;

import java.nio.charset.StandardCharsets;

/** A text that lies nowhere, with nothing beside it. */
record InMemory(String name, String text) implements TextSource {
    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public byte[] bytes() {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public TextSource beside(String relative) {
        throw new IllegalArgumentException("nothing lies beside " + name);
    }
}
