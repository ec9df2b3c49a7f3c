package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.graph.BenchState;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.record.Act;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Journal;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An inspection at the bench, from the first step to the sheet that is handed over. It says what to do next, takes what is
 * entered, and judges as it goes: only what hangs on the new entry is judged again.
 *
 * <p>An act that makes no sense, or cannot be written to the journal, is refused in words, and nothing has happened. What is
 * done stands, and is on disk, as soon as the method returns.
 *
 * <p>A session may be used from several threads: each act is done whole before the next begins. What it hands out never
 * changes.
 */
public final class Session implements AutoCloseable {

    private Standing standing;
    private final @Nullable OnDisk disk;
    private boolean isClosed;

    private Session(Standing standing, @Nullable OnDisk disk) {
        this.standing = standing;
        this.disk = disk;
    }

    /**
     * Begins a session that is kept in memory alone: for trying things out, and for programs that keep sheets themselves.
     *
     * @return the session, or everything in heading, card and tray that does not go together with the procedure
     */
    public static Read<Session> inMemory(Basis basis, Heading heading, Inspector inspector) {
        JobSheet sheet = heading.emptySheet(basis.graph().identity());
        return Standing.of(basis, inspector, heading.sheet(), sheet, List.of())
                .map(standing -> new Session(standing, null));
    }

    /**
     * Begins a session whose every act is on disk, in the {@link Journal} beside the sheet, before it counts.
     *
     * @param sheet the file that the sheet is to be written to; it must not be there yet
     * @return the session; or everything in heading, card and tray that does not go together with the procedure; or why there
     *     can be no such session: a sheet or a journal of this name is there, or nothing can be written
     */
    public static Read<Session> begin(Basis basis, Heading heading, Inspector inspector, Path sheet) {
        JobSheet empty = heading.emptySheet(basis.graph().identity());
        Read<Standing> standing = Standing.of(basis, inspector, OnDisk.name(sheet), empty, List.of());
        if (standing.value().isEmpty()) {
            return new Read.Refused<>(standing.problems());
        }
        Read<OnDisk> disk = OnDisk.begin(sheet, basis, empty);
        return disk.value()
                .map(kept -> opened(standing, kept, List.of()))
                .orElseGet(() -> new Read.Refused<>(disk.problems()));
    }

    /** Whether a session was begun with this sheet: then it is to be {@link #resume resumed}. */
    public static boolean isBegun(Path sheet) {
        return Journal.isBegun(sheet);
    }

    /**
     * Goes on with a session that was begun, wherever it ended, and even where its program was cut off in the middle of a
     * line: every act that was acknowledged is there.
     *
     * @param sheet the file of the sheet, whether it was written meanwhile or not
     * @return the session, with a warning where a line that was never acknowledged was dropped; or why there is none: another
     *     goes on with this sheet, these are other files than it was begun with, or its journal is damaged
     */
    public static Read<Session> resume(Basis basis, Inspector inspector, Path sheet) {
        Read<OnDisk> opened = OnDisk.open(sheet, basis);
        if (opened.value().isEmpty()) {
            return new Read.Refused<>(opened.problems());
        }
        OnDisk disk = opened.orElseThrow();
        Read<Standing> standing = Standing.of(basis, inspector, OnDisk.name(sheet), disk.emptySheet(), disk.acts());
        Optional<Problem> inTheWay = standing.value().flatMap(found -> disk.inTheWay(found.sheet()));
        if (standing.value().isEmpty() || inTheWay.isPresent()) {
            disk.close();
            return inTheWay.<Read<Session>>map(SessionProblems::refused)
                    .orElseGet(() -> new Read.Refused<>(standing.problems()));
        }
        return opened(standing, disk, opened.problems());
    }

    /** The session once its journal says by whom it is held. */
    private static Read<Session> opened(Read<Standing> read, OnDisk disk, List<Problem> warnings) {
        Standing standing = read.orElseThrow();
        Act opening = new Act.Opened(
                ProcessHandle.current().pid(), standing.inspector().stamp());
        Optional<Problem> problem = disk.keep(opening);
        if (problem.isPresent()) {
            disk.close();
            return SessionProblems.refused(problem.get());
        }
        List<Problem> all = new ArrayList<>(warnings);
        all.addAll(read.problems());
        return new Read.Done<>(new Session(standing, disk), all);
    }

    /** How it stands now. */
    public synchronized Standing standing() {
        return standing;
    }

    /** Enters what was observed; see {@link #enter(String, Given, Remark)}. */
    public Read<Standing> enter(String observation, Given given) {
        return enter(observation, given, Remark.NONE);
    }

    /**
     * Enters what was observed, asked for or not. Trials of a gap and readings of a series are added to what was entered
     * before. Of anything else a second entry is refused, for it takes a {@link #correct correction}; unless the first said
     * that it could not be observed: then the sheet has the new one as its correction.
     */
    public synchronized Read<Standing> enter(String observation, Given given, Remark remark) {
        boolean couldNot = standing.isUnsaidBy(observation, given);
        return act(entered(observation, given, couldNot, remark));
    }

    /** Corrects a slip of the pen; see {@link #correct(String, Given, Remark)}. */
    public Read<Standing> correct(String observation, Given given) {
        return correct(observation, given, Remark.NONE);
    }

