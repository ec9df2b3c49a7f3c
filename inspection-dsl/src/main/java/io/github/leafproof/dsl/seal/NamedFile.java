package io.github.leafproof.dsl.seal;

import io.github.leafproof.inspection.record.Report;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A file that a report rests on, as the report names it.
 *
 * @param role what it is to the report
 * @param name how it was named when the engine was judged; of a procedure its own name, for no report says where that lay
 * @param sha256 the digest of its bytes then
 */
public record NamedFile(Role role, String name, String sha256) {

    /** What a file is to a report. */
    public enum Role {
        PROCEDURE("procedure"),
        PART("part"),
        SHEET("job sheet"),
        CARD("engine card"),
        TRAY("gauge tray");

        private final String word;

        Role(String word) {
            this.word = word;
        }

        /** As people say it. */
        public String word() {
            return word;
        }
    }

    /** All files that a report names by their digests. */
    static List<NamedFile> of(Report report) {
        List<NamedFile> files = new ArrayList<>();
        Report.Procedure procedure = report.procedure();
        files.add(new NamedFile(Role.PROCEDURE, procedure.name(), procedure.sha256()));
        procedure.parts().forEach(part -> files.add(new NamedFile(Role.PART, part.name(), part.sha256())));
        files.add(
                new NamedFile(Role.SHEET, report.sheet().name(), report.sheet().sha256()));
        ofInput(Role.CARD, report.card()).ifPresent(files::add);
        ofInput(Role.TRAY, report.tray()).ifPresent(files::add);
        return files;
    }

    private static Optional<NamedFile> ofInput(Role role, Report.@Nullable Input input) {
        return Optional.ofNullable(input).map(named -> new NamedFile(role, named.name(), named.sha256()));
    }

    /** As messages call it: {@code job sheet sheets/0412.json}. */
    @Override
    public String toString() {
        return role.word() + " " + name;
    }
}
