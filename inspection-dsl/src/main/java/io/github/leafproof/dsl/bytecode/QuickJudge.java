package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * Judges engine after engine by one procedure, and says what each check came to and how the engine is released; nothing else.
 * Whoever wants to know why asks the {@link io.github.leafproof.dsl.graph.Judge judge}, who comes to the same.
 *
 * <p>The first {@value #HOT} engines are judged by the interpreter. Then the procedure is compiled to bytecode, and from there
 * on judging allocates nothing. It may be shared between threads; each has {@link #blank() outcomes} of its own.
 */
public final class QuickJudge {

    /**
     * Compiling the first procedure of a program takes some 100 ms, as much as interpreting about so many engines (docs/graph.md).
     * Who compiles only once as much was spent on interpreting never spends more than twice of what would have been best.
     */
    static final int HOT = 256;

    private final CheckGraph graph;
    private final Layout layout;
    private final AtomicInteger judged = new AtomicInteger();
    private volatile @Nullable Compilation compiled;

    private QuickJudge(CheckGraph graph) {
        this.graph = graph;
        this.layout = Layout.of(graph);
    }

    /** A judge by this procedure. */
    public static QuickJudge of(CheckGraph graph) {
        return new QuickJudge(graph);
    }

    /** A judge by this procedure, which is compiled at once: for who knows that very many engines will be judged. */
    public static QuickJudge compiled(CheckGraph graph) {
        QuickJudge judge = new QuickJudge(graph);
        judge.compile();
        return judge;
    }

    /** The procedure. */
    public CheckGraph graph() {
        return graph;
    }

    /** What is known of an engine, made ready to be judged. */
    public Figures figures(Evidence evidence) {
        return Figures.of(evidence, layout);
    }

    /** Something to put outcomes in. */
    public Outcomes blank() {
        return new Outcomes(graph, layout);
    }

    /**
     * Judges an engine as it was left.
     *
     * @param figures what is known of it, read for this judge's graph
     * @param into where the outcomes are put
     */
    public void judge(Figures figures, Outcomes into) {
        Compilation program = compiled;
        if (program != null) {
            program.run(figures, into);
            return;
        }
        if (figures.graph != graph || into.graph != graph) {
            throw new IllegalArgumentException("figures and outcomes belong to another procedure");
        }
        into.interpret(figures);
        if (judged.incrementAndGet() == HOT) {
            compile();
        }
    }

    /** Whether engines are no longer interpreted. */
    boolean isCompiled() {
        return compiled != null;
    }

    /** What the procedure was compiled to, which is done now if it was not. */
    public Compilation compile() {
        Compilation known = compiled;
        if (known == null) {
            known = Compilation.of(graph, layout);
            compiled = known;
        }
        return known;
    }
}
