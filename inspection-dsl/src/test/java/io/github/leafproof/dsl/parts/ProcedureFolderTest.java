package io.github.leafproof.dsl.parts;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.syntax.Part;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A procedure reads nothing outside of its folder, whatever its names and the links in the folder say. */
class ProcedureFolderTest {

    private static final String CHECK =
            "observe free : yes/no ask \"Free?\"\ncheck turns \"It turns\" { require free }\n";

    @TempDir
    private Path here = Path.of("");

    private Path shop = here;

    @BeforeEach
    void a_shop_has_a_folder_of_its_own() throws IOException {
        shop = Files.createDirectories(here.resolve("shop"));
    }

    private Path file(String name, String text) throws IOException {
        Path file = here.resolve(name);
        Files.createDirectories(file.resolveSibling(""));
        return Files.writeString(file, text);
    }

    private Path procedure(String used) throws IOException {
        return file("shop/lash.inspection", "procedure lash \"Lash\" revision 1\nuse \"" + used + "\"\n" + CHECK);
    }

    private static List<Code> codes(Compiled compiled) {
        return compiled.diagnostics().stream().map(Diagnostic::code).toList();
    }

    private String said(Compiled compiled) {
        return DiagnosticPrinter.print(compiled.diagnostics(), false).replace(here.toString(), "HERE");
    }

    @Test
    void files_are_used_from_the_procedures_folder_and_from_folders_in_it() throws IOException {
        file("shop/parts/leaves.inspection", "gauge leaves : leaf set\n");

        Procedure procedure =
                Procedure.read(procedure("parts/leaves.inspection")).orElseThrow();

        assertThat(procedure.parts()).extracting(Part::name).containsExactly("parts/leaves.inspection");
        assertThat(procedure.parts().get(0).source().name())
                .isEqualTo(shop.resolve("parts/leaves.inspection").toString());
    }

    @Test
    void another_root_may_be_named() throws IOException {
        file("common/leaves.inspection", "gauge leaves : leaf set\n");
        Path procedure = procedure("common/leaves.inspection");

        assertThat(codes(Procedure.read(procedure))).containsExactly(Code.LP160);
        assertThat(Procedure.read(procedure, here).orElseThrow().parts())
                .extracting(Part::name)
                .containsExactly("common/leaves.inspection");
    }

    @Test
    void a_root_that_is_not_there_is_said_to_be_none() throws IOException {
        Path procedure = procedure("leaves.inspection");

        assertThat(said(Procedure.read(procedure, here.resolve("attic")))).isEqualTo("""
                        HERE/attic: error LP101: there is no such folder
                           help: name the folder that the procedures and their parts are in
                        """);
        assertThat(codes(Procedure.read(procedure, procedure))).containsExactly(Code.LP101);
    }

    @Test
    void a_link_to_a_file_outside_is_not_followed() throws IOException {
        Path secret = file("secret.inspection", "gauge leaves : leaf set\n");
        Files.createSymbolicLink(shop.resolve("leaves.inspection"), secret);

        assertThat(said(Procedure.read(procedure("leaves.inspection")))).isEqualTo("""
                HERE/shop/lash.inspection:2:5: error LP162: leaves.inspection is a link that leads out of the procedures' folder
                    2 | use "leaves.inspection"
                      |     ^^^^^^^^^^^^^^^^^^^
                   help: put the file itself there, or name a folder with --root that holds both
                """);
        assertThat(codes(Procedure.read(procedure("leaves.inspection"), here))).containsExactly(Code.LP160);
    }

    @Test
    void a_link_to_a_folder_outside_is_not_followed() throws IOException {
        file("elsewhere/leaves.inspection", "gauge leaves : leaf set\n");
        Files.createSymbolicLink(shop.resolve("parts"), here.resolve("elsewhere"));

        assertThat(codes(Procedure.read(procedure("parts/leaves.inspection")))).containsExactly(Code.LP162);
    }

    @Test
    void a_link_within_the_folder_leads_to_one_and_the_same_file() throws IOException {
        Path leaves = file("shop/leaves.inspection", "gauge leaves : leaf set\n");
        Files.createSymbolicLink(shop.resolve("blades.inspection"), leaves);
        Path procedure = file(
                "shop/lash.inspection",
                "procedure lash \"Lash\" revision 1\nuse \"blades.inspection\"\nuse \"leaves.inspection\"\n" + CHECK);

        Compiled compiled = Procedure.read(procedure);

        assertThat(compiled.diagnostics()).isEmpty();
        assertThat(compiled.orElseThrow().parts()).extracting(Part::name).containsExactly("leaves.inspection");
    }

    @Test
    void a_file_that_uses_the_procedure_itself_is_a_circle_by_whatever_path_the_procedure_was_named()
            throws IOException {
        file("shop/leaves.inspection", "use \"lash.inspection\"\n");
        Path procedure = procedure("leaves.inspection");

        assertThat(codes(Procedure.read(procedure))).containsExactly(Code.LP163);
        assertThat(codes(Procedure.read(shop.resolve("../shop/lash.inspection"))))
                .containsExactly(Code.LP163);
    }

    @Test
    void a_procedure_that_lies_elsewhere_may_use_what_is_in_the_root() throws IOException {
        file("common/leaves.inspection", "gauge leaves : leaf set\n");

        assertThat(Procedure.read(procedure("leaves.inspection"), here.resolve("common"))
                        .diagnostics())
                .isEmpty();
    }

    @Test
    void a_used_file_that_yields_no_text_is_shown_with_the_place_that_uses_it() throws IOException {
        Files.createDirectories(shop.resolve("parts.inspection"));
        Files.createFile(shop.resolve("empty.inspection"));
        Files.write(shop.resolve("latin.inspection"), "// gr\u00FCn\n".getBytes(StandardCharsets.ISO_8859_1));
        Path procedure = file("shop/lash.inspection", """
                procedure lash "Lash" revision 1
                use "parts.inspection"
                use "latin.inspection"
                use "empty.inspection"
                """ + CHECK);

        assertThat(said(Procedure.read(procedure))).isEqualTo("""
                HERE/shop/parts.inspection: error LP102: this is a folder, not a file
                     in HERE/shop/lash.inspection:
                    2 | use "parts.inspection"
                      |     ------------------ used here
                   help: name the procedure's file in it
                HERE/shop/latin.inspection:1:6: error LP104: the file is not UTF-8: the byte FC cannot stand here
                    1 | // gr\uFFFDn
                      |      ^
                     in HERE/shop/lash.inspection:
                    3 | use "latin.inspection"
                      |     ------------------ used here
                   help: save it as UTF-8; most editors ask for the encoding when saving under a name
                HERE/shop/empty.inspection: error LP105: the file is empty
                     in HERE/shop/lash.inspection:
                    4 | use "empty.inspection"
                      |     ------------------ used here
                   help: write into it what the procedure uses of it, or take the use line out
                """);
    }

    @Test
    void the_file_that_was_probably_meant_is_looked_for_in_all_folders() throws IOException {
        file("shop/parts/valve gear/leaves.inspection", "gauge leaves : leaf set\n");

        assertThat(said(Procedure.read(procedure("leaves.inspection"))))
                .contains("help: did you mean \"parts/valve gear/leaves.inspection\"?");
    }
}
