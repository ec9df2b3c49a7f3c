package io.github.leafproof.dsl.coverage;

import static io.github.leafproof.dsl.coverage.Rehearsals.coverage;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import io.github.leafproof.dsl.Procedure;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The page that shows a procedure's text with what its rehearsals show of it. */
class CoverageHtmlTest {

    private static final Procedure FIRST_LOOK =
            Procedure.read(Rehearsals.BENCH.resolve("first_look.inspection")).orElseThrow();

    private static final String PAGE =
            CoverageHtml.write(List.of(Coverage.of(FIRST_LOOK, Rehearsals.played(FIRST_LOOK))));

    private static Document read(String page) throws Exception {
        // Written so that it is XML as well, and can be looked through with what every Java has.
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    private static List<Element> all(Document page, String tag) {
        NodeList found = page.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    @Test
    void every_line_says_by_a_sign_and_in_words_what_its_colour_says() {
        Golden.hold(
                "coverage-html",
                CoverageHtml.write(List.of(coverage("""
                                observe free : yes/no ask "Free?"
                                observe dry : yes/no ask "<Dry> & clean?"
                                check turns "It turns" { require free
                                  and dry }
                                check dry_inside "Dry" { require dry if fails advise "Let it \\"run\\" out" }
                                """, "enter free yes, dry no")))
                        .replaceFirst("(?s)<style>.*</style>", "<style>…</style>"));
    }

    @Test
    void it_holds_the_text_of_every_file_letter_by_letter() throws Exception {
        Document page = read(PAGE);
        StringBuilder lines = new StringBuilder();
        all(page, "span").stream()
                .filter(span -> span.getAttribute("class").equals("code"))
                .forEach(span -> lines.append(span.getTextContent()).append('\n'));
        StringBuilder texts = new StringBuilder();
        FIRST_LOOK.written().sources().forEach(source -> texts.append(source.text()));

        assertThat(lines.toString()).isEqualTo(texts.toString());
    }

    @Test
    void it_loads_nothing_and_runs_nothing_and_every_link_leads_somewhere() throws Exception {
        Document page = read(PAGE);
        List<String> ids = new ArrayList<>();
        for (String tag : List.of("h2", "h3", "div", "details", "li")) {
            all(page, tag).stream()
                    .map(each -> each.getAttribute("id"))
                    .filter(id -> !id.isEmpty())
                    .forEach(ids::add);
        }

        assertThat(PAGE).doesNotContain("<script", "src=", "@import", "url(", "http://", "https://");
        assertThat(ids).doesNotHaveDuplicates();
        assertThat(all(page, "a"))
                .hasSizeGreaterThan(100)
                .allSatisfy(link ->
                        assertThat(ids).contains(link.getAttribute("href").substring(1)));
    }

    @Test
    void several_procedures_stand_on_one_page_with_a_table_of_them() throws Exception {
        Coverage one = coverage("observe free : yes/no ask \"Free?\"\ncheck turns \"It turns\" { require free }\n");
        Document page = read(CoverageHtml.write(List.of(one, one)));

        assertThat(all(page, "h2")).extracting(each -> each.getAttribute("id")).containsExactly("p1", "p2");
        assertThat(all(page, "title").get(0).getTextContent()).isEqualTo("What the rehearsals of 2 procedures show");
    }
}
