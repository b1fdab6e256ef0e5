package org.nestyear.data.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.CalendarComponent;
import net.fortuna.ical4j.validate.ValidationResult;
import org.junit.jupiter.api.Test;

/**
 * The feed as two other programs' libraries read it: ical4j 4 (with its validation) and biweekly 0.6 (with its warnings),
 * neither of which had a hand in writing it; and the rules of RFC 5545 and RFC 7986 by section.
 */
class CalendarFeedTest {
    private static final CalendarFeed.Details DETAILS =
            new CalendarFeed.Details("Jobs for the bees, 2015", "All sites; invented", 12);

    @Test
    void twoOtherReadersFindTheJobsAndNothingToRemark() throws Exception {
        List<CalendarJob> jobs = List.of(
                Samples.job("put-out", "2015-04-12", "2015-04-20"),
                Samples.job(Samples.FAR, "house", "2015-12-31", "2015-12-31", "Kar yağmadan önce, yavaşça; 蜂。"));
        String text = feed(jobs, NONE);
        Calendar calendar = ical4j(text);
        ValidationResult result = calendar.validate();
        assertThat(result.getEntries()).isEmpty();
        assertThat(events(calendar)).hasSize(2);
        ICalendar other = biweekly(text);
        assertThat(other.getEvents()).hasSize(2);
        for (CalendarJob job : jobs) {
            Component event = event(calendar, job.uid());
            VEvent otherEvent = event(other, job.uid());
            String summary = job.title() + " (" + job.siteName() + ")";
            assertThat(value(event, Property.SUMMARY)).isEqualTo(summary);
            assertThat(otherEvent.getSummary().getValue()).isEqualTo(summary);
            assertThat(value(event, Property.LOCATION)).isEqualTo(job.siteName());
            assertThat(otherEvent.getLocation().getValue()).isEqualTo(job.siteName());
            assertThat(value(event, Property.DESCRIPTION))
                    .contains(job.reason(), "Risk: " + job.risk(), "Caution: " + job.caution())
                    .contains(job.basis())
                    .isEqualTo(otherEvent.getDescription().getValue());
            assertThat(otherEvent.getCategories().get(0).getValues()).containsExactly(job.species());
            // RFC 5545 §3.6.1: the end of an event is not part of it; a day alone ends on the next.
            assertThat(day(otherEvent.getDateStart().getValue())).isEqualTo(job.from());
            assertThat(otherEvent.getDateStart().getValue().hasTime()).isFalse();
            assertThat(day(otherEvent.getDateEnd().getValue()))
                    .isEqualTo(job.to().plusDays(1));
        }
        assertThat(value(event(calendar, jobs.get(1).uid()), "DTEND")).isEqualTo("20160101");
    }

