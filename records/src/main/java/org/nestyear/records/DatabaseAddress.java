package org.nestyear.records;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.nestyear.records.UnreadableRecordsException.Reason;

/** Where a keeper's records are. */
public sealed interface DatabaseAddress {
    /** The address in words for a message, without any password. */
    String words();

    /**
     * The SQLite file in a data folder.
     *
     * @param folder the data folder
     */
    record InFolder(Path folder) implements DatabaseAddress {
        public InFolder {
            folder = folder.toAbsolutePath().normalize();
        }

        /** The file itself. */
        public Path file() {
            return folder.resolve(Database.FILE_NAME);
        }

        @Override
        public String words() {
            return file().toString();
        }
    }

    /**
     * A database on a PostgreSQL server.
     *
     * @param url {@code jdbc:postgresql://HOST:PORT/NAME}, with the driver's own options after a question mark
     * @param user name to sign in with, or null when the URL tells it
     * @param password password to sign in with, or null when the URL tells it or none is needed
     */
    record OnServer(
            String url, @Nullable String user, @Nullable String password) implements DatabaseAddress {
        private static final String PREFIX = "jdbc:postgresql:";

        /**
         * @throws UnreadableRecordsException if this is no address of a PostgreSQL database
         */
        public OnServer {
            url = url.strip();
            if (!url.toLowerCase(Locale.ROOT).startsWith(PREFIX)) {
                // Of what is no such address only the beginning is told: the rest may hold a password.
                int colon = url.indexOf(':');
                String seen = colon < 0 ? "something else" : "\"" + url.substring(0, colon) + ":…\"";
                throw new UnreadableRecordsException(
                        Reason.SETTING,
                        "the database is named by " + seen + "; expected " + PREFIX + "//HOST:PORT/NAME.",
                        url.startsWith("postgres") ? "Maybe only jdbc: is missing at its beginning." : "",
                        null);
            }
            int end = url.indexOf('?') < 0 ? url.length() : url.indexOf('?');
            if (url.lastIndexOf('@', end) >= 0) {
                throw new UnreadableRecordsException(
                        Reason.SETTING,
                        "the address of the database holds a user before an @; expected " + PREFIX
                                + "//HOST:PORT/NAME and the user apart from it.",
                        "Maybe set NESTYEAR_DATABASE_USER and NESTYEAR_DATABASE_PASSWORD.",
                        null);
            }
        }

        /** This address with one more option of the driver. */
        public OnServer with(String option, String value) {
            String joint = url.indexOf('?') < 0 ? "?" : "&";
            return new OnServer(
                    url + joint + option + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8), user, password);
        }

        /** The address without the driver's options, among which there may be a password. */
        @Override
        public String words() {
            int options = url.indexOf('?');
            return options < 0 ? url : url.substring(0, options);
        }

        @Override
        public String toString() {
            return words();
        }
    }
}
