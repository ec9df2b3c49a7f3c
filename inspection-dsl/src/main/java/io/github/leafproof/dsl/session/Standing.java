package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.StepOrder;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.record.Act;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.OpenSheet;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.SheetFile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How an inspection stands at one moment: what was done, what it came to, what is next. It never changes, so that any
 * number of threads may look at it; the next act makes another one.
 *
 * <p>What it says of the sheet is what the sheet's file would be read back as, word for word: nothing is entered that could
 * not be written and read again.
 */
public final class Standing {

    private final Basis basis;
    private final Inspector inspector;
    private final Course course;
    private final Judgement judgement;
    /** What somebody went back to; null where the best next step is asked for. */
    private final @Nullable String focus;

    private volatile @Nullable Ahead ahead;

    private Standing(Basis basis, Inspector inspector, Course course, Judgement judgement, @Nullable String focus) {
        this.basis = basis;
        this.inspector = inspector;
        this.course = course;
        this.judgement = judgement;
        this.focus = focus;
    }

    /**
     * How it stands after these acts.
     *
     * @param name what problems and reports call the sheet
     * @param heading the sheet without its entries
     */
    static Read<Standing> of(Basis basis, Inspector inspector, String name, JobSheet heading, List<Act> acts) {
        Course course = Course.of(acts);
        Read<OpenSheet> sheet = filledIn(name, heading, course.entries());
        return sheet.value()
                .map(whole -> basis.procedure()
                        .judgement(basis.card(), basis.tray(), whole.document(), inspector.units())
                        .map(judgement -> new Standing(basis, inspector, course, judgement, null)))
                .orElseGet(() -> new Read.Refused<>(sheet.problems()));
    }

    private static Read<OpenSheet> filledIn(String name, JobSheet heading, List<Entry> entries) {
        Read<OpenSheet> sheet = SheetFile.parse(name, SheetFile.toJson(heading).getBytes(StandardCharsets.UTF_8))
                .map(OpenSheet::of);
        for (Entry entry : entries) {
            if (sheet.value().isPresent()) {
                sheet = sheet.orElseThrow().with(entry);
            }
        }
        return sheet;
    }

    /** How it stands after one more act; only what hangs on its entry is judged anew. Refused, where it makes no sense. */
    Read<Standing> after(Act act) {
        OpenSheet sheet = judgement.evidence().sheet();
        if (act instanceof Act.Entered entered) {
            Read<OpenSheet> longer = sheet.with(entered.entry());
            return longer.value()
                    .map(with -> after(act, with, longer.problems()))
                    .orElseGet(() -> new Read.Refused<>(longer.problems()));
        }
        boolean takesBackEntry = act instanceof Act.TookBack
                && course.last().filter(Act.Entered.class::isInstance).isPresent();
        return takesBackEntry
                ? after(act, sheet.withoutLast(), List.of())
                : new Read.Done<>(with(act, judgement), List.of());
    }

    private Read<Standing> after(Act act, OpenSheet sheet, List<Problem> warnings) {
        Read<Judgement> judged = judgement.continuedWith(sheet);
        return judged.value()
                .<Read<Standing>>map(found -> new Read.Done<>(with(act, found), warnings))
                .orElseGet(() -> new Read.Refused<>(judged.problems()));
    }

    private Standing with(Act act, Judgement next) {
        return new Standing(basis, inspector, course.after(act), next, focusAfter(act));
    }

    /** Somebody who took something back is asked for it again, and who did what they went back to is done with it. */
    private @Nullable String focusAfter(Act act) {
        if (act instanceof Act.TookBack) {
            return course.last().map(Course::subject).orElse(focus);
        }
        return focus != null && !focus.equals(Course.subject(act)) ? focus : null;
    }

    /** The same with somebody at this observation. */
    Standing at(@Nullable String observation) {
        return new Standing(basis, inspector, course, judgement, observation);
    }

    /** The same with somebody one step further back; the same where there is none. */
    Standing back() {
        List<String> visited = course.visited();
        int at = focus == null ? visited.size() : visited.indexOf(focus);
        int before = at < 0 ? visited.size() - 1 : at - 1;
        return before < 0 ? this : at(visited.get(before));
    }

    public Basis basis() {
        return basis;
    }

    public Inspector inspector() {
        return inspector;
    }

