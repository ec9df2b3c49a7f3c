package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Operation;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.message.UncertaintyDiagnostics;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Expression.Stated;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import io.github.leafproof.inspection.quantity.Source;
import io.github.leafproof.inspection.quantity.Uncertainty;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.DecisionRule;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Values with a stated uncertainty. Wherever one is written is a source of error of its own, known by its place: what is
 * read from it twice errs together, and two that are written alike do not. In a loop each round writes it anew.
 */
final class Uncertainties {

    private final Problems problems;
    private final Expressions expressions;
    private final Names names;

    Uncertainties(Problems problems, Expressions expressions, Names names) {
        this.problems = problems;
        this.expressions = expressions;
        this.names = names;
    }

    @Nullable
    Typed value(Expression.Uncertain written, Env env) {
        Expression subject = withSharedUnit(written);
        Typed value = expressions.numeric(subject, env);
        Quantity stated = expressions.quantity(written.uncertainty());
        if (value == null || stated == null) {
            return null;
        }
        if (value.type() instanceof Type.Count) {
            problems.add(UncertaintyDiagnostics.counted(
                    written.signSpan(), written.value().span()));
            return null;
        }
        Dimension dimension = value.type().inArithmetic().orElseThrow();
        boolean share = isShare(stated, dimension);
        if (!share && !stated.asDifference().dimension().equals(dimension.difference())) {
            problems.add(UncertaintyDiagnostics.unlike(
                    subject.span(),
                    value.type().words(),
                    written.uncertainty().span(),
                    new Type.Measure(stated.dimension()).words()));
            return null;
        }
        Uncertainty uncertainty = uncertainty(written, stated);
        if (uncertainty == null) {
            return null;
        }
        Quantity none = Quantity.of(0, stated.unit().difference());
        Estimate error = Estimate.of(none, uncertainty, Source.stated(place(written, env)));
        Computed known = new Computed(
                new Operation.Erring(error, share), List.of(value.formula()), words(written, value, stated));
        return new Typed(settled(known), new Type.Measure(dimension));
    }

    /** {@code 0.05 ± 0.01 mm}: the unit behind both is the unit of both. */
    private static Expression withSharedUnit(Expression.Uncertain written) {
        Expression.Amount uncertainty = written.uncertainty();
        boolean shared = written.stated() == Stated.LIMITS
                && written.value() instanceof Expression.Amount value
                && value.unit().isEmpty()
                && !uncertainty.unit().isEmpty()
                && !uncertainty.unit().equals("%");
        if (!shared) {
            return written.value();
        }
        Expression.Amount value = (Expression.Amount) written.value();
        return new Expression.Amount(value.number(), uncertainty.unit(), uncertainty.unitSpan(), value.span());
    }

    /** Whether it is stated as a share of the value: in per cent, and not of a ratio. */
    private static boolean isShare(Quantity stated, Dimension dimension) {
        return stated.dimension().isRatio()
                && !stated.unit().equals(Unit.ONE)
                && !dimension.isRatio()
                && !dimension.isAbsolute();
    }

    private @Nullable Uncertainty uncertainty(Expression.Uncertain written, Quantity stated) {
        if (!(stated.asDifference().base() > 0)) {
            problems.add(
                    UncertaintyDiagnostics.notAboveNought(written.uncertainty().span()));
            return null;
        }
        Expression.Coverage coverage = written.coverage();
        if (written.stated() != Stated.EXPANDED) {
            if (coverage != null) {
                problems.add(UncertaintyDiagnostics.coverageTooMany(coverage.span()));
                return null;
            }
            return written.stated() == Stated.LIMITS ? Uncertainty.limits(stated) : Uncertainty.standard(stated);
        }
        if (coverage == null) {
            problems.add(
                    UncertaintyDiagnostics.coverageMissing(written.uncertainty().span()));
            return null;
        }
        Quantity k = expressions.quantity(coverage.number());
        if (k == null) {
            return null;
        }
        if (!coverage.word().text().equals("k") || !k.unit().equals(Unit.ONE) || !(k.base() > 0)) {
            problems.add(UncertaintyDiagnostics.badCoverage(coverage.span()));
            return null;
        }
        try {
            return Uncertainty.expanded(stated, k.base());
        } catch (QuantityException wrong) {
            problems.add(UncertaintyDiagnostics.badCoverage(coverage.span()));
            return null;
        }
    }

    /** By which it is told from every other source: where it stands, and in which round of the loops around it. */
    private String place(Expression.Uncertain written, Env env) {
        Span span = written.signSpan();
        SourceText.Position at = span.source().at(span.start());
        String file = names.isInMainFile(span) ? "" : " of " + span.source().name();
        String round = env.loops().isEmpty()
                ? ""
                : env.loops().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(loop -> loop.getValue().word())
                        .collect(Collectors.joining(", ", " (", ")"));
        return "the " + written.stated().sign() + " of line " + at.line() + ", column " + at.column() + file + round;
    }

    private static String words(Expression.Uncertain written, Typed value, Quantity stated) {
        String words = value.formula().words();
        boolean compound = written.value() instanceof Expression.Arithmetic;
        String known = compound ? "(" + words + ")" : words;
        return switch (written.stated()) {
            case LIMITS -> known + " ± " + stated;
            case STANDARD -> known + " (u " + stated + ")";
            case EXPANDED -> known + " (U " + stated + ", k " + coverage(written) + ")";
        };
    }

    private static String coverage(Expression.Uncertain written) {
        return written.coverage() == null ? "" : written.coverage().number().number();
    }

    /** What is written out is known without any engine. */
    private static Formula settled(Computed known) {
        if (!(known.parts().get(0) instanceof Constant written)) {
            return known;
        }
        Value value = known.value(Frame.of(new Value[0], DecisionRule.simpleAcceptance(), UnitSystem.METRIC));
        return new Constant(value, known.words(), written.unit());
    }
}
