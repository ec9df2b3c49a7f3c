package io.github.leafproof.dsl.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.html.Ink;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.ReportFile;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The report of an engine as a page, on the bench of the examples. */
class ReportPageTest {

    private static final Path BENCH = Path.of("..", "examples", "bench");

    private static final Map<String, Judgement> JUDGED = new ConcurrentHashMap<>();
    private static final Map<String, String> PAGES = new ConcurrentHashMap<>();

    private static Judgement judgement(String procedure, String sheet) {
        return JUDGED.computeIfAbsent(sheet, same -> judgement(procedure, sheet, UnitSystem.METRIC));
    }

    private static Judgement judgement(String procedure, String sheet, UnitSystem units) {
        Path file = BENCH.resolve("sheets").resolve(sheet + ".json");
        Document<JobSheet> read = SheetFile.read(file).orElseThrow();
        return Procedure.read(BENCH.resolve(procedure + ".inspection"))
                .orElseThrow()
                .judgement(
                        CardFile.read(beside(file, read.content().card())).orElseThrow(),
                        TrayFile.read(beside(file, read.content().tray())).orElseThrow(),
                        read,
                        units)
                .orElseThrow();
    }

    private static Path beside(Path sheet, @Nullable String named) {
        return sheet.resolveSibling(Objects.requireNonNull(named)).normalize();
    }

    private static String page(String procedure, String sheet) {
        return PAGES.computeIfAbsent(sheet, same -> ReportPage.of(judgement(procedure, sheet)));
    }

    private static org.w3c.dom.Document read(String page) throws Exception {
        // Written so that it is XML as well, and can be looked through with what every Java has.
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    private static List<Element> all(org.w3c.dom.Document page, String tag) {
        NodeList found = page.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    /** Without the style sheet, and without the drawing, which has its own tests. */
    private static String body(String page) {
        return page.replaceFirst("(?s)<style>.*</style>", "<style>…</style>")
                .replaceFirst("(?s)<details>.*</details>", "<details>…</details>");
    }

    @Test
    void a_gap_that_a_worn_leaf_leaves_open_is_held_and_the_page_says_why_at_the_top() {
        Golden.hold("page/0412-trap", body(page("first_look", "0412-trap")));
    }

    @Test
    void an_engine_that_was_adjusted_shows_as_found_and_as_left() {
        Golden.hold("page/0417-adjusted", body(page("first_look", "0417-adjusted")));
    }

    @ParameterizedTest
    @CsvSource({
        "first_look, 0411-clean",
        "first_look, 0414-leak",
        "first_look, 0416-contradiction",
        "running_in, 0433-run-in",
        "needle_setting, 0436-lean-side"
    })
    void figures_show_what_was_measured(String procedure, String sheet) {
        String page = page(procedure, sheet);

        Golden.hold(
                "page/" + sheet + "-figures",
                page.substring(page.indexOf("<section id=\"pictures\""), page.indexOf("<section id=\"drawing\"")));
    }

    @ParameterizedTest
    @CsvSource({
        "first_look, 0412-trap",
        "first_look, 0415-unfinished",
        "first_look, 0417-adjusted",
        "used_engine, 0424-worn-ring",
        "running_in, 0433-run-in",
        "release_to_owner, 0461-handover"
    })
    void it_says_all_that_the_report_says_and_no_number_of_its_own(String procedure, String sheet) throws Exception {
        Judgement judgement = judgement(procedure, sheet);
        Report report = Reporting.of(judgement);
        org.w3c.dom.Document page = read(page(procedure, sheet));
        String words = page.getDocumentElement().getTextContent();

        assertThat(words)
                .contains(
                        report.releaseReason(),
                        report.date().toString(),
                        report.sheet().sha256())
                .contains(ReportFile.sha256(report));
        assertSays(words, report.cautions());
        assertSays(words, report.notes());
        for (Report.Check check : report.checks()) {
            Element row = all(page, "tr").stream()
                    .filter(each -> each.getAttribute("id").equals(EvidenceTable.id(check)))
                    .findFirst()
                    .orElseThrow();
            String told = row.getTextContent();
            assertThat(told)
                    .contains(check.title(), Ink.of(check.outcome()).word())
                    .contains(check.value() == null ? "" : check.value())
                    .contains(check.requirement() == null ? "" : check.requirement());
            List.of(check.notes(), check.because(), check.advice(), check.missing())
                    .forEach(lines -> assertSays(told, lines));
        }
        report.next().forEach(step -> {
            assertThat(words).contains(step.step());
            assertSays(words, step.cautions());
        });
    }

    private static void assertSays(String page, List<String> lines) {
        lines.forEach(line -> assertThat(page).contains(line));
    }

    @ParameterizedTest
    @CsvSource({"first_look, 0412-trap", "running_in, 0433-run-in", "after_run_cold_check, 0453-set-again"})
    void it_loads_nothing_runs_nothing_and_every_link_leads_somewhere(String procedure, String sheet) throws Exception {
        String text = page(procedure, sheet);
        org.w3c.dom.Document page = read(text);
        List<String> ids = all(page, "*").stream()
                .map(each -> each.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();

        assertThat(text).doesNotContain("<script", "src=", "@import", "http://", "https://");
        assertThat(ids).doesNotHaveDuplicates();
        assertThat(all(page, "a"))
                .isNotEmpty()
                .allSatisfy(link ->
                        assertThat(ids).contains(link.getAttribute("href").substring(1)));
        assertThat(all(page, "svg"))
                .isNotEmpty()
                .allSatisfy(svg -> assertThat(svg.getAttribute("aria-hidden").equals("true")
                                || ids.containsAll(List.of(
                                        svg.getAttribute("aria-labelledby").split(" ", -1))))
                        .isTrue());
    }

    @Test
    void headings_step_down_by_one_and_there_is_one_title() throws Exception {
        org.w3c.dom.Document page = read(page("running_in", "0433-run-in"));
        List<Integer> levels = all(page, "*").stream()
                .map(Element::getTagName)
                .filter(tag -> tag.matches("h[1-6]"))
                .map(tag -> tag.charAt(1) - '0')
                .toList();

        assertThat(levels).startsWith(1).containsOnlyOnce(1);
        for (int i = 1; i < levels.size(); i++) {
            assertThat(levels.get(i)).isLessThanOrEqualTo(levels.get(i - 1) + 1);
        }
    }

    @Test
    void a_caution_stands_before_its_step() throws Exception {
        org.w3c.dom.Document page = read(page("first_look", "0412-trap"));
        Element step = all(page, "ol").get(0);
        String words = step.getTextContent();

        assertThat(words.indexOf("Disconnect it before hands go near"))
                .isLessThan(words.indexOf("Offer 0.05 + 0.04 mm"));
        assertThat(words.strip()).startsWith("Caution: ");
    }

    @Test
    void inches_are_shown_to_those_who_read_them() {
        String page = ReportPage.of(judgement("first_look", "0412-trap", UnitSystem.INCH));

        assertThat(page).contains("Still possible: 1.969 thou to 4.331 thou", ">thou</text>");
        assertThat(page.substring(0, page.indexOf("id=\"evidence\""))).doesNotContain("Still possible: 0.0500 mm");
    }

    @Test
    void the_same_judgement_is_the_same_page() {
        Judgement again = judgement("first_look", "0416-contradiction", UnitSystem.METRIC);

        assertThat(ReportPage.of(again)).isEqualTo(page("first_look", "0416-contradiction"));
    }
}
