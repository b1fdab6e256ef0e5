package org.nestyear.core.guest;

/** The five questions of the plug card. */
public enum CardQuestion {
    PLUG("plug", "What closes the tunnel in front?"),
    WALL("wall", "What are the walls between the cells made of?"),
    CONTENTS("contents", "What lies in the cell?"),
    FRASS("frass", "What do the droppings look like?"),
    HOLES("holes", "Are there holes?");

    private final String word;
    private final String text;

    CardQuestion(String word, String text) {
        this.word = word;
        this.text = text;
    }

    /** Name of the option and of the member in JSON answers. */
    public String word() {
        return word;
    }

    /** The question itself. */
    public String text() {
        return text;
    }
}
