package io.github.leafproof.dsl.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.html.Lettering;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What is in a picture, where it stands, and that words stay words in every drawing language. */
class PictureTest {

    private static final Workshop BENCH = Workshop.of("""
            gauge depth : reading of length
            observe said : one of new, used ask "New?"
            stage "Outside" {
              observe step : length with depth ask "Step"
              observe rattle : yes/no when said is used ask "Does it rattle?"
              let twice = 2 * step
              let more = twice + 1 mm
              let told = step + 3 mm
              check small "Small" major gate { require more at most 5 mm if high advise "It is {told}." }
              check quiet "Quiet" minor { require not rattle }
            }
            stage "Inside" {
              after small
              observe deep : length with depth ask "Deep"
              check fits "It fits" critical { when said is new require deep at most more }
            }
            """);

    private static Picture picture() {
        return Picture.of(BENCH.compiled().graph());
    }

    private static Map<String, Picture.Box> byTitle(Picture picture) {
        return picture.boxes().stream().collect(Collectors.toMap(Picture.Box::title, Function.identity()));
    }

    private static Picture.Box box(Map<String, Picture.Box> boxes, String title) {
        return Objects.requireNonNull(boxes.get(title));
    }

    @Test
    void stages_are_lanes_and_what_only_advice_speaks_of_is_left_out() {
        assertThat(picture().lanes()).extracting(Picture.Lane::title).containsExactly("", "Outside", "Inside");
        assertThat(picture().boxes())
                .extracting(Picture.Box::title)
                .containsExactly("said", "step", "rattle", "twice", "more", "Small", "Quiet", "deep", "It fits");
    }

    @Test
    void what_is_read_feeds_and_what_decides_is_told_apart_from_it_and_gates_tie_checks() {
        Map<String, Picture.Box> boxes = byTitle(picture());
        Map<String, String> titles =
                boxes.values().stream().collect(Collectors.toMap(Picture.Box::id, Picture.Box::title));

        assertThat(picture().links())
                .extracting(link -> titles.get(link.from()) + " " + link.tie() + " " + titles.get(link.to()))
                .containsExactlyInAnyOrder(
                        "step FEEDS twice",
                        "twice FEEDS more",
                        "more FEEDS Small",
                        "rattle FEEDS Quiet",
                        "said DECIDES rattle",
                        "deep FEEDS It fits",
                        "more FEEDS It fits",
                        "said DECIDES It fits",
                        "Small GATES It fits");
        assertThat(box(boxes, "twice").depth()).isEqualTo(1);
        assertThat(box(boxes, "more").depth()).isEqualTo(2);
        assertThat(box(boxes, "Small").kind()).isEqualTo(Picture.Kind.GATE);
        assertThat(box(boxes, "It fits").notes()).contains("waits for small");
    }

    private static final String OF_THE_ENGINE = """
            gauge depth : reading of length
            let aim = (engine.lash_min + engine.lash_max) / 2
            stage "Outside" {
              observe step : length with depth ask "Step"
              observe held : yes/no when not engine.choke ask "Does it hold?"
              check small "Small" { require step at most aim + engine.lash_max }
              check holds "It holds" { when engine.bore at least 20 mm  require held }
            }
            """;

    @Test
    void a_box_tells_which_facts_of_the_engine_it_reads_and_for_one_engine_what_they_are() {
        Map<String, Picture.Box> any =
                byTitle(Picture.of(Workshop.of(OF_THE_ENGINE).compiled().graph()));
        Map<String, Picture.Box> one = byTitle(Picture.of(
                Workshop.of(OF_THE_ENGINE).observe("step", "\"0.05 mm\"").judged()));

        assertThat(box(any, "Small").notes()).contains("reads engine.lash_max");
        assertThat(box(any, "It holds").notes()).contains("reads engine.bore");
        assertThat(box(any, "held").notes()).contains("reads engine.choke");
        assertThat(box(any, "aim").notes()).containsExactly("= (engine.lash_min + engine.lash_max) / 2");
        assertThat(box(one, "Small").notes()).contains("reads engine.lash_max 0.10 mm");
        assertThat(box(one, "aim").notes()).contains("reads engine.lash_min 0.03 mm, engine.lash_max 0.10 mm");
        assertThat(box(one, "step").notes()).noneMatch(note -> note.startsWith("reads"));
    }

    @Test
    void a_value_stands_in_the_last_of_the_stages_that_it_rests_on() {
        Picture picture = Picture.of(Workshop.of("""
                        gauge depth : reading of length
                        observe first : length with depth ask "First"
                        let one = first * 2
                        stage "Later" {
                          observe second : length with depth ask "Second"
                          let both = second + one
                          let more = both + one
                          check small "Small" { require more at most 5 mm }
                        }
                        """).compiled().graph());

        assertThat(picture.lanes().get(0).boxes())
                .extracting(Picture.Box::title)
                .containsExactly("first", "one");
        assertThat(picture.lanes().get(1).boxes())
                .extracting(Picture.Box::title)
                .containsExactly("second", "both", "more", "Small");
    }

    @Test
    void with_a_sheet_a_box_tells_what_was_found_or_why_not() {
        Picture picture = Picture.of(
                BENCH.observe("said", "\"new\"").observe("step", "\"1 mm\"").judged());
        Map<String, Picture.Box> boxes = byTitle(picture);

        assertThat(box(boxes, "step").notes()).last().isEqualTo("= 1.000 mm (u 0.010 mm)");
        assertThat(box(boxes, "more").notes()).last().isEqualTo("= 3.000 mm (u 0.020 mm)");
        assertThat(box(boxes, "rattle").notes()).last().isEqualTo("= does not apply");
        assertThat(box(boxes, "deep").notes()).last().isEqualTo("= was not entered");
        assertThat(box(boxes, "Small").outcome()).hasToString("PASSES");
        assertThat(picture.subtitle()).endsWith("Quillan Q15-4 Q15-1, sheet 0412 of 2026-03-04: UNFINISHED");
    }

