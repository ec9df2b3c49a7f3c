package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.coverage.Coverage;
import io.github.leafproof.dsl.coverage.CoverageHtml;
import io.github.leafproof.dsl.page.ReportPage;
import io.github.leafproof.examples.Browser.Paper;
import io.github.leafproof.examples.Browser.Screen;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The pages that the program writes, in a real browser: whether everybody can read them, on a phone, on a desk, in the dark,
 * and on paper. Where a machine has no browser they are left out, and where {@code LEAFPROOF_BROWSER} is {@code required},
 * as it is before every merge, that is a mistake.
 */
class PagesInBrowserTest {

    /** Every page of the program, each as small as shows all there is on its kind, and two that are long. */
    private static final Map<String, Supplier<String>> PAGES = new LinkedHashMap<>();

    static {
        PAGES.put("held", () -> report("0412-trap"));
        PAGES.put("adjusted", () -> report("0417-adjusted"));
        PAGES.put("unfinished", () -> report("0415-unfinished"));
        PAGES.put("run in", () -> report("0433-run-in"));
        PAGES.put("coverage", PagesInBrowserTest::coverage);
        PAGES.put("work card", () -> WorkCardsTest.page("first_look"));
    }

    /** The levels that a page has to keep: Web Content Accessibility Guidelines, versions 2.0 to 2.2, A and AA. */
    private static final String RULES = "['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']";

    private static final Pattern SHEET_OF_PDF = Pattern.compile("/Type\\s*/Page\\b");

    private static @Nullable Browser browser;

    private static final Map<String, Path> WRITTEN = new LinkedHashMap<>();

    @TempDir
    static Path folder;

    private static String report(String sheet) {
        return ReportPage.of(Bench.judgement(sheet + ".json"), Bench.judge(sheet + ".json"));
    }

    private static String coverage() {
        Procedure tank = Bench.procedure("tank");
        return CoverageHtml.write(
                List.of(Coverage.of(tank, Bench.rehearsing("tank", tank).play())));
    }

