package org.nestyear.data;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.util.List;

/** The decoded text of a file, with its lines at hand for messages. */
record SourceText(String name, String text, List<String> lines) {
    private static final int LARGEST_BYTES = 64 * 1024 * 1024;

    /**
     * Reads a UTF-8 text; a byte order mark is dropped.
     *
     * @throws DataFault if it is missing, unreadable, empty or not UTF-8
     */
    static SourceText read(TextSource source) {
        Position file = Position.ofFile(source.name());
        byte[] bytes = bytes(source, file);
        if (bytes.length > LARGEST_BYTES) {
            throw new DataFault(
                    FaultCode.FILE_UNREADABLE, file, "the file has " + bytes.length + " bytes", "at most 64 MB", "");
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new DataFault(
                    FaultCode.FILE_NOT_TEXT,
                    file,
                    "the file is not UTF-8 text",
                    "a plain text file",
                    "save it again as \"CSV UTF-8\" or plain text");
        }
        if (text.startsWith("\uFEFF")) {
            text = text.substring(1);
        }
        if (text.indexOf('\0') >= 0) {
            throw new DataFault(
                    FaultCode.FILE_NOT_TEXT,
                    file,
                    "the file holds zero bytes, as spreadsheets and pictures do",
                    "a plain text file",
                    "export it as CSV");
        }
        if (text.isBlank()) {
            throw new DataFault(
                    FaultCode.FILE_EMPTY,
                    new Position(source.name(), 1, 1),
                    "the file is empty",
                    "at least a header line and one day, or the tables of a season",
                    "");
        }
        return new SourceText(source.name(), text, text.lines().toList());
    }

    private static byte[] bytes(TextSource source, Position file) {
        try {
            return source.bytes();
        } catch (NoSuchFileException | FileNotFoundException e) {
            throw new DataFault(
                    FaultCode.FILE_MISSING,
                    file,
                    "there is no such file",
                    "the path of a file that exists",
                    "the path is relative to another folder");
        } catch (IOException e) {
            throw new DataFault(
                    FaultCode.FILE_UNREADABLE,
                    file,
                    "the file cannot be read",
                    "a plain text file",
                    "it is a folder, or you may not read it");
        }
    }

    /** The line with this number from 1, or an empty text beyond the end. */
    String line(int number) {
        return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
    }
}
