package org.nestyear.core.source;

/**
 * A publication, data set or stated practice behind a number.
 *
 * @param key short unique name used in the catalogue tables
 * @param citation full citation in words
 * @param doi digital object identifier, or empty
 */
public record Source(String key, String citation, String doi) {
    public Source {
        if (key.isBlank() || citation.isBlank()) {
            throw new IllegalArgumentException("a source needs a key and a citation, got key \"" + key + "\"");
        }
    }
}
