package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.report.Lines;
import io.github.leafproof.dsl.session.NextStep;
import io.github.leafproof.dsl.session.Place;
import io.github.leafproof.dsl.session.Remark;
import io.github.leafproof.dsl.session.Session;
import io.github.leafproof.dsl.session.Standing;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The steps of a session, one after the other: what is typed at a step, and what is said to it. */
final class Walk {

    private static final String REMARK = " // ";
    private static final String REASON = "why not> ";

    private final Session session;
    private final Surroundings around;
    private final Aside aside;
    private final StepText steps = new StepText();
    private Look look;
    private Heard.@Nullable Begun begun;
    private boolean awaitsReason;

    Walk(Session session, Surroundings around, Look look) {
        this.session = session;
        this.around = around;
        this.look = look;
        this.aside = new Aside(session);
    }

    void look(Look other) {
        look = other;
    }

    /** The step that is asked for, or that nothing is left. */
    Said step() {
        Standing standing = session.standing();
        Optional<NextStep> next = standing.next();
        if (next.isEmpty()) {
            return new Said(StepText.ending(standing, look), "finish> ");
        }
        String text = steps.of(standing, next.get(), Asked.of(next.get(), standing), look);
        return new Said(text, next.get().observation().name() + "> ");
    }

    /** What is said to a line. */
    Said hear(String typed) {
        String line = typed.strip();
        if (awaitsReason) {
            awaitsReason = false;
            return line.isEmpty() ? step() : cannot(line);
        }
        Heard.Begun before = begun;
        begun = null;
        if (before != null) {
            String rest = line.isEmpty() ? before.usual() : line;
            Optional<Asked> asked = asked();
            if (!rest.isEmpty()
                    && asked.isPresent()
                    && AnswerReading.read(asked.get(), before.begun() + " " + rest) instanceof Heard.Answer answer) {
                return entered(answer.given(), Remark.NONE);
            }
        }
        if (line.isEmpty()) {
            return nothing();
        }
        if (line.startsWith("=")) {
            return again(aside.reckon(line.substring(1), look));
        }
        String[] words = line.split("\\s+", 2);
        Optional<Command> command = isOption(line) ? Optional.empty() : Command.named(words[0]);
        return command.isPresent()
                ? obey(command.get(), words.length > 1 ? words[1].strip() : "")
                : answer(line, Remark.NONE);
    }

    /** An option that is spelled like a command is the answer. */
    private boolean isOption(String line) {
        return session.standing().next().isPresent()
                && session.standing().next().get().observation().type() instanceof Type.Choice choice
                && choice.options().contains(line);
    }

    private Optional<Asked> asked() {
        Standing standing = session.standing();
        return standing.next().map(step -> Asked.of(step, standing));
    }

    /** An empty line: the bench is as the step wants it, what one went back to stays as it is, or the work is done. */
    private Said nothing() {
        Optional<NextStep> next = session.standing().next();
        if (next.isEmpty()) {
            return finish();
        }
        if (next.get().reason() == NextStep.Reason.AGAIN) {
            session.onward();
        } else {
            next.get()
                    .setup()
                    .forEach(setup ->
                            session.bring(setup.state().name(), setup.change().to()));
        }
        return step();
    }

    private Said obey(Command command, String rest) {
        Standing standing = session.standing();
        String here = standing.next().map(step -> step.observation().name()).orElse("");
        return switch (command) {
            case HELP -> again(aside.help(look));
            case WHY -> again(new WhyText(standing, look).of(rest.isEmpty() ? here : rest));
            case LIST -> again(new WhyText(standing, look).list());
            case REPORT -> again(aside.report(look));
            case CANNOT -> here.isEmpty() ? nothingAsked() : cannotBecause(rest);
            case LATER -> here.isEmpty() ? nothingAsked() : moved(session.later(here));
            case SKIP -> here.isEmpty() ? nothingAsked() : moved(session.skip(here));
            case BACK -> {
                session.back();
                yield step();
            }
            case NEXT -> {
                session.onward();
                yield step();
            }
            case GO -> moved(session.goTo(rest));
            case CORRECT -> correct(rest);
            case UNDO -> undo(standing);
            case ADJUST -> adjust(rest);
            case FINISH -> finish();
            case STOP -> stop();
        };
    }

    private Said nothingAsked() {
        return unclear("nothing is asked any more", "an empty line finishes; back and go lead to what was entered");
    }

    private Said cannotBecause(String why) {
        if (why.isEmpty()) {
            awaitsReason = true;
            Lines lines = look.lines();
            lines.block(
                    "  ", "Why can it not be observed? It stands on the sheet; an empty line leaves it to be done.");
            return new Said(lines.toString(), REASON);
        }
        return cannot(why);
    }

    private Said cannot(String why) {
        String name = session.standing().next().orElseThrow().observation().name();
        return moved(session.cannot(name, why));
    }