    @Test
    void textIsEscapedAsTheStandardSpellsIt() {
        // RFC 5545 §3.3.11, whose own example is the first.
        assertThat(ContentLines.escaped("Project XYZ Final Review\nConference Room - 3B\nCome Prepared."))
                .isEqualTo("Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
        assertThat(ContentLines.escaped("a;b,c\\d:\"e\"")).isEqualTo("a\\;b\\,c\\\\d:\"e\"");
        // RFC 7986 §5.7: the type must be named, there is no default.
        assertThat(feed(List.of(), NONE)).contains("\r\nREFRESH-INTERVAL;VALUE=DURATION:PT12H\r\n");
        // RFC 5545 §3.8.2.4 and §3.8.2.2: a day without a time must say so.
        assertThat(feed(List.of(Samples.job("mud", "2015-04-12", "2015-04-12")), NONE))
                .contains("\r\nDTSTART;VALUE=DATE:20150412\r\n", "\r\nDTEND;VALUE=DATE:20150413\r\n");
    }

    @Test
    void theCalendarNamesItselfAndSaysWhenToComeBack() throws Exception {
        ICalendar calendar = biweekly(feed(List.of(Samples.job("mud", "2015-04-12", "2015-05-20")), NONE));
        // RFC 7986 §5.1, §5.2, §5.4, §5.7.
        assertThat(calendar.getNames().get(0).getValue()).isEqualTo(DETAILS.name());
        assertThat(calendar.getDescriptions().get(0).getValue()).isEqualTo(DETAILS.description());
        assertThat(calendar.getLastModified().getValue()).isEqualTo(Samples.NOON);
        assertThat(calendar.getRefreshInterval().getValue().toString()).isEqualTo("PT12H");
        assertThat(calendar.getExperimentalProperty("X-PUBLISHED-TTL").getValue())
                .isEqualTo("PT12H");
        // RFC 5545 §3.7.3 and §3.7.4.
        assertThat(calendar.getProductId().getValue()).isEqualTo("-//nestyear.org//Nestyear//EN");
        assertThat(calendar.getVersion()).isEqualTo(ICalVersion.V2_0);
    }

    @Test
    void anEmptyPlanIsStillACalendar() {
        // RFC 5545 §3.6 wants a component, but a feed must be able to say that nothing is left to do; a reader of both
        // libraries takes it.
        String text = feed(List.of(), NONE);
        assertThat(biweekly(text).getEvents()).isEmpty();
    }

    @Test
    void linesAreFoldedEscapedAndEndedAsTheStandardAsks() {
        SplittableRandom random = new SplittableRandom(20151125);
        String alphabet = "ab ,;:\\\"\n\r\tçğıİ€蜂🐝\u0007\u007f\ud83d";
        int[] signs = alphabet.codePoints().toArray();
        for (int round = 0; round < 500; round++) {
            StringBuilder reason = new StringBuilder();
            int length = random.nextInt(300);
            for (int i = 0; i < length; i++) {
                reason.appendCodePoint(signs[random.nextInt(signs.length)]);
            }
            String text = feed(
                    List.of(Samples.job(Samples.FAR, "put-out", "2015-04-12", "2015-04-20", reason.toString())), NONE);
            checkLines(text, "seed 20151125, round " + round);
            String read = biweekly(text).getEvents().get(0).getDescription().getValue();
            assertThat(read)
                    .as("seed 20151125, round %s", round)
                    .contains(cleaned(reason.toString()).strip());
        }
    }

    /** RFC 5545 §3.1: CRLF, at most 75 octets before it, no control characters but the tab, each line UTF-8 by itself. */
    private static void checkLines(String text, String where) {
        byte[] octets = text.getBytes(StandardCharsets.UTF_8);
        int start = 0;
        int lines = 0;
        for (int i = 0; i < octets.length; i++) {
            if (octets[i] == '\r') {
                assertThat(octets[i + 1]).as(where).isEqualTo((byte) '\n');
                assertThat(i - start).as(where).isBetween(1, 75);
                assertThat(isUtf8(octets, start, i - start)).as(where).isTrue();
                start = i + 2;
                lines++;
                i++;
            } else {
                assertThat(octets[i] == '\t' || octets[i] < 0 || (octets[i] >= ' ' && octets[i] != 0x7f))
                        .as(where)
                        .isTrue();
            }
        }
        assertThat(start).as(where).isEqualTo(octets.length);
        assertThat(lines).as(where).isGreaterThan(20);
    }

    private static boolean isUtf8(byte[] octets, int from, int length) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(octets, from, length));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    private static String cleaned(String text) {
        StringBuilder cleaned = new StringBuilder();
        text.replace("\r\n", "\n").replace('\r', '\n').codePoints().forEach(sign -> {
            switch (sign) {
                case 0x07, 0x7f -> cleaned.append(' ');
                case 0xd83d -> cleaned.append('?');
                default -> cleaned.appendCodePoint(sign);
            }
        });
        return cleaned.toString();
    }

    @Test
    void theSameJobKeepsItsUidWhenItMoves() {
        CalendarJob job = Samples.job("put-out", "2015-04-12", "2015-04-20");
        CalendarJob moved = Samples.job("put-out", "2015-04-15", "2015-04-22");
        assertThat(moved.uid()).isEqualTo(job.uid());
        assertThat(Samples.job("mud", "2015-04-12", "2015-04-20").uid()).isNotEqualTo(job.uid());
        assertThat(Samples.job(Samples.FAR, "put-out", "2015-04-12", "2015-04-20", "")
                        .uid())
                .isNotEqualTo(job.uid());
        // Kept as written today: a UID that changes with the program would double every job in every calendar.
        assertThat(job.uid()).isEqualTo(Kept.UID);
    }

    @Test
    void aChangeCountsUpAndIsStampedAndNothingElseIs() {
        CalendarJob put = Samples.job("put-out", "2015-04-12", "2015-04-20");
        CalendarJob mud = Samples.job("mud", "2015-04-12", "2015-05-20");
        Map<String, JobRevision> first = JobRevision.after(Map.of(), List.of(put, mud), Samples.NOON);
        String before = CalendarFeed.write(DETAILS, List.of(put, mud), first);
        Instant later = Samples.NOON.plus(Duration.ofDays(3));
        Map<String, JobRevision> same = JobRevision.after(first, List.of(mud, put), later);
        // Nothing changed: the very same text, in whatever order the jobs come, on one day or not.
        CalendarJob late = Samples.job("watch", "2015-04-12", "2015-04-20");
        assertThat(feed(List.of(late, put), NONE)).isEqualTo(feed(List.of(put, late), NONE));
        assertThat(CalendarFeed.write(DETAILS, List.of(mud, put), same)).isEqualTo(before);

        CalendarJob moved = Samples.job("put-out", "2015-04-15", "2015-04-22");
        Map<String, JobRevision> second = JobRevision.after(same, List.of(moved, mud), later);
        ICalendar calendar = biweekly(CalendarFeed.write(DETAILS, List.of(moved, mud), second));
        VEvent event = event(calendar, put.uid());
        // RFC 5545 §3.8.7.2 to §3.8.7.4.
        assertThat(event.getSequence().getValue()).isEqualTo(1);
        assertThat(event.getLastModified().getValue()).isEqualTo(later);
        assertThat(event.getDateTimeStamp().getValue()).isEqualTo(later);
        assertThat(day(event.getDateStart().getValue())).isEqualTo(moved.from());
        assertThat(event(calendar, mud.uid()).getSequence().getValue()).isZero();
        assertThat(event(calendar, mud.uid()).getLastModified().getValue()).isEqualTo(Samples.NOON);
    }

