package org.nestyear.app.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.nestyear.core.release.CurvePoint;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ReleasePictureTest {
    private static final LocalDate START = LocalDate.of(2015, 4, 1);

    @Test
    void everyDateOfTheCurveIsACornerWhereTheScalesPutIt() throws Exception {
        List<CurvePoint> points = List.of(point(0, 0.5), point(10, 1), point(20, 0));
        Document picture = parse(ReleasePicture.draw(curve(points, List.of()), Frame.wide("c")));
        Frame frame = Frame.wide("c");
        LinearScale x = new LinearScale(0, 20, frame.left(), frame.plotRight());
        LinearScale y = new LinearScale(0, 1.05 * 1.2, frame.plotBottom(), frame.top());
        String expected =
                corner(x.at(0), y.at(0.5)) + " " + corner(x.at(10), y.at(1)) + " " + corner(x.at(20), y.at(0));
        assertThat(one(picture, "polyline").getAttribute("points")).isEqualTo(expected);
        // The band runs along the ninetieth percentiles and back along the tenth.
        assertThat(byClass(picture, "polygon", "band").getAttribute("points"))
                .startsWith(corner(x.at(0), y.at(0.7)))
                .endsWith(corner(x.at(0), y.at(0.4)));
    }

    @Test
    void theWindowIsShadedFromItsFirstDayToItsLast() throws Exception {
        Document picture = parse(ReleasePicture.draw(curve(threePoints(), List.of()), Frame.wide("c")));
        Frame frame = Frame.wide("c");
        LinearScale x = new LinearScale(0, 20, frame.left(), frame.plotRight());
        Element window = byClass(picture, "rect", "window");
        assertThat(window.getAttribute("x")).isEqualTo(SvgText.number(x.at(7.5)));
        assertThat(window.getAttribute("width")).isEqualTo(SvgText.number(x.at(12.5) - x.at(7.5)));
        assertThat(window.getAttribute("fill")).isEqualTo("url(#c-wide-window)");
        assertThat(texts(picture)).contains("window 9–13 Apr");
    }

    @Test
    void theScoreAxisReachesWhateverTheBandReaches() throws Exception {
        List<CurvePoint> high = List.of(point(0, 0.5), point(10, 2.6), point(20, 0));
        assertThat(texts(parse(ReleasePicture.draw(curve(high, List.of()), Frame.wide("c")))))
                .contains("250\u00a0%")
                .doesNotContain("300\u00a0%");
    }

    @Test
    void everyLaneHasItsOwnMarkAndItsWordsInsideThePicture() throws Exception {
        List<Lane> lanes = List.of(
                lane(Lane.Mark.RING, "today, 1 Apr", 0, 0, 0),
                lane(Lane.Mark.BRACKET, "not ruled out, 3–18 Apr", 2, 2, 17),
                lane(Lane.Mark.BAR, "apple in bloom, 12 Apr–30 Apr", 11, 20, 29),
                lane(Lane.Mark.TRIANGLE, "rule of thumb, 3 Apr", -60, 2, 4),
                lane(Lane.Mark.DIAMOND, "same date every year, 21 Jul", 111, 111, 111));
        for (Frame frame : List.of(Frame.wide("c"), Frame.narrow("c"))) {
            Document picture = parse(ReleasePicture.draw(curve(threePoints(), lanes), frame));
            for (Lane lane : lanes) {
                assertThat(texts(picture)).contains(lane.words());
            }
            assertThat(all(picture, "circle")).hasSize(1);
            assertThat(all(picture, "polygon").stream()
                            .filter(p -> p.getAttribute("class").equals("mark")))
                    .hasSize(2);
            assertThat(byClass(picture, "rect", "bar").getAttribute("fill"))
                    .isEqualTo("url(#" + frame.key() + "-bloom)");
            assertThatWordsStayInside(picture, frame);
        }
    }

    @Test
    void wordsGivenAreTextAndNeverMarkup() throws Exception {
        List<Lane> lanes = List.of(lane(Lane.Mark.BAR, "</text><script>x()</script> & \"more\"", 0, 1, 2));
        Document picture = parse(ReleasePicture.draw(curve(threePoints(), lanes), Frame.wide("c")));
        assertThat(all(picture, "script")).isEmpty();
        assertThat(texts(picture)).contains("</text><script>x()</script> & \"more\"");
    }

    @Test
    void thePictureNamesAndDescribesItself() throws Exception {
        Element root = parse(ReleasePicture.draw(curve(threePoints(), List.of()), Frame.narrow("c")))
                .getDocumentElement();
        assertThat(root.getAttribute("viewBox")).startsWith("0 0 360 ");
        assertThat(root.getAttribute("aria-labelledby")).isEqualTo("c-narrow-title c-narrow-desc");
        assertThat(root.getFirstChild().getTextContent()).isEqualTo("Release curve");
        assertThat(root.hasAttribute("style")).isFalse();
    }

    @Test
    void aScoreThatIsNoNumberIsRefused() {
        List<CurvePoint> broken = List.of(point(0, 0.5), point(10, Double.NaN));
        assertThatThrownBy(() -> ReleasePicture.draw(curve(broken, List.of()), Frame.wide("c")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }

    private static void assertThatWordsStayInside(Document picture, Frame frame) {
        List<Element> all = all(picture, "text");
        assertThat(all).isNotEmpty();
        for (Element text : all) {
            double x = Double.parseDouble(text.getAttribute("x"));
            double width = Words.width(text.getTextContent(), frame.text());
            double left = switch (text.getAttribute("text-anchor")) {
                case "end" -> x - width;
                case "middle" -> x - width / 2;
                default -> x;
            };
            assertThat(left).as(text.getTextContent()).isGreaterThanOrEqualTo(-0.01);
            assertThat(left + width).as(text.getTextContent()).isLessThanOrEqualTo(frame.width() + 0.01);
        }
    }

    private static ReleaseCurve curve(List<CurvePoint> points, List<Lane> lanes) {
        Function<LocalDate, String> shortDate = date -> date.getDayOfMonth() + " Apr";
        return new ReleaseCurve(
                "Release curve",
                "A curve.",
                "share of the best",
                points,
                START.plusDays(8),
                START.plusDays(12),
                "window 9–13 Apr",
                "mean",
                "8 cases in 10",
                lanes,
                shortDate);
    }

    private static List<CurvePoint> threePoints() {
        return List.of(point(0, 0.5), point(10, 1), point(20, 0));
    }

    private static CurvePoint point(int day, double mean) {
        double low = Math.max(0, mean - 0.1);
        return new CurvePoint(START.plusDays(day), mean, low, mean + 0.2, 10, 5, 1 - mean, mean == 1);
    }

    private static Lane lane(Lane.Mark mark, String words, int from, int at, int to) {
        return new Lane(mark, words, START.plusDays(from), START.plusDays(at), START.plusDays(to));
    }

    private static String corner(double x, double y) {
        return SvgText.number(x) + "," + SvgText.number(y);
    }

    private static Document parse(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static List<Element> all(Document picture, String name) {
        NodeList nodes = picture.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static Element one(Document picture, String name) {
        assertThat(all(picture, name)).hasSize(1);
        return all(picture, name).get(0);
    }

    private static Element byClass(Document picture, String name, String className) {
        return all(picture, name).stream()
                .filter(e -> e.getAttribute("class").equals(className))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> texts(Document picture) {
        return all(picture, "text").stream().map(Element::getTextContent).toList();
    }
}
