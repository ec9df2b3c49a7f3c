package io.github.leafproof.dsl.seal;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.seal.Verification.Again;
import io.github.leafproof.dsl.seal.Verification.SealState;
import io.github.leafproof.dsl.seal.Verification.State;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.SealFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerificationTest {

    @TempDir
    private Path here = Path.of("");

    private SealedFolder sealed() {
        return SealedFolder.in(here);
    }

    private static void reseal(SealedFolder folder) {
        folder.write(
                SealedFolder.REPORT + ".seal", SealFile.toJson(Keys.signing().seal(folder.bytes(SealedFolder.REPORT))));
    }

    private static List<String> codes(Verification verification) {
        return verification.problems().stream().map(Problem::code).toList();
    }

    private static void replace(SealedFolder folder, String name, String written, String instead) {
        assertThat(folder.text(name)).contains(written);
        folder.write(name, folder.text(name).replace(written, instead));
    }

    @Test
    void a_report_in_inches_is_judged_again_in_inches() {
        assertThat(SealedFolder.in(here, UnitSystem.INCH).verify().again()).isEqualTo(Again.SAME);
    }

    @Test
    void who_names_no_key_learns_that_nothing_changed_and_not_whose_word_it_is() {
        SealedFolder folder = sealed();

        Verification verification = folder.verify(
                folder.bytes(SealedFolder.REPORT), Optional.of(folder.bytes(SealedFolder.REPORT + ".seal")), List.of());

        assertThat(verification.state()).isEqualTo(State.UNFINISHED);
        assertThat(verification.seal()).isEqualTo(SealState.HOLDS);
        assertThat(verification.key()).contains(Keys.verifying());
        assertThat(verification.problems()).isEmpty();
    }

    @Test
    void a_report_that_somebody_else_sealed_is_not_the_shops() {
        SealedFolder folder = sealed();

        Verification verification = folder.verify(
                folder.bytes(SealedFolder.REPORT),
                Optional.of(folder.bytes(SealedFolder.REPORT + ".seal")),
                List.of(SigningKey.generate().verifyingKey()));

        assertThat(verification.state()).isEqualTo(State.BROKEN);
        assertThat(codes(verification)).containsExactly("LP791");
        assertThat(verification.problems().get(0).message())
                .contains(Keys.verifying().fingerprint());
    }

    @Test
    void a_seal_that_names_a_strangers_key_under_the_shops_signature_was_changed() {
        SealedFolder folder = sealed();
        replace(
                folder,
                SealedFolder.REPORT + ".seal",
                Keys.verifying().base64(),
                SigningKey.generate().verifyingKey().base64());

        Verification verification = folder.verify();

        assertThat(verification.seal()).isEqualTo(SealState.SEAL_CHANGED);
        assertThat(verification.problems().get(0).message()).isEqualTo("this is not the key that made the signature");
    }

    @Test
    void a_report_without_a_seal_is_judged_again_all_the_same() {
        SealedFolder folder = sealed();

        Verification verification =
                folder.verify(folder.bytes(SealedFolder.REPORT), Optional.empty(), List.of(Keys.verifying()));

        assertThat(verification.state()).isEqualTo(State.UNFINISHED);
        assertThat(verification.again()).isEqualTo(Again.SAME);
        assertThat(codes(verification)).containsExactly("LP787");
    }

    @Test
    void a_file_that_is_gone_is_missed_and_the_rest_verified() throws IOException {
        SealedFolder folder = sealed();
        Files.delete(here.resolve("trays/one.json"));

        Verification verification = folder.verify();

        assertThat(verification.state()).isEqualTo(State.UNFINISHED);
        assertThat(codes(verification)).containsExactly("LP793");
        assertThat(verification.problems().get(0).message()).contains("gauge tray trays/one.json");
        assertThat(verification.again()).isEqualTo(Again.NOT_JUDGED);
    }

    @Test
    void a_file_that_was_put_elsewhere_under_another_name_is_known_by_its_bytes() throws IOException {
        SealedFolder folder = sealed();
        Files.createDirectories(here.resolve("kept/2026"));
        Files.move(here.resolve("trays/one.json"), here.resolve("kept/2026/tray of march.json"));
        Files.move(here.resolve("cold.inspection"), here.resolve("kept/cold as it was.inspection"));
        Files.move(here.resolve("parts"), here.resolve("kept/parts"));

        Verification verification = folder.verify();

        assertThat(verification.state()).isEqualTo(State.VERIFIED);
        assertThat(verification.again()).isEqualTo(Again.SAME);
    }

    @Test
    void the_procedure_went_on_since_and_the_revision_that_judged_was_kept() throws IOException {
        SealedFolder folder = sealed();
        Files.copy(here.resolve("cold.inspection"), here.resolve("cold-3.inspection"));
        replace(folder, "cold.inspection", "revision 3", "revision 4");

        Verification verification = folder.verify();

        assertThat(verification.state()).isEqualTo(State.VERIFIED);
    }

    @Test
    void a_file_that_stands_in_its_place_counts_whatever_copies_lie_around() {
        SealedFolder folder = sealed();
        folder.write("old/one.json", folder.bytes("trays/one.json"));
        replace(folder, "trays/one.json", "1 K", "2 K");

        assertThat(codes(folder.verify())).containsExactly("LP792");
    }

    @Test
    void a_report_that_decides_otherwise_than_its_files_is_told_though_the_shop_itself_sealed_it() {
        SealedFolder folder = sealed();
        replace(folder, SealedFolder.REPORT, "\"release\": \"ready\"", "\"release\": \"reject\"");
        reseal(folder);

        Verification verification = folder.verify();

        assertThat(verification.state()).isEqualTo(State.BROKEN);
        assertThat(verification.seal()).isEqualTo(SealState.HOLDS);
        assertThat(codes(verification)).containsExactly("LP794");
        assertThat(verification.problems().get(0).message())
                .endsWith("here stands \"release\": \"reject\"; they give \"release\": \"ready\"");
    }

    @Test
    void a_report_in_the_words_of_another_version_still_stands() {
        SealedFolder folder = sealed();
        replace(folder, SealedFolder.REPORT, "common practice", "the usual practice");
        reseal(folder);

        Verification verification = folder.verify();

        assertThat(verification.state()).isEqualTo(State.VERIFIED);
        assertThat(verification.again()).isEqualTo(Again.OTHER_WORDS);
        assertThat(codes(verification)).containsExactly("LP795");
    }

    @Test
    void a_changed_report_is_not_excused_by_files_that_are_gone() throws IOException {
        SealedFolder folder = sealed();
        replace(folder, SealedFolder.REPORT, "\"ready\"", "\"hold\"");
        Files.delete(here.resolve("cold.inspection"));

        Verification verification = folder.verify();

        assertThat(codes(verification)).startsWith("LP789");
        assertThat(verification.state()).isEqualTo(State.BROKEN);
        assertThat(verification.problems().get(0).message())
                .isEqualTo("this is not the report that was sealed, or the seal is that of another");
    }

    @Test
    void the_name_of_a_file_changed_in_the_report_is_found_out() {
        SealedFolder folder = sealed();
        replace(folder, SealedFolder.REPORT, "trays/one.json", "trays/own.json");

        Verification verification = folder.verify();

        assertThat(codes(verification)).containsExactly("LP789");
        assertThat(verification.problems().get(0).message())
                .endsWith("here stands \"name\": \"trays/own.json\"; sealed was \"name\": \"trays/one.json\"");
    }

    @Test
    void what_is_no_report_at_all_is_told_like_any_file() {
        SealedFolder folder = sealed();

        Verification verification = folder.verify(
                "{ \"format\": \"leafproof-report/9\" }".getBytes(StandardCharsets.UTF_8),
                folder.bytes(SealedFolder.REPORT + ".seal"));

        assertThat(codes(verification)).containsExactly("LP789", "LP661");
        assertThat(verification.files()).isEmpty();
    }
}
