package io.github.leafproof.dsl.seal;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.seal.Verification.Again;
import io.github.leafproof.dsl.seal.Verification.SealState;
import io.github.leafproof.dsl.seal.Verification.State;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.RawFile;
import io.github.leafproof.inspection.record.ReportFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.ByteRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** One byte that is not what it was, in a report, in its seal, or in any file that the report rests on. */
class OneByteLawsTest {

    private static final SealedFolder SEALED = sealed();
    private static final byte[] REPORT = SEALED.bytes(SealedFolder.REPORT);
    private static final byte[] SEAL = SEALED.bytes(SealedFolder.REPORT + ".seal");

    private static SealedFolder sealed() {
        try {
            return SealedFolder.in(Files.createTempDirectory(java.nio.file.Path.of("target"), "sealed"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static byte[] changed(byte[] bytes, int at, int by) {
        byte[] changed = bytes.clone();
        changed[at] = (byte) (changed[at] + by);
        return changed;
    }

    @Test
    void nothing_is_wrong_where_nothing_was_changed() {
        Verification verification = SEALED.verify();

        assertThat(verification.problems()).isEmpty();
        assertThat(verification.state()).isEqualTo(State.VERIFIED);
        assertThat(verification.again()).isEqualTo(Again.SAME);
        assertThat(verification.files()).hasSize(SealedFolder.INPUTS.size());
    }

    @Test
    void every_byte_of_a_report_is_sealed() {
        for (int at = 0; at < REPORT.length; at++) {
            for (int by : new int[] {1, 0x20, 0x80}) {
                SealCheck check = SealCheck.of(
                        RawFile.of("report.json", changed(REPORT, at, by)), RawFile.of("seal", SEAL), List.of());
                assertThat(check.state()).as("byte %s", at).isEqualTo(SealState.REPORT_CHANGED);
            }
        }
    }

    @Test
    void every_byte_of_a_seal_belongs_there_and_its_change_is_never_laid_on_the_report() {
        for (int at = 0; at < SEAL.length; at++) {
            for (int by = 1; by < 256; by += 5) {
                SealCheck check = SealCheck.of(
                        RawFile.of("report.json", REPORT), RawFile.of("seal", changed(SEAL, at, by)), List.of());
                assertThat(check.state()).as("byte %s", at).isEqualTo(SealState.SEAL_CHANGED);
                assertThat(check.problems()).extracting(Problem::file).containsOnly("seal");
            }
        }
    }

    @Property(tries = 200, seed = "1")
    void a_changed_byte_of_a_report_is_noticed_and_its_line_named(
            @ForAll @IntRange(min = 0, max = 1_000_000) int where, @ForAll @ByteRange(min = 1) byte by) {
        int at = where % REPORT.length;
        byte[] report = changed(REPORT, at, by);

        Verification verification = SEALED.verify(report, SEAL);

        assertThat(verification.state()).isEqualTo(State.BROKEN);
        assertThat(verification.seal()).isEqualTo(SealState.REPORT_CHANGED);
        Problem told = verification.problems().get(0);
        assertThat(told.code()).isEqualTo("LP789");
        assertThat(told.file()).isEqualTo(SealedFolder.REPORT);
        long line = new String(REPORT, 0, at, StandardCharsets.UTF_8)
                        .chars()
                        .filter(c -> c == '\n')
                        .count()
                + 1;
        if (ReportFile.parse("", report).value().isPresent()) {
            assertThat(told.message()).startsWith("the report was changed after it was sealed: here stands ");
            assertThat(told.place()).startsWith(line + ":");
            // The files are those that were sealed, whatever the changed report says of them.
            assertThat(verification.files()).extracting(FoundFile::state).containsOnly(FoundFile.State.UNCHANGED);
        } else {
            // No report any more: then it is told where it stops being one, as of any file.
            assertThat(verification.problems()).hasSizeGreaterThan(1);
            assertThat(verification.problems().get(1).file()).isEqualTo(SealedFolder.REPORT);
        }
    }

    @Property(tries = 200, seed = "1")
    void a_changed_byte_of_a_file_is_noticed_and_the_file_named_and_no_other(
            @ForAll @IntRange(min = 0, max = 1_000_000) int where, @ForAll @ByteRange(min = 1) byte by) {
        List<String> names = List.copyOf(new TreeSet<>(SealedFolder.INPUTS.keySet()));
        String name = names.get(where % names.size());
        byte[] bytes = SEALED.bytes(name);
        try {
            SEALED.write(name, changed(bytes, where / names.size() % bytes.length, by));

            Verification verification = SEALED.verify();

            assertThat(verification.state()).isEqualTo(State.BROKEN);
            assertThat(verification.seal()).isEqualTo(SealState.HOLDS);
            assertThat(verification.problems()).hasSize(1);
            assertThat(verification.problems().get(0).code()).isEqualTo("LP792");
            assertThat(verification.problems().get(0).file()).endsWith(name);
        } finally {
            SEALED.write(name, bytes);
        }
    }
}
