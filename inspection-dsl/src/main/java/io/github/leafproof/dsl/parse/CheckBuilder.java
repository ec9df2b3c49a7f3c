package io.github.leafproof.dsl.parse;

import static io.github.leafproof.dsl.parse.SmallThings.need;
import static io.github.leafproof.dsl.parse.SmallThings.span;

import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.dsl.syntax.Target;
import io.github.leafproof.dsl.syntax.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** One check: its title, how grave it is, and its clauses in any order. */
final class CheckBuilder extends InspectionParserBaseVisitor<@Nullable Span> {

    /** What may stand behind the title of a check. */
    static final Set<String> HEADING = Set.of("critical", "major", "minor", "gate");

    private final SmallThings things;
    private final ExpressionBuilder expressions;
    private final SaidOnce once;

    private @Nullable Name severity;
    private boolean gate;
    private final List<Target> after = new ArrayList<>();
    private @Nullable Expression when;
    private final List<Expression> requirements = new ArrayList<>();
    private Declaration.@Nullable Confidence confidence;
    private final List<Declaration.Advice> advice = new ArrayList<>();
    private final List<Text> because = new ArrayList<>();

    CheckBuilder(SmallThings things, ExpressionBuilder expressions) {
        this.things = things;
        this.expressions = expressions;
        this.once = new SaidOnce(things);
    }

    Declaration.Check check(InspectionParser.CheckContext context) {
        Target target = things.target(context.target());
        if (context.text() == null) {
            things.report(ClauseDiagnostics.checkWithoutTitle(target));
        }
        Text title = context.text() == null ? new Text(List.of(), target.span()) : things.text(context.text());
        List<InspectionParser.NameContext> words = context.name();
        if (!words.isEmpty()) {
            target = readHeader(context, target, title, words);
        }
        for (InspectionParser.CheckClauseContext clause :
                need(context.checkBody()).checkClause()) {
            things.readOrSkip(clause, () -> read(clause));
        }
        return new Declaration.Check(
                target, title, severity, gate, after, when, requirements, confidence, advice, because, span(context));
    }

    /**
     * Reads the words around the title.
     *
     * @return what the check is named, which may turn out to be one of the words
     */
    private Target readHeader(
            InspectionParser.CheckContext context,
            Target named,
            Text title,
            List<InspectionParser.NameContext> written) {
        Target target = named;
        List<InspectionParser.NameContext> words = new ArrayList<>(written);
        Optional<InspectionParser.NameContext> behind = nameBehind(context, named, title);
        if (behind.isPresent()) {
            // The word that stands where the name should says what it would say behind the title.
            Name name = things.name(behind.get());
            things.report(ClauseDiagnostics.beforeTheName(target.name(), name, title));
            words.remove(behind.get());
            words.add(0, context.target().name(0));
            target = new Target(name, List.of(), name.span());
        }
        List<InspectionParser.NameContext> early = context.text() == null || behind.isPresent()
                ? List.of()
                : words.stream().filter(word -> isBefore(word, title)).toList();
        boolean headings = early.isEmpty() || readBeforeTitle(target, things.names(early), title);
        words.stream().skip(headings ? 0 : early.size()).forEach(this::readHeaderWord);
        return target;
    }

    private static boolean isBefore(InspectionParser.NameContext word, Text title) {
        return word.getStart().getStartIndex() < title.span().start();
    }

    /** {@code check critical cold "Cold"}: the name, where what belongs behind the title has taken its place. */
    private static Optional<InspectionParser.NameContext> nameBehind(
            InspectionParser.CheckContext context, Target named, Text title) {
        if (context.text() == null
                || !named.indexes().isEmpty()
                || !HEADING.contains(named.name().text())) {
            return Optional.empty();
        }
        List<InspectionParser.NameContext> names = context.name().stream()
                .filter(word -> isBefore(word, title))
                .filter(word -> !HEADING.contains(word.getText()))
                .toList();
        return names.size() == 1 ? Optional.of(names.get(0)) : Optional.empty();
    }

    private void read(InspectionParser.CheckClauseContext clause) {
        if (clause.accept(this) == null) {
            // Not even which clause it is could be told.
            throw new Unfinished();
        }
    }

    /**
     * {@code check cold critical "Cold"}: the order is wrong. {@code check engine cold "Cold"}: the name has a blank.
     *
     * @return whether the words say what they would say behind the title
     */
    private boolean readBeforeTitle(Target target, List<Name> words, Text title) {
        List<String> rest = words.stream()
                .map(Name::text)
                .filter(word -> !HEADING.contains(word))
                .toList();
        if (rest.isEmpty()) {
            words.forEach(word -> things.report(ClauseDiagnostics.beforeTheTitle(word, title)));
            return true;
        }
        List<String> parts = new ArrayList<>(List.of(target.name().text()));
        parts.addAll(rest);
        Span name = target.span().to(words.get(words.size() - 1).span());
        things.report(ClauseDiagnostics.nameOfSeveralWords(name, parts));
        things.loseName(name);
        return false;
    }

    private void readHeaderWord(InspectionParser.NameContext context) {
        Name word = things.name(context);
        if (word.text().equals("gate")) {
            once.begins(context.getStart());
            gate = true;
        } else if (severity == null) {
            severity = word;
        } else {
            things.report(ClauseDiagnostics.strayHeaderWord(word, severity));
        }
    }

    @Override
    public Span visitCheckAfter(InspectionParser.CheckAfterContext context) {
        after.addAll(things.targets(context.targets()));
        return span(context);
    }

    @Override
    public Span visitCheckWhen(InspectionParser.CheckWhenContext context) {
        once.begins(context.getStart());
        when = expressions.expression(context.expression());
        return span(context);
    }

    @Override
    public Span visitRequire(InspectionParser.RequireContext context) {
        requirements.add(expressions.expression(context.expression()));
        return span(context);
    }

    @Override
    public Span visitCheckConfidence(InspectionParser.CheckConfidenceContext context) {
        once.begins(context.getStart());
        confidence = things.confidence(context.amount());
        return span(context);
    }

    @Override
    public Span visitAdvise(InspectionParser.AdviseContext context) {
        advice.add(new Declaration.Advice(
                things.name(context.name()), expressions.expression(context.expression()), span(context)));
        return span(context);
    }

    @Override
    public Span visitBecause(InspectionParser.BecauseContext context) {
        because.add(things.text(context.text()));
        return span(context);
    }
}