    private Said answer(String line, Remark remark) {
        int at = line.lastIndexOf(REMARK);
        if (at > 0) {
            return answer(
                    line.substring(0, at).strip(),
                    Remark.of(line.substring(at + REMARK.length()).strip()));
        }
        Optional<Asked> asked = asked();
        if (asked.isEmpty()) {
            return nothingAsked();
        }
        Heard heard = AnswerReading.read(asked.get(), line);
        if (heard instanceof Heard.Unclear unclear) {
            return unclear(unclear.problem(), unclear.remedy());
        }
        if (heard instanceof Heard.Begun beginning) {
            begun = beginning;
            Lines lines = look.lines();
            lines.block("  ", beginning.question());
            return new Said(lines.toString(), beginning.begun() + " \u2026> ");
        }
        return entered(((Heard.Answer) heard).given(), remark);
    }

    private Said entered(Given given, Remark remark) {
        Node.Observation here = session.standing().next().orElseThrow().observation();
        boolean onceOnly = !(here.type() instanceof Type.Gap) && !(here.type() instanceof Type.Series);
        boolean corrects = onceOnly && session.standing().placeOf(here) == Place.DONE;
        return told(
                here.name(),
                corrects ? session.correct(here.name(), given, remark) : session.enter(here.name(), given, remark));
    }

    private Said correct(String rest) {
        Optional<NextStep> here = session.standing().next();
        if (here.isEmpty()
                || session.standing().entries(here.get().observation().name()).isEmpty()) {
            return unclear(
                    "nothing is entered here yet", "go back to what is to be corrected: back, or go and its name");
        }
        Heard heard = rest.isEmpty()
                ? new Heard.Unclear("correct stands alone", "write the right answer behind it")
                : AnswerReading.read(asked().orElseThrow(), rest);
        if (heard instanceof Heard.Answer answer) {
            String name = here.get().observation().name();
            return told(name, session.correct(name, answer.given()));
        }
        return heard instanceof Heard.Unclear unclear
                ? unclear(unclear.problem(), unclear.remedy())
                : unclear(((Heard.Begun) heard).question(), "write it behind the answer");
    }

    private Said adjust(String rest) {
        Adjusting adjusting = Adjusting.of(rest, session.standing());
        return adjusting.problem() != null
                ? unclear(adjusting.problem(), adjusting.remedy())
                : told(adjusting.observation(), session.adjust(adjusting.observation(), adjusting.turn()));
    }

    private Said undo(Standing before) {
        String what = before.last().map(GivenWords::of).orElse("");
        Read<Standing> done = session.undo();
        if (done.value().isEmpty()) {
            return refused(done);
        }
        Lines lines = look.lines();
        lines.block("  ", "Taken back: " + what + ".");
        return again(lines.toString());
    }

    private Said finish() {
        return session.finish()
                .value()
                .map(finished -> new Said(aside.handedOver(finished, around.handOver(finished), look), ""))
                .orElseGet(() -> again("  ? the sheet could not be finished\n"));
    }

    /** Leaves; everything entered is kept. */
    Said stop() {
        Lines lines = look.lines();
        lines.line("");
        lines.block("", StepText.progress(session.standing(), look));
        lines.block("", around.howToGoOn());
        return new Said(lines.toString(), "");
    }

    /** What an entry has come to, and the next step. */
    private Said told(String observation, Read<Standing> done) {
        if (done.value().isEmpty()) {
            return refused(done);
        }
        Standing standing = done.orElseThrow();
        boolean moreOfIt = standing.next()
                .filter(step -> step.leaf() != null && step.observation().name().equals(observation))
                .isPresent();
        String verdicts = VerdictText.of(
                standing.bearingOn(observation),
                standing.judgement().graph().observations().stream()
                        .map(Node.Observation::name)
                        .toList(),
                !moreOfIt,
                look);
        return again(warnings(done)
                + (verdicts.isEmpty() ? StepText.noted(standing, observation, look) : verdicts)
                + Adjusting.hint(observation, standing, look));
    }

    private Said moved(Read<Standing> done) {
        return done.value().isEmpty() ? refused(done) : again(warnings(done));
    }

    private String warnings(Read<Standing> done) {
        Lines lines = look.lines();
        done.problems().forEach(problem -> lines.block("  note: ", Look.sentence(problem.message())));
        return done.problems().isEmpty() ? "" : lines.toString();
    }

    private Said refused(Read<Standing> refused) {
        Problem first = refused.problems().get(0);
        return unclear(first.message(), first.help() == null ? "" : first.help());
    }

    /** Says why a line did not do, and asks the same again without repeating the whole step. */
    private Said unclear(String problem, String remedy) {
        return new Said(look.unclear(problem, remedy), prompt());
    }

    List<String> completions(String line) {
        return Completing.of(session.standing(), asked().orElse(null), line);
    }

    private String prompt() {
        return session.standing().next().map(step -> step.observation().name()).orElse("finish") + "> ";
    }

    /** Something said aside or before, and the step behind it. */
    private Said again(String before) {
        Said step = step();
        return new Said(before + step.text(), step.prompt());
    }
}
