package org.nestyear.app.book;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.nestyear.app.service.LossesAnswer;
import org.nestyear.app.service.LossesQuestion;
import org.nestyear.app.service.PlanAnswer;
import org.nestyear.app.service.PlanRequest;
import org.nestyear.app.service.PlanService;
import org.nestyear.app.service.YearsAnswer;
import org.nestyear.app.service.YearsQuestion;

/** Answers of the model to what the records tell, in place of files. */
public final class KeptAnswers {
    private final RecordsDesk records;
    private final Path folder;

    /**
     * Answers from these records.
     *
     * @param folder their folder, in which weather tables lie
     */
    public KeptAnswers(RecordsDesk records, Path folder) {
        this.records = records;
        this.folder = folder;
    }

    /**
     * The plan of a season.
     *
     * @param species Latin name
     * @param year year the bees fly in
     * @throws org.nestyear.app.service.Refusal if something is missing or no honest answer is possible
     */
    public PlanAnswer plan(String site, String species, int year, PlanRequest request) {
        LocalDate today = request.today() == null ? request.clock() : request.today();
        KeptSeason season = KeptSeason.of(records, folder, site, species, year);
        return PlanService.standard().plan(season.asOf(today, false), request);
    }

    /**
     * How far the keeper's own springs at a site were off the model with their weather known; empty where none is told.
     *
     * @param species Latin name
     * @param year the year planned, which is left out
     */
    public List<SpringThatWas.Offset> ownSprings(String site, String species, int year) {
        return SpringThatWas.own(records, folder, KeptSeason.of(records, folder, site, species, year));
    }

    /** The season as a file that can be kept, changed and planned. */
    public String seasonFile(String site, String species, int year, LocalDate today) {
        return KeptSeason.of(records, folder, site, species, year).text(today, false);
    }

    /**
     * How the stock of a site may go on.
     *
     * @throws org.nestyear.app.service.Refusal if no release is written down, or no bee is left
     */
    public YearsAnswer years(String site, YearsQuestion question) {
        return YearsAnswer.of(
                question, StockYears.table(records, site, question.species().latinName()));
    }

    /**
     * What was lost at a site.
     *
     * @param species Latin name
     * @param year year the nests were built in, or 0 for all
     * @throws org.nestyear.app.service.Refusal if nothing was opened
     */
    public LossesAnswer losses(String site, String species, int year, LossesQuestion question) {
        return LossesAnswer.of(question, OpenedKept.tally(records, site, species, year));
    }
}