    @Test
    void aJobThatIsGoneIsAbsentAndCountsOnWhenItComesBack() {
        CalendarJob put = Samples.job("put-out", "2015-04-12", "2015-04-20");
        CalendarJob mud = Samples.job("mud", "2015-04-12", "2015-05-20");
        Map<String, JobRevision> first = JobRevision.after(Map.of(), List.of(put, mud), Samples.NOON);
        Map<String, JobRevision> gone = JobRevision.after(first, List.of(mud), Samples.NOON.plusSeconds(60));
        assertThat(CalendarFeed.write(DETAILS, List.of(mud), gone)).doesNotContain(put.uid());
        CalendarJob back = Samples.job("put-out", "2015-04-13", "2015-04-20");
        Map<String, JobRevision> again = JobRevision.after(gone, List.of(back, mud), Samples.NOON.plusSeconds(120));
        assertThat(again.get(put.uid()))
                .isNotNull()
                .extracting(JobRevision::sequence)
                .isEqualTo(1);
    }

    @Test
    void aFeedWithoutAMemoryCountsByTheClock() {
        CalendarJob put = Samples.job("put-out", "2015-04-12", "2015-04-20");
        Instant changed = Instant.parse("2020-01-02T00:00:30Z");
        ICalendar calendar = biweekly(CalendarFeed.write(DETAILS, List.of(put), JobRevision.at(List.of(put), changed)));
        assertThat(event(calendar, put.uid()).getSequence().getValue()).isEqualTo(24 * 60);
        assertThat(event(calendar, put.uid()).getLastModified().getValue()).isEqualTo(changed);
        assertThatThrownBy(() -> JobRevision.at(List.of(put), Samples.NOON))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void oneJobTwiceOrWithoutARevisionIsRefused() {
        CalendarJob put = Samples.job("put-out", "2015-04-12", "2015-04-20");
        assertThatThrownBy(() -> feed(List.of(put, put), NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("in the feed twice");
        assertThatThrownBy(() -> CalendarFeed.write(DETAILS, List.of(put), Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("has no revision");
        assertThatThrownBy(() -> Samples.job("put-out", "2015-04-12", "2015-04-11"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static final Map<String, JobRevision> NONE = Map.of();

    private static String feed(List<CalendarJob> jobs, Map<String, JobRevision> before) {
        return CalendarFeed.write(DETAILS, jobs, JobRevision.after(before, jobs, Samples.NOON));
    }

    private static Calendar ical4j(String text) throws IOException, ParserException {
        return new CalendarBuilder().build(new StringReader(text));
    }

    /** Fails on any warning of the reader or of its validation. */
    private static ICalendar biweekly(String text) {
        List<List<ParseWarning>> warnings = new ArrayList<>();
        List<ICalendar> calendars = Biweekly.parse(text).warnings(warnings).all();
        assertThat(calendars).hasSize(1);
        assertThat(warnings).allSatisfy(some -> assertThat(some).isEmpty());
        return calendars.get(0);
    }

    private static List<CalendarComponent> events(Calendar calendar) {
        return calendar.getComponents(Component.VEVENT);
    }

    private static Component event(Calendar calendar, String uid) {
        return events(calendar).stream()
                .filter(event -> value(event, Property.UID).equals(uid))
                .findFirst()
                .orElseThrow();
    }

    private static VEvent event(ICalendar calendar, String uid) {
        return calendar.getEvents().stream()
                .filter(event -> event.getUid().getValue().equals(uid))
                .findFirst()
                .orElseThrow();
    }

    private static String value(Component event, String property) {
        return event.getRequiredProperty(property).getValue();
    }

    private static LocalDate day(biweekly.util.ICalDate date) {
        biweekly.util.DateTimeComponents raw = date.getRawComponents();
        return LocalDate.of(raw.getYear(), raw.getMonth(), raw.getDate());
    }

    /** Frozen output. */
    private static final class Kept {
        /** Python 3: {@code uuid.uuid5(name_space, "SITE\nOsmia lignaria\n2015\nput-out")}. */
        static final String UID = "5b7fa4b4-a5c5-5afb-9f9d-027fcaaeb118";
    }
}
