package io.github.leafproof.dsl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.source.SourceText;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProcedureSourceTest {

    private static final String PART = """
            observe free : yes/no ask "Does it turn?"
            """;

    private static final String OWN = """
            procedure turns "It turns" revision 3
            use "parts/free.inspection"
            check turns "It turns freely" { require free }
            """;

    private static Procedure procedure() {
        return Procedure.compile(
                        SourceText.of("turns.inspection", OWN), Shelf.of(Map.of("parts/free.inspection", PART)))
                .orElseThrow();
    }

    private static ProcedureSource sent(ProcedureSource source) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(source);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (ProcedureSource) in.readObject();
        }
    }

    @Test
    void a_procedure_that_was_sent_is_the_same_to_the_digests_of_its_files() throws Exception {
        Procedure before = procedure();

        Procedure after = sent(ProcedureSource.of(before)).procedure();

        assertThat(after.graph().identity()).isEqualTo(before.graph().identity());
        assertThat(after.source().text()).isEqualTo(OWN);
        assertThat(after.parts())
                .extracting(part -> part.source().sha256())
                .isEqualTo(before.parts().stream()
                        .map(part -> part.source().sha256())
                        .toList());
    }

    @Test
    void it_is_compiled_once_however_often_it_arrives() throws Exception {
        ProcedureSource source = ProcedureSource.of(procedure());
        Procedure first = sent(source).procedure();

        assertThat(IntStream.range(0, 50).parallel().mapToObj(i -> source.procedure()))
                .allMatch(each -> each == first);
        assertThat(sent(source).procedure()).isSameAs(first);
    }

    @Test
    void a_file_with_a_byte_order_mark_keeps_its_digest(@TempDir Path here) throws Exception {
        Path file = Files.writeString(
                here.resolve("turns.inspection"), "\uFEFF" + OWN.replace("use \"parts/free.inspection\"\n", PART));
        Procedure read = Procedure.read(file).orElseThrow();

        Procedure after = sent(ProcedureSource.of(read)).procedure();

        assertThat(after.source().sha256()).isEqualTo(read.source().sha256());
        assertThat(after.source().text()).isEqualTo(read.source().text());
    }

    @Test
    void a_text_that_was_changed_on_the_way_is_not_taken_for_the_procedure() {
        ProcedureSource source = ProcedureSource.of(procedure());
        ProcedureSource.File own = source.own();
        ProcedureSource changed = new ProcedureSource(
                new ProcedureSource.File(own.name(), own.shown(), own.text().replace("free", "fere"), own.sha256()),
                source.parts());

        assertThatThrownBy(changed::procedure)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("turns.inspection is not the text that its digest was taken of");
    }

    @Test
    void a_procedure_whose_part_did_not_arrive_is_refused_with_its_mistakes() {
        ProcedureSource alone =
                new ProcedureSource(ProcedureSource.of(procedure()).own(), List.of());

        assertThatThrownBy(alone::procedure)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("LP160");
    }
}
