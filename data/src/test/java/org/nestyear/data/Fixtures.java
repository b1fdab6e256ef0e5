package org.nestyear.data;

import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Path;

/** Files of the test resources, as files on disk. */
final class Fixtures {
    private Fixtures() {}

    static TextSource source(String folderAndName) {
        return TextSource.ofFile(path(folderAndName));
    }

    static Path path(String folderAndName) {
        URL url = Fixtures.class.getResource("/" + folderAndName);
        if (url == null) {
            throw new IllegalArgumentException("no test resource " + folderAndName);
        }
        try {
            return Path.of(url.toURI());
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException(e);
        }
    }
}