    @BeforeAll
    static void start() throws IOException {
        Optional<Browser> started = Browser.start(folder.resolve("profile"));
        boolean required = "required".equals(System.getenv("LEAFPROOF_BROWSER"));
        String remedy = "no chromium and chromedriver on the path: Debian's packages are chromium and chromium-driver";
        if (started.isEmpty() && required) {
            fail(remedy);
        }
        assumeTrue(started.isPresent(), remedy);
        browser = started.get();
        for (Map.Entry<String, Supplier<String>> page : PAGES.entrySet()) {
            Path file = folder.resolve(page.getKey().replace(' ', '-') + ".html");
            Files.writeString(file, page.getValue().get());
            WRITTEN.put(page.getKey(), file);
        }
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    static Stream<String> pages() {
        return PAGES.keySet().stream();
    }

    static Stream<Arguments> pagesOnScreens() {
        return pages().flatMap(page -> Stream.of(Screen.values())
                .flatMap(screen -> Stream.of(false, true).map(dark -> Arguments.of(page, screen, dark))));
    }

    private static Browser open(String page, Screen screen, boolean dark) {
        Browser opened = Objects.requireNonNull(browser);
        opened.open(Objects.requireNonNull(WRITTEN.get(page)), screen, dark);
        return opened;
    }

    private static String rules() {
        try (InputStream script =
                PagesInBrowserTest.class.getResourceAsStream("/META-INF/resources/webjars/axe-core/4.6.3/axe.min.js")) {
            return new String(Objects.requireNonNull(script).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** All but the longest, which takes a minute and has nothing on it that the others have not. */
    static Stream<Arguments> shorterPagesOnScreens() {
        return pagesOnScreens().filter(each -> !each.get()[0].equals("run in"));
    }

    @ParameterizedTest
    @MethodSource("shorterPagesOnScreens")
    void everybody_can_read_it(String page, Screen screen, boolean dark) {
        Browser open = open(page, screen, dark);
        open.ask(rules() + "; return true");
        Object wrong = open.askAndWait("const done = arguments[arguments.length - 1];"
                + "axe.run(document, {runOnly: " + RULES + ", resultTypes: ['violations']}).then(found =>"
                + " done(found.violations.map(each => each.id + ': ' + each.help + '\\n  '"
                + " + each.nodes.slice(0, 5).map(node => node.html.slice(0, 200) + ' ' + node.failureSummary).join('\\n  '))))"
                + ".catch(problem => done(['' + problem]));");

        assertThat(wrong).asInstanceOf(InstanceOfAssertFactories.LIST).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("pagesOnScreens")
    void nothing_is_wider_than_the_screen_and_nothing_is_fetched(String page, Screen screen, boolean dark) {
        Browser open = open(page, screen, dark);

        assertThat(tooWide(open)).isEqualTo(0L);
        // A phone that had to make room for something wide would show everything smaller.
        assertThat(open.ask("return window.innerWidth")).isEqualTo((long) screen.width());
        assertThat(open.ask("return performance.getEntriesByType('resource').map(each => each.name)"))
                .isEqualTo(List.of());
    }

    private static Object tooWide(Browser open) {
        return open.ask("return document.documentElement.scrollWidth - document.documentElement.clientWidth");
    }

    /** Words in the pictures: none is cut off at an edge, and none lies upon another. */
    @ParameterizedTest
    @MethodSource("pages")
    void the_words_of_a_picture_stay_in_it_and_off_each_other(String page) {
        for (Screen screen : Screen.values()) {
            Object wrong = open(page, screen, false).ask("""
                    const wrong = [];
                    for (const figure of document.querySelectorAll('svg.figure')) {
                      const frame = figure.getBoundingClientRect();
                      const texts = [...figure.querySelectorAll('text')].map(text =>
                        ({words: text.textContent, box: text.getBoundingClientRect()}));
                      const name = figure.querySelector('title').textContent;
                      texts.forEach((text, i) => {
                        if (text.box.left < frame.left - 0.5 || text.box.right > frame.right + 0.5
                            || text.box.top < frame.top - 0.5 || text.box.bottom > frame.bottom + 0.5) {
                          wrong.push(name + ': cut off: ' + text.words);
                        }
                        texts.slice(i + 1).forEach(other => {
                          const across = Math.min(text.box.right, other.box.right) - Math.max(text.box.left, other.box.left);
                          const down = Math.min(text.box.bottom, other.box.bottom) - Math.max(text.box.top, other.box.top);
                          if (across > 1 && down > 4) {
                            wrong.push(name + ': ' + text.words + ' upon ' + other.words);
                          }
                        });
                      });
                    }
                    return wrong;""");

            assertThat(wrong).isEqualTo(List.of());
        }
    }

    /** What is too wide or too high for a sheet would be cut or parted. */
    @ParameterizedTest
    @MethodSource("pages")
    void on_paper_nothing_is_cut(String page) {
        for (Paper paper : Paper.values()) {
            Browser open = open(page, Screen.DESKTOP, true);
            open.layOnPaper(paper);

            assertThat(tooWide(open)).isEqualTo(0L);
            assertThat(open.ask(
                            "return [...document.querySelectorAll('figure, tr, li')].filter(each => each.offsetHeight > arguments[0])"
                                    + ".map(each => each.textContent.slice(0, 80))",
                            paper.bodyHeight()))
                    .isEqualTo(List.of());
            assertThat(open.ask("return getComputedStyle(document.body).backgroundColor"))
                    .as("always light on paper")
                    .isEqualTo("rgb(255, 255, 255)");
            double high = ((Number) open.ask("return document.documentElement.scrollHeight")).doubleValue();
            double least = high / paper.bodyHeight();
            // Rows and pictures that are not parted leave room at the foot of a sheet, and no more than that.
            assertThat(sheets(open.print(paper)))
                    .isBetween((long) Math.floor(least), (long) Math.ceil(least * 1.3) + 1);
        }
    }

    private static long sheets(byte[] pdf) {
        return SHEET_OF_PDF
                .matcher(new String(pdf, StandardCharsets.ISO_8859_1))
                .results()
                .count();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void whoever_goes_by_keys_sees_where_he_is(String page) {
        Browser open = open(page, Screen.DESKTOP, false);
        for (int step = 0; step < 12; step++) {
            open.pressTab();
            Object seen = open.ask("""
                    const style = getComputedStyle(document.activeElement);
                    return document.activeElement === document.body
                        || (style.outlineStyle === 'solid' && parseFloat(style.outlineWidth) >= 2);""");
            assertThat(seen).as("step " + step).isEqualTo(true);
        }
        assertThat(open.ask("return document.activeElement.tagName")).isIn("A", "SUMMARY", "DIV", "BODY");
    }

    /** For a person to look at: with {@code -Dpages.look=FOLDER} every page as picture and on paper goes there. */
    @ParameterizedTest
    @MethodSource("pages")
    @EnabledIfSystemProperty(named = "pages.look", matches = ".+", disabledReason = "only where somebody wants to look")
    void looked_at(String page) throws IOException {
        Path look = Files.createDirectories(Path.of(Objects.requireNonNull(System.getProperty("pages.look"))));
        for (Screen screen : Screen.values()) {
            for (boolean dark : new boolean[] {false, true}) {
                String name = page + "-" + screen + (dark ? "-dark" : "") + ".png";
                Files.write(look.resolve(name), open(page, screen, dark).picture());
            }
        }
        for (Paper paper : Paper.values()) {
            Files.write(
                    look.resolve(page + "-" + paper + ".pdf"),
                    open(page, Screen.DESKTOP, false).print(paper));
        }
    }
}