    /** Corrects a slip of the pen: the last entry of this observation no longer counts, and stays visible on the sheet. */
    public synchronized Read<Standing> correct(String observation, Given given, Remark remark) {
        return act(entered(observation, given, true, remark));
    }

    /** Enters that something could not be observed, and why. */
    public Read<Standing> cannot(String observation, String why) {
        return enter(observation, new Given.Cannot(why));
    }

    /** Enters that something was adjusted; see {@link #adjust(String, Quantity, Remark)}. */
    public Read<Standing> adjust(String observation, @Nullable Quantity turn) {
        return adjust(observation, turn, Remark.NONE);
    }

    /**
     * Enters that something was adjusted. What was observed of it before is as found; it is asked for again, as left.
     *
     * @param turn by how much an adjuster was turned, where that is known
     */
    public synchronized Read<Standing> adjust(String observation, @Nullable Quantity turn, Remark remark) {
        return act(entered(observation, new Given.Adjusted(turn), false, remark));
    }

    /** The entry as it would stand on a sheet; its place is known when the sheet is read back. */
    private Act entered(String observation, Given given, boolean corrects, Remark remark) {
        Act.Stamp stamp = standing.inspector().stamp();
        return new Act.Entered(new Entry(
                observation, given, corrects, stamp.by(), stamp.at(), remark.note(), remark.runningTime(), ""));
    }

    /**
     * Says that the bench was brought into a state, as a step asked for or otherwise. Whoever enters an observation without
     * saying so is taken to have brought the bench to where that observation needs it.
     *
     * @throws IllegalArgumentException if the procedure knows nothing of the bench in such a state
     */
    public synchronized Read<Standing> bring(String state, String to) {
        BenchState known = standing.basis().graph().states().stream()
                .filter(each -> each.name().equals(state))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the procedure has no state " + state));
        if (!known.knows(to)) {
            throw new IllegalArgumentException(state + " is never " + to);
        }
        return act(new Act.Brought(state, to, standing.inspector().stamp()));
    }

    /** Passes an observation over: it is not asked for again, and stays untested unless somebody enters it. */
    public synchronized Read<Standing> skip(String observation) {
        return known(observation) ? act(new Act.Skipped(observation, stamp())) : unknown(observation);
    }

    /** Puts an observation off: it is asked for again when nothing else is left. */
    public synchronized Read<Standing> later(String observation) {
        return known(observation) ? act(new Act.PutOff(observation, stamp())) : unknown(observation);
    }

    /**
     * Takes back the newest act that nobody took back yet, and so on, act by act. What was entered and taken back never gets
     * onto the sheet. What a finished sheet shows is not taken back any more, but corrected.
     */
    public synchronized Read<Standing> undo() {
        return standing.last().isPresent()
                ? act(new Act.TookBack(stamp()))
                : SessionProblems.nothingToTakeBack(standing.sheet().name());
    }

    /** Goes to an observation, whatever has become of it: it is the next step until it is entered, or one goes on. */
    public synchronized Read<Standing> goTo(String observation) {
        return known(observation) ? new Read.Done<>(moved(standing.at(observation)), List.of()) : unknown(observation);
    }

    /** Goes back to what was entered, passed over or put off before; again, to the one before that. */
    public synchronized Standing back() {
        return moved(standing.back());
    }

    /** Goes on with the best next step. */
    public synchronized Standing onward() {
        return moved(standing.at(null));
    }

    private Standing moved(Standing there) {
        standing = there;
        return there;
    }

    /**
     * Hands over the sheet as it stands, and writes its file, if there is one, in one piece. One can go on afterwards, and
     * finish again: the file is replaced as long as it is the one that this session wrote.
     */
    public synchronized Read<Finished> finish() {
        mustBeOpen();
        Finished finished = new Finished(standing.sheet(), standing.judgement());
        Optional<Problem> problem = disk == null ? Optional.empty() : disk.write(standing.sheet());
        return problem.<Read<Finished>>map(SessionProblems::refused)
                .orElseGet(() -> act(new Act.Finished(finished.sheet().sha256(), stamp()))
                        .map(done -> finished));
    }

    /** Ends the session, so that somebody can go on with the sheet. What was done is kept; a sheet is not written by it. */
    @Override
    public synchronized void close() {
        isClosed = true;
        if (disk != null) {
            disk.close();
        }
    }

    private Act.Stamp stamp() {
        return standing.inspector().stamp();
    }

    private boolean known(String observation) {
        return standing.basis().graph().node(observation).orElse(null) instanceof Node.Observation;
    }

    private Read<Standing> unknown(String observation) {
        return SessionProblems.noObservation(standing, observation);
    }

    private Read<Standing> act(Act act) {
        mustBeOpen();
        Read<Standing> next = standing.after(act);
        if (next.value().isEmpty()) {
            return next;
        }
        Optional<Problem> notKept = disk == null ? Optional.empty() : disk.keep(act);
        if (notKept.isPresent()) {
            return SessionProblems.refused(notKept.get());
        }
        moved(next.orElseThrow());
        return next;
    }

    private void mustBeOpen() {
        if (isClosed) {
            throw new IllegalStateException("the session was closed");
        }
    }
}
