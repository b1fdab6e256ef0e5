package org.nestyear.data.exchange;

/** The terms a keeper may give records away on. */
public enum Licence {
    CC0("http://creativecommons.org/publicdomain/zero/1.0/legalcode", "Public domain (CC0 1.0)"),
    CC_BY("http://creativecommons.org/licenses/by/4.0/legalcode", "Creative Commons, name the source (CC BY 4.0)"),
    CC_BY_NC(
            "http://creativecommons.org/licenses/by-nc/4.0/legalcode",
            "Creative Commons, name the source, not for trade (CC BY-NC 4.0)");

    private final String uri;
    private final String label;

    Licence(String uri, String label) {
        this.uri = uri;
        this.label = label;
    }

    /** Address of its legal text. */
    public String uri() {
        return uri;
    }

    /** In words. */
    public String label() {
        return label;
    }
}
