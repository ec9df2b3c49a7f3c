package io.github.leafproof.dsl.reckon;

import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.StatedFacts;
import io.github.leafproof.dsl.meaning.LoneExpression;
import io.github.leafproof.dsl.parse.ParsedLine;
import io.github.leafproof.dsl.parse.ProcedureParser;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.DecisionRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reckons expressions, one at a time: {@code 4.5 thou in mm}, {@code piston_travel(40 deg, 24.8 mm, 44 mm)}. A line may
 * give its value a name, {@code lash = 4.5 thou}, which later lines use; what they know of its uncertainty they know from
 * the same source, so that a value less itself is nothing.
 *
 * <p>Immutable: an answer comes with the reckoner that knows one name more.
 */
public final class Reckoner {

    /** As sure as a procedure is that does not say otherwise. */
    private static final DecisionRule RULE = DecisionRule.guarded(0.95);

    private record Known(Type type, Value value) {}

    private final UnitSystem units;
    private final @Nullable EngineCard card;
    private final @Nullable String variant;
    private final Map<String, Known> names;

    private Reckoner(UnitSystem units, @Nullable EngineCard card, @Nullable String variant, Map<String, Known> names) {
        this.units = units;
        this.card = card;
        this.variant = variant;
        this.names = names;
    }

    /** Knows no names and no engine, and shows values in these units. */
    public static Reckoner in(UnitSystem units) {
        return new Reckoner(units, null, null, Map.of());
    }

    /**
     * The same with an engine card, so that {@code engine.stroke} has a value.
     *
     * @param engineVariant which of the card's variants is meant, or null where that is not known
     */
    public Reckoner with(EngineCard engineCard, @Nullable String engineVariant) {
        return new Reckoner(units, engineCard, engineVariant, names);
    }

    /** The value of one line. */
    public Reckoned reckon(SourceText line) {
        ParsedLine parsed = ProcedureParser.line(line);
        if (parsed.expression() == null) {
            return new Reckoned.Refused(parsed.problems());
        }
        LoneExpression meant =
                LoneExpression.of(line, parsed.expression(), given(), parsed.problems(), parsed.damage());
        Optional<Formula> formula = meant.formula();
        Optional<Type> type = meant.type();
        if (formula.isEmpty() || type.isEmpty()) {
            return new Reckoned.Refused(meant.diagnostics());
        }
        Frame frame = frame(meant.facts());
        Value value = formula.get().value(frame);
        if (value instanceof Value.Missing missing) {
            return new Reckoned.Unanswered(missing.words());
        }
        String words = words(formula.get(), value, frame);
        return parsed.name() == null
                ? new Reckoned.Answer(value, words, this)
                : named(parsed.name().text(), new Known(type.get(), value), words);
    }

    private Reckoned named(String name, Known known, String words) {
        Map<String, Known> more = new LinkedHashMap<>(names);
        more.put(name, known);
        return new Reckoned.Answer(known.value(), name + " = " + words, new Reckoner(units, card, variant, more));
    }

    private List<LoneExpression.Given> given() {
        List<LoneExpression.Given> given = new ArrayList<>();
        names.forEach((name, known) -> given.add(new LoneExpression.Given(name, known.type())));
        return given;
    }

    private Frame frame(List<Node.Fact> facts) {
        Value[] slots = new Value[facts.size()];
        Map<Node.Fact, Value> stated = card == null ? Map.of() : StatedFacts.of(facts, card, variant);
        for (Node.Fact fact : facts) {
            slots[fact.slot()] = stated.getOrDefault(
                    fact,
                    Value.Missing.of(
                            Value.Lack.Kind.NOT_ON_CARD,
                            fact.name(),
                            card == null ? "is not known without an engine card" : "stands on no engine card"));
        }
        Value[] arguments = names.values().stream().map(Known::value).toArray(Value[]::new);
        return Frame.of(slots, RULE, units).within(arguments);
    }

    private String words(Formula formula, Value value, Frame frame) {
        String shown = Shown.measured(value, units);
        if (!(value instanceof Value.Judged)) {
            return shown;
        }
        List<String> reasons = Account.of(formula, frame).reasons();
        return reasons.isEmpty() ? shown : shown + ": " + String.join("; ", reasons);
    }
}
