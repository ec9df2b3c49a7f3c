package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Lesson;
import io.github.leafproof.dsl.session.Basis;
import io.github.leafproof.dsl.session.Heading;
import io.github.leafproof.dsl.session.Inspector;
import io.github.leafproof.dsl.session.Session;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.TrayFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.stream.Collectors;

/** The examples of the lessons that speak of sheets filled in at the bench, made for real on a copy of the bench. */
record BrokenSessions(Path here) {

    private static final Heading HEADING = Heading.of("0412", LocalDate.of(2026, 3, 4));
    private static final Inspector MK =
            Inspector.named("mk").byClock(Clock.fixed(Instant.parse("2026-03-04T10:12:00Z"), ZoneOffset.UTC));
    private static final String SHEET = "sheets/0413.json";
    private static final int TORN_OFF = 40;

    /** What is said in the situation that a lesson tells in words. */
    String situation(Lesson lesson) throws IOException {
        return switch (lesson.code()) {
            case "LP760" -> {
                Session first = begun("sheets/0412.json").orElseThrow();
                String said = said(resumed("sheets/0412.json"));
                first.close();
                yield said.replace("process " + ProcessHandle.current().pid(), "process 4711");
            }
            case "LP761" -> said(begun("sheets/0411-clean.json"));
            case "LP762" -> {
                begun(SHEET).orElseThrow().close();
                yield said(begun(SHEET));
            }
            case "LP763" -> said(resumed(SHEET));
            case "LP764" -> {
                begunWithHead();
                Files.writeString(journal(), Files.readString(journal()).replace("41 °C", "21 °C"));
                yield said(resumed(SHEET));
            }
            case "LP765" -> {
                begun(SHEET).orElseThrow().close();
                yield said(Session.resume(basis("cards/quillan-10.json"), MK, here.resolve(SHEET)));
            }
            case "LP766" -> {
                begunWithHead();
                byte[] whole = Files.readAllBytes(journal());
                Files.write(journal(), Arrays.copyOf(whole, whole.length - TORN_OFF));
                Read<Session> session = resumed(SHEET);
                session.orElseThrow().close();
                yield said(session);
            }
            case "LP767" -> said(begun("sheets/today/0413.json"));
            case "LP768" ->
                said(Session.inMemory(basis("cards/quillan-15.json"), HEADING, MK)
                        .orElseThrow()
                        .undo());
            case "LP769" -> {
                Files.writeString(journal(), "{\"format\":\"leafproof-journal/9\"}\n");
                yield said(resumed(SHEET));
            }
            default -> throw new IllegalArgumentException("nobody has made this situation: " + lesson.code());
        };
    }

    private Path journal() {
        return here.resolve(SHEET + ".journal");
    }

    private Read<Session> begun(String sheet) {
        return Session.begin(basis("cards/quillan-15.json"), HEADING, MK, here.resolve(sheet));
    }

    private Read<Session> resumed(String sheet) {
        return Session.resume(basis("cards/quillan-15.json"), MK, here.resolve(sheet));
    }

    private void begunWithHead() {
        try (Session session = begun(SHEET).orElseThrow()) {
            session.enter("head", new Given.Words("41 °C")).orElseThrow();
        }
    }

    private Basis basis(String card) {
        return new Basis(
                Procedure.read(here.resolve("first_look.inspection")).orElseThrow(),
                CardFile.read(here.resolve(card)).orElseThrow(),
                TrayFile.read(here.resolve("trays/bench-one.json")).orElseThrow());
    }

    private String said(Read<?> read) {
        return read.problems().stream()
                .map(problem -> problem + "\n")
                .collect(Collectors.joining())
                .replace(here + "/", "");
    }
}
