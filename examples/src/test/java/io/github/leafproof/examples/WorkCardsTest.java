package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.leafproof.dsl.workcard.WorkCard;
import io.github.leafproof.dsl.workcard.WorkCardPage;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The work cards of the bench: as a person has read them, and on how many sheets of paper a real browser prints them. */
class WorkCardsTest {

    private static final Pattern SHEET_OF_PDF = Pattern.compile("/Type\\s*/Page\\b");

    @TempDir
    private Path here = Path.of("");

    static String page(String procedure) {
        return WorkCardPage.of(WorkCard.of(
                        Bench.procedure(procedure).graph(),
                        Bench.card("cards/quillan-15.json"),
                        Bench.tray("trays/bench-one.json"),
                        null,
                        UnitSystem.METRIC)
                .orElseThrow());
    }

    @Test
    void the_card_of_the_first_look_is_the_one_that_a_person_has_read() throws IOException {
        Golden.holds(Project.BENCH.resolve("expected/first_look.card.html"), page("first_look"));
    }

    @ParameterizedTest
    @CsvSource({"first_look, A4, 3", "first_look, Letter, 3", "tank, A4, 1", "tank, Letter, 1"})
    void a_card_takes_few_sheets(String procedure, String paper, int most) throws IOException {
        Optional<File> browser = browser();
        if (browser.isEmpty() && "required".equals(System.getenv("LEAFPROOF_BROWSER"))) {
            fail("no chromium on the path: Debian's package is chromium");
        }
        assumeTrue(browser.isPresent(), "no browser on this machine; on how many sheets a card is printed is not told");
        Path html = here.resolve("card.html");
        Files.writeString(
                html, page(procedure).replace("@page { margin: 11mm", "@page { size: " + paper + "; margin: 11mm"));

        assertThat(sheets(browser.get(), html)).isBetween(1L, (long) most);
    }

    private long sheets(File browser, Path html) throws IOException {
        Path pdf = here.resolve("card.pdf");
        Process printing = new ProcessBuilder(
                        browser.toString(),
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-sync",
                        "--user-data-dir=" + here.resolve("profile").toAbsolutePath(),
                        "--no-pdf-header-footer",
                        "--print-to-pdf=" + pdf.toAbsolutePath(),
                        html.toUri().toString())
                .redirectErrorStream(true)
                .start();
        printing.getInputStream().readAllBytes();
        String printed = new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1);
        return SHEET_OF_PDF.matcher(printed).results().count();
    }

    private static Optional<File> browser() {
        String path = Objects.requireNonNullElse(System.getenv("PATH"), "");
        return Arrays.stream(path.split(File.pathSeparator, -1))
                .map(folder -> new File(folder, "chromium"))
                .filter(File::canExecute)
                .findFirst();
    }
}
