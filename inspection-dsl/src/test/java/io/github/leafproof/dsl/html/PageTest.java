package io.github.leafproof.dsl.html;

import static io.github.leafproof.dsl.html.Html.element;
import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.item;
import static io.github.leafproof.dsl.html.Html.link;
import static io.github.leafproof.dsl.html.Html.list;
import static io.github.leafproof.dsl.html.Html.p;
import static io.github.leafproof.dsl.html.Html.scrolling;
import static io.github.leafproof.dsl.html.Html.section;
import static io.github.leafproof.dsl.html.Html.sign;
import static io.github.leafproof.dsl.html.Html.strong;
import static io.github.leafproof.dsl.html.Html.tick;
import static io.github.leafproof.dsl.html.Html.unseen;
import static io.github.leafproof.dsl.html.Html.words;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** What every page has in common: its frame, its words and its tables. */
class PageTest {

    private static Document read(String page) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    private static String page(Part... body) {
        return new Page("A <page>", "", List.of(body)).text();
    }

    @Test
    void a_page_is_one_file_with_its_own_look() {
        Golden.hold(
                "html-page",
                page(element(
                        "main",
                        heading(1, "A \"page\" & more"),
                        p(words("The "), strong("gap"), words(" is < 0.10 mm, see "), link("#next", words("next"))),
                        section(
                                "next",
                                heading(2, "Next"),
                                List.of(list(List.of(item(tick(), words(" turn it over")))))),
                        p(sign("✓"), unseen("done"), words("\u0007bell")),
                        scrolling("The wide one", element("svg", element("path").with("d", "M0 0 H9"))),
                        Table.of("Leaves", "leaf", "measures")
                                .numbers("measures")
                                .row(words("0.05"), words("0.050 mm"))
                                .row("due", words("0.10"), words("0.110 mm"))
                                .element(),
                        Table.of("Gauges", "gauge", "state")
                                .cards()
                                .row(words("leaves"), words("due"))
                                .element())));
    }

    @Property(tries = 200)
    void whatever_words_come_in_come_out_as_words(@ForAll String words) throws Exception {
        Document page = read(page(element("main", p(words).with("title", words))));
        String shown = page.getElementsByTagName("p").item(0).getTextContent();

        assertThat(shown.replace('\t', ' ')).isEqualTo(Lettering.clean(words));
        assertThat(page.getElementsByTagName("p").getLength()).isEqualTo(1);
    }

    @Test
    void no_word_of_a_stranger_can_fetch_or_run_anything() {
        String page = page(p("<script>alert(1)</script><img src=x onerror=alert(1)>"));

        assertThat(page).doesNotContain("<script", "<img").contains("default-src 'none'");
    }
}
