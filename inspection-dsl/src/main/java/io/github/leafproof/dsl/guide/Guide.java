package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.report.Lines;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.dsl.session.Session;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Leads through an inspection in talk: each line that is typed gets its answer, and the next question. The same lines get
 * the same answers, whoever shows them; times alone come from the session's clock.
 *
 * <p>Belongs to one conversation and is not for sharing between threads.
 */
public final class Guide {

    private final Surroundings around;
    private Look look;
    private final @Nullable Opening opening;
    private @Nullable Walk walk;

    private Guide(Surroundings around, Look look, @Nullable Opening opening, @Nullable Session session) {
        this.around = around;
        this.look = look;
        this.opening = opening;
        this.walk = session == null ? null : new Walk(session, around, look);
    }

    /** Begins with an engine of which so much is known; the rest is asked for first. */
    public static Guide beginning(Opening opening, Surroundings around, Look look) {
        return new Guide(around, look, opening, null);
    }

    /** Goes on with a session that was begun before. */
    public static Guide resuming(Session session, Surroundings around, Look look) {
        return new Guide(around, look, null, session);
    }

    /** Takes note that the terminal has another width now. */
    public void look(Look other) {
        look = other;
        if (walk != null) {
            walk.look(other);
        }
    }

    /** The first words. */
    public Said greet() {
        Lines lines = look.lines();
        lines.block("", look.paint().strong(around.title()));
        lines.block("", Reporting.DEFERENCE);
        lines.block(
                "", "Type what is asked for; help shows what else can be said. Everything entered is kept at once.");
        if (walk != null) {
            lines.block("", "Going on where it was left.");
            return before(lines.toString(), walk.step());
        }
        if (Objects.requireNonNull(opening).asks().isPresent()) {
            lines.line("");
        }
        return before(lines.toString(), open());
    }

    /** What is said to a line. */
    public Said hear(String line) {
        if (walk != null) {
            return walk.hear(line);
        }
        Opening asking = Objects.requireNonNull(opening);
        Lines lines = look.lines();
        switch (line.strip().toLowerCase(Locale.ROOT)) {
            case "stop", "quit", "exit" -> {
                return leave();
            }
            case "back", "undo" -> {
                asking.back();
                return open();
            }
            case "help", "?" -> {
                lines.block("  ", "Answer, or leave the line empty; back asks the question before again, stop leaves.");
                return before(lines.toString(), open());
            }
            default -> {
                Optional<String> wrong = asking.answer(line);
                wrong.ifPresent(problem -> lines.block("  ? ", problem));
                return wrong.isPresent() ? before(lines.toString(), open()) : open();
            }
        }
    }

    /** Nobody types any more: leaves everything safe, and says how to go on. */
    public Said leave() {
        if (walk != null) {
            return walk.stop();
        }
        Lines lines = look.lines();
        lines.line("");
        lines.block("", "Nothing was begun yet, and nothing is written.");
        return new Said(lines.toString(), "");
    }

    /** Whole lines that what was typed so far may become, for an editor that completes them. */
    public List<String> completions(String begun) {
        return walk == null ? Completing.opening(opening, begun) : walk.completions(begun);
    }

    private Said open() {
        Opening asking = Objects.requireNonNull(opening);
        Optional<Opening.Detail> detail = asking.asks();
        if (detail.isPresent()) {
            Lines lines = look.lines();
            lines.block("", asking.question(detail.get()));
            return new Said(lines.toString(), detail.get().word() + "> ");
        }
        Read<Session> begun = around.begin(asking.heading(), asking.by());
        if (begun.value().isEmpty()) {
            StringBuilder why = new StringBuilder();
            for (Problem problem : begun.problems()) {
                why.append(problem).append('\n');
            }
            return new Said(why.toString(), "");
        }
        walk = new Walk(begun.orElseThrow(), around, look);
        return walk.step();
    }

    private static Said before(String text, Said said) {
        return new Said(text + said.text(), said.prompt());
    }
}
