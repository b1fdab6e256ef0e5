package org.nestyear.app.web;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.nestyear.app.service.Refusal;
import org.springframework.web.multipart.MultipartFile;

/**
 * The files of an upload, by their names without folders.
 *
 * @param seasonName name of the season file
 * @param files content of every file, the season file among them
 */
record UploadedFiles(String seasonName, Map<String, byte[]> files) {
    /**
     * Takes over what the browser sent; fields left empty are no files.
     *
     * @throws Refusal if there is no season file, or two files share a name
     */
    static UploadedFiles of(MultipartFile season, List<MultipartFile> weather) throws IOException {
        String seasonName = name(season);
        if (seasonName.isEmpty()) {
            throw refusal("NY-UPLOAD-SEASON", "no season file was chosen; expected one that ends in .toml.");
        }
        Map<String, byte[]> files = new HashMap<>();
        files.put(seasonName, season.getBytes());
        for (MultipartFile file : weather) {
            String name = name(file);
            if (!name.isEmpty() && files.put(name, file.getBytes()) != null) {
                throw refusal(
                        "NY-UPLOAD-TWICE",
                        "two files are called \"" + name + "\"; expected a different name for each.");
            }
        }
        return new UploadedFiles(seasonName, files);
    }

    private static Refusal refusal(String code, String sentence) {
        return new Refusal(Refusal.Kind.BAD_INPUT, code, "", sentence, "");
    }

    private static String name(MultipartFile file) {
        String given = file.getOriginalFilename();
        String name = given == null ? "" : given;
        return name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
    }
}
