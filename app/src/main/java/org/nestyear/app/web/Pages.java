package org.nestyear.app.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

/** Fills the page templates, which were compiled with the program. Safe for many threads. */
final class Pages {
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);

    /** The page of this template for this view. */
    String render(String template, Object view) {
        StringOutput page = new StringOutput();
        engine.render(template, view, page);
        return page.toString();
    }
}
