package org.nestyear.app.service;

import java.util.List;

/**
 * Answers small questions put in the words of the command line. The pages ask through it, so that each question has one
 * way to be read, answered, worded and refused, whichever face it came through.
 */
public interface SmallSums {
    /**
     * Answers one question.
     *
     * @param words the command and its arguments, without {@code --json}
     * @throws Refusal if the question is wrong or has no honest answer
     */
    Told ask(List<String> words);

    /** What a command may be told, in its own order; a file stands under its label, such as {@code FILE}. */
    List<Word> wordsOf(String command);

    /**
     * An answer in words and in numbers.
     *
     * @param lines a paragraph, a list item that begins with {@code "- "}, or a row of cells two spaces or more apart, each
     *     on a line of its own; empty lines part sections
     * @param json one object of the command's schema, in metric units
     * @param whole false when a part of what was asked stays open
     */
    record Told(List<String> lines, String json, boolean whole) {
        public Told {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One thing a command may be told.
     *
     * @param name option such as {@code --lat}, or label of a file
     * @param description what it means, a sentence
     * @param required whether the command cannot do without
     */
    record Word(String name, String description, boolean required) {}
}
