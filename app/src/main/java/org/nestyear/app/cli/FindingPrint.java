package org.nestyear.app.cli;

import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Phrase;

/** A finding as paragraphs and as JSON. */
final class FindingPrint {
    private static final int INDENT = 4;

    private FindingPrint() {}

    /** What was found, and what to do about it. */
    static void text(Page page, Finding finding, Wording words) {
        StringBuilder text = new StringBuilder();
        text.append(finding.level().word()).append(": ").append(words.phrase(finding.what()));
        if (finding.observed() != null) {
            text.append(" Found: ").append(words.phrase(finding.observed()));
            text.append(finding.limit() == null ? "." : ", against " + words.phrase(finding.limit()) + ".");
        }
        page.hanging(0, INDENT, text.toString());
        page.paragraph(INDENT, words.phrase(finding.action()));
        if (finding.caution() != null) {
            page.paragraph(INDENT, "Caution: " + words.phrase(finding.caution()));
        }
    }

    /** Its members. */
    static void json(JsonText json, Finding finding, Wording words) {
        json.text("id", finding.id());
        json.text("level", finding.level().word());
        json.text("what", words.phrase(finding.what()));
        json.text("observed", phrase(finding.observed(), words));
        json.text("limit", phrase(finding.limit(), words));
        json.text("action", words.phrase(finding.action()));
        json.text("caution", phrase(finding.caution(), words));
        BasisJson.writeIds(json, finding.basis());
    }

    private static @Nullable String phrase(@Nullable Phrase phrase, Wording words) {
        return phrase == null ? null : words.phrase(phrase);
    }
}