    /** The sheet as it stands: what would be written now, and the digest that its file would have. */
    public Document<JobSheet> sheet() {
        return judgement.evidence().files().sheet();
    }

    /** The sheet without its entries. */
    public JobSheet heading() {
        return judgement.evidence().sheet().heading();
    }

    /** What it all comes to so far. */
    public Judgement judgement() {
        return judgement;
    }

    /** The report as it would be now; it takes second opinions on computed numbers, so that it is not for every keystroke. */
    public Report report() {
        return Reporting.of(judgement);
    }

    /** The acts that count, the oldest first; what was taken back is not among them. */
    public List<Act> acts() {
        return course.acts();
    }

    /** What {@link Session#undo()} would take back. */
    public Optional<Act> last() {
        return course.last();
    }

    /** What was entered for an observation, the oldest first. */
    public List<Entry> entries(String observation) {
        return basis
                .graph()
                .node(observation)
                .map(node -> node instanceof Node.Observation known
                        ? judgement.evidence().statements(known)
                        : null)
                .stream()
                .flatMap(List::stream)
                .map(Evidence.Statement::entry)
                .toList();
    }

    /** Whether an entry says, of what can be entered once only, what could not be observed before. */
    boolean isUnsaidBy(String observation, Given given) {
        return basis.graph().node(observation).orElse(null) instanceof Node.Observation known
                && !(known.type() instanceof Type.Gap || known.type() instanceof Type.Series)
                && !(given instanceof Given.Adjusted)
                && judgement.evidence().value(known) instanceof Value.Missing missing
                && missing.lacks().stream().anyMatch(lack -> lack.kind() == Value.Lack.Kind.CANNOT);
    }

    /**
     * How a state of the bench stands now.
     *
     * @throws IllegalArgumentException if the procedure has no state of this name
     */
    public String bench(String state) {
        String stands = course.bench(basis.graph()).get(state);
        if (stands == null) {
            throw new IllegalArgumentException("the procedure has no state " + state);
        }
        return stands;
    }

    /**
     * The verdicts that an observation bears on, as a report has them, where there is something to say: not those that are
     * untested or blocked still, or do not apply.
     *
     * @throws IllegalArgumentException if the procedure has no observation of this name
     */
    public List<Report.Check> bearingOn(String observation) {
        return basis.graph().ties().checks(named(observation)).stream()
                .filter(check -> isJudged(judgement.verdicts().get(check.number())))
                .map(check -> Reporting.of(judgement, check))
                .toList();
    }

    private static boolean isJudged(Verdict verdict) {
        return switch (verdict.outcome()) {
            case PASSES, TOLERATED, FAILS, OPEN, CONTRADICTED -> true;
            case UNTESTED, BLOCKED, NOT_APPLICABLE -> false;
        };
    }

    private Node.Observation named(String observation) {
        return basis.graph()
                .node(observation)
                .map(node -> node instanceof Node.Observation found ? found : null)
                .orElseThrow(
                        () -> new IllegalArgumentException("the procedure observes nothing called " + observation));
    }

    /** What has become of an observation. */
    public Place placeOf(Node.Observation observation) {
        return looked().agenda().place(observation);
    }

    /** How far it has come. */
    public Progress progress() {
        return Progress.of(looked().agenda().places(), looked().order().changes());
    }

    /**
     * All that is still to be asked for, in the order in which it will be, with the changes of the bench between. Where
     * somebody went back to something, that comes before all of it.
     */
    public StepOrder ahead() {
        return looked().order();
    }

    /**
     * The next thing to do: what somebody went back to, or else the first of {@link #ahead()}. Empty where nothing is left to
     * ask for; what was passed over or has to wait is in {@link #progress()}.
     */
    public Optional<NextStep> next() {
        Optional<Node.Observation> next = focus != null
                ? Optional.of(named(focus))
                : ahead().observations().stream().findFirst();
        return next.map(observation -> Stepping.to(this, observation));
    }

    Map<String, String> bench() {
        return course.bench(basis.graph());
    }

    /** Worked out when it is first asked for: whoever reads in a whole journal does without. */
    private Ahead looked() {
        Ahead known = ahead;
        if (known == null) {
            known = Ahead.of(judgement, course);
            ahead = known;
        }
        return known;
    }
}
