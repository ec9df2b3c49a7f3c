package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Lesson;
import io.github.leafproof.dsl.session.Basis;
import io.github.leafproof.dsl.session.Heading;
import io.github.leafproof.dsl.session.Inspector;
import io.github.leafproof.dsl.session.Session;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.TrayFile;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** The examples of the lessons that speak of sheets filled in at the bench, made for real on a copy of the bench. */
record BrokenSessions(Path here) {

    private static final Heading HEADING = Heading.of("0412", LocalDate.of(2026, 3, 4));
    private static final Inspector MK = Inspector.named("mk");

    /** What is said in the situation that a lesson tells in words. */
    String situation(Lesson lesson) {
        return switch (lesson.code()) {
            case "LP768" ->
                said(Session.inMemory(basis(), HEADING, MK).orElseThrow().undo().problems());
            default -> throw new IllegalArgumentException("nobody has made this situation: " + lesson.code());
        };
    }

    private Basis basis() {
        return new Basis(
                Procedure.read(here.resolve("first_look.inspection")).orElseThrow(),
                CardFile.read(here.resolve("cards/quillan-15.json")).orElseThrow(),
                TrayFile.read(here.resolve("trays/bench-one.json")).orElseThrow());
    }

    private String said(List<Problem> problems) {
        return problems.stream()
                .map(problem -> problem + "\n")
                .collect(Collectors.joining())
                .replace(here + "/", "");
    }
}
