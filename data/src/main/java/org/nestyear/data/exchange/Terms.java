package org.nestyear.data.exchange;

/** Name spaces of the standards' terms. */
final class Terms {
    static final String DWC = "http://rs.tdwg.org/dwc/terms/";
    static final String DCTERMS = "http://purl.org/dc/terms/";
    /** Decimals of a degree; the sixth is about a tenth of a metre, and more would say what nobody measured. */
    static final int PLACES_DEG = 6;

    private Terms() {}
}