    @Test
    void no_box_lies_upon_another_and_all_lie_on_the_sheet() throws Exception {
        Document svg = parsed(SvgDrawing.of(picture()));
        List<int[]> boxes = new ArrayList<>();
        NodeList all = svg.getElementsByTagName("rect");
        for (int i = 0; i < all.getLength(); i++) {
            Element rect = (Element) all.item(i);
            if (rect.getAttribute("class").equals("box")) {
                int x = number(rect, "x");
                int y = number(rect, "y");
                boxes.add(new int[] {x, y, x + number(rect, "width"), y + number(rect, "height")});
            }
        }
        int width = number(svg.getDocumentElement(), "width");
        int height = number(svg.getDocumentElement(), "height");
        for (int[] one : boxes) {
            assertThat(one[0] >= 0 && one[1] >= 0 && one[2] <= width && one[3] <= height)
                    .isTrue();
            for (int[] other : boxes) {
                boolean apart = one[2] <= other[0] || other[2] <= one[0] || one[3] <= other[1] || other[3] <= one[1];
                assertThat(one == other || apart).isTrue();
            }
        }
        assertThat(boxes).hasSizeGreaterThan(8);
    }

    private static int number(Element element, String attribute) {
        return Integer.parseInt(element.getAttribute(attribute));
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    /** A title that would end a string, a tag, a label or a line in one of the languages, if it were let. */
    private static final String HOSTILE = String.join(
            " ",
            "</text><script>alert('1')</script>",
            "\\\"];}\n",
            "digraph &amp; #quot; ]:::x %%{init}%%",
            "`b` ]]>",
            "\u202Egnp\u0000 \uD83D end");

    private static Picture hostile() {
        Picture.Box box = new Picture.Box("c0", Picture.Kind.CHECK, 0, HOSTILE, List.of(HOSTILE), null, HOSTILE);
        return new Picture(HOSTILE, HOSTILE, List.of(new Picture.Lane(HOSTILE, List.of(box))), List.of());
    }

    @Test
    void hostile_words_stay_words_in_svg() throws Exception {
        Document svg = parsed(SvgDrawing.of(hostile()));

        assertThat(svg.getElementsByTagName("script").getLength()).isZero();
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
                .startsWith("</text><script>alert('1')</script> \\\"];}  digraph &amp; #quot;")
                .endsWith("\uFFFDgnp\uFFFD \uFFFD end");
    }

    @Test
    void hostile_words_stay_words_in_dot() {
        String dot = DotText.of(hostile());

        // Every line is one statement: no quote, no backslash and no line end got out of its string.
        assertThat(dot.lines().skip(1))
                .allSatisfy(
                        line -> assertThat(line)
                                .matches(
                                        " *(\\}|(graph|node|edge|c0) \\[(\\w+=(\\w+|\"([^\"\\\\]|\\\\.)*\")(, )?)*\\];|subgraph \\w+ \\{)"));
        assertThat(dot).contains("&amp;amp;").contains("\\\\\\\"];}");
    }

    @Test
    void hostile_words_stay_words_in_mermaid() {
        String text = MermaidText.of(hostile());

        assertThat(text.lines().skip(3))
                .allSatisfy(
                        line -> assertThat(line).matches(" *(end|(subgraph s0|c0)\\[\"([^\"<>`%{}&]|<br/>)*\"\\])"));
        assertThat(text).contains("#60;/text#62;").doesNotContain("%%{");
    }

    @Test
    void a_long_word_is_broken_and_a_long_text_ends_with_a_mark() {
        assertThat(Lettering.wrapped("one two", 10, 1000, 3)).containsExactly("one two");
        assertThat(Lettering.wrapped("Donaudampfschifffahrt", 10, 60, 9))
                .hasSizeGreaterThan(1)
                .allSatisfy(line -> assertThat(Lettering.width(line, 10)).isLessThanOrEqualTo(60));
        assertThat(Lettering.wrapped("many words that nobody reads to the end", 10, 60, 2))
                .hasSize(2)
                .last()
                .asString()
                .endsWith("…");
        assertThat(Lettering.wrapped("", 10, 60, 2)).containsExactly("");
        assertThat(Lettering.wrapped("\uD83D\uDE00\uD83D\uDE00\uD83D\uDE00", 10, 1, 9))
                .containsExactly("\uD83D\uDE00", "\uD83D\uDE00", "\uD83D\uDE00");
    }

    @Test
    void a_procedure_of_thousands_of_checks_is_drawn_too() {
        StringBuilder text = new StringBuilder("let top = 1 mm\n");
        for (int i = 0; i < 2_000; i++) {
            text.append("observe o" + i + " : length ask \"?\"\n")
                    .append("check c" + i + " \"Check " + i + "\" minor { ")
                    .append(i > 0 && i % 2 == 1 ? "after c" + (i - 1) + " " : "")
                    .append("require o" + i + " at most top }\n");
        }
        Picture picture =
                Picture.of(Workshop.of(text.toString().replaceAll("(c\\d*[02468] \"[^\"]*\" minor)", "$1 gate"))
                        .compiled()
                        .graph());

        assertThatCode(() -> parsed(SvgDrawing.of(picture))).doesNotThrowAnyException();
        assertThat(picture.boxes()).hasSize(4_001);
    }
}
