package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.inspection.record.Act;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Journal;
import io.github.leafproof.inspection.record.JournalHead;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.SheetFile;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where a session is kept: its journal, and the file that its sheet is written to. */
final class OnDisk implements AutoCloseable {

    private final Path file;
    private final Journal journal;
    /** The digests of the sheets that this session has written. */
    private final Set<String> written = new HashSet<>();

    private OnDisk(Path file, Journal journal) {
        this.file = file;
        this.journal = journal;
        journal.acts().forEach(this::note);
    }

    /** How problems and reports call a sheet. */
    static String name(Path file) {
        return file.toString().replace(File.separatorChar, '/');
    }

    static Read<OnDisk> begin(Path file, Basis basis, JobSheet sheet) {
        if (isThere(file)) {
            return SessionProblems.refused(SessionProblems.sheetInTheWay(
                    name(file),
                    "a file of this name is there already",
                    "name another; no sheet is begun over an old one"));
        }
        return Journal.begin(file, head(basis, sheet)).map(journal -> new OnDisk(file, journal));
    }

    private static boolean isThere(Path file) {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    }

    private static JournalHead head(Basis basis, JobSheet sheet) {
        CheckGraph.Identity procedure = basis.graph().identity();
        return new JournalHead(
                sheet,
                new Report.Input(procedure.name(), procedure.sha256()),
                parts(procedure),
                Report.Input.of(basis.card()),
                Report.Input.of(basis.tray()));
    }

    private static List<Report.Input> parts(CheckGraph.Identity procedure) {
        return procedure.parts().stream()
                .map(part -> new Report.Input(part.name(), part.sha256()))
                .toList();
    }

    /** What was kept of a session that was begun, unless it was begun with other files. */
    static Read<OnDisk> open(Path file, Basis basis) {
        Read<Journal> journal = Journal.open(file);
        if (journal.value().isEmpty()) {
            return journal.map(opened -> new OnDisk(file, opened));
        }
        List<Problem> others =
                otherFiles(name(Journal.beside(file)), journal.orElseThrow().head(), basis);
        if (!others.isEmpty()) {
            journal.orElseThrow().close();
            return new Read.Refused<>(others);
        }
        return journal.map(opened -> new OnDisk(file, opened));
    }

    private static List<Problem> otherFiles(String journal, JournalHead head, Basis basis) {
        CheckGraph.Identity procedure = basis.graph().identity();
        List<Problem> others = new ArrayList<>();
        if (!head.procedure().sha256().equals(procedure.sha256())) {
            others.add(SessionProblems.otherFile(journal, "procedure", head.procedure()));
        }
        if (!head.parts().equals(parts(procedure))) {
            head.parts().stream()
                    .filter(part -> !parts(procedure).contains(part))
                    .forEach(part -> others.add(SessionProblems.otherFile(journal, "procedure's part", part)));
            if (others.isEmpty()) {
                others.add(SessionProblems.otherFile(journal, "list of the procedure's parts", head.procedure()));
            }
        }
        if (!head.card().sha256().equals(basis.card().sha256())) {
            others.add(SessionProblems.otherFile(journal, "engine card", head.card()));
        }
        if (!head.tray().sha256().equals(basis.tray().sha256())) {
            others.add(SessionProblems.otherFile(journal, "gauge tray", head.tray()));
        }
        return others;
    }

    /** The sheet before its first entry. */
    JobSheet emptySheet() {
        return journal.head().sheet();
    }

    /** The acts that were there when it was opened. */
    List<Act> acts() {
        return journal.acts();
    }

    /** Keeps an act; a problem where it is not on the disk. */
    Optional<Problem> keep(Act act) {
        Optional<Problem> problem = journal.append(act);
        if (problem.isEmpty()) {
            note(act);
        }
        return problem;
    }

    private void note(Act act) {
        if (act instanceof Act.Finished finished) {
            written.add(finished.sha256());
        }
    }

    /** Why a sheet may not be written: another is there. One that this session wrote may be replaced. */
    Optional<Problem> inTheWay(Document<JobSheet> sheet) {
        if (!isThere(file)) {
            return Optional.empty();
        }
        // Where the program ended between writing the sheet and saying so, what is there is what would be written.
        boolean isOurs = SheetFile.read(file)
                .value()
                .map(Document::sha256)
                .filter(digest -> written.contains(digest) || digest.equals(sheet.sha256()))
                .isPresent();
        return isOurs
                ? Optional.empty()
                : Optional.of(SessionProblems.sheetInTheWay(
                        name(file),
                        "the file is there, and is not as this session has written it",
                        "move it away, so that nothing in it is lost, and write the sheet again"));
    }

    /** Writes the sheet. */
    Optional<Problem> write(Document<JobSheet> sheet) {
        return inTheWay(sheet).or(() -> SheetFile.write(file, sheet.content()));
    }

    @Override
    public void close() {
        journal.close();
    }
}
