package org.nestyear.records;

import java.util.Map;

/** Where the text of an opened season is. */
public sealed interface SeasonSource {
    /** The word kept in the table. */
    String kind();

    /** The name of the season file, without folders. */
    String fileName();

    /**
     * The invented demonstration season that comes with the program.
     *
     * @param fileName name of its season file
     */
    record Demo(String fileName) implements SeasonSource {
        @Override
        public String kind() {
            return "demo";
        }
    }

    /**
     * A season file on this computer. It is read afresh for every answer, so that a change saved in an editor counts.
     *
     * @param folder absolute path of its folder
     * @param fileName its name in that folder
     */
    record OnDisk(String folder, String fileName) implements SeasonSource {
        @Override
        public String kind() {
            return "path";
        }
    }

    /**
     * A season file that came through the browser, with the files it names.
     *
     * @param fileName its name on the keeper's device
     * @param seasonText its whole text
     * @param files text of every file it names, by its name without folders
     */
    record Uploaded(String fileName, String seasonText, Map<String, String> files) implements SeasonSource {
        public Uploaded {
            files = Map.copyOf(files);
        }

        @Override
        public String kind() {
            return "upload";
        }
    }
}
