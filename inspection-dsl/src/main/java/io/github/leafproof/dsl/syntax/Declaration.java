package io.github.leafproof.dsl.syntax;

import io.github.leafproof.dsl.source.Span;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a procedure file says, one declaration at a time, as written. */
public sealed interface Declaration {

    /** Where it stands, from its first word to its last character. */
    Span span();

    /** {@code language 1}. */
    record Language(int version, Span span) implements Declaration {}

    /** {@code procedure first_look "First look" revision 4}. */
    record Header(Name name, Text title, int revision, Span span) implements Declaration {}

    /** {@code applies when engine.displacement at most 35 cm3}. */
    record Applies(Expression condition, Span span) implements Declaration {}

    /** {@code decide at 95 %}, or {@code decide by simple acceptance}, which is 50 %. */
    record Decide(Confidence confidence, Span span) implements Declaration {}

    /** A confidence as written, in per cent. */
    record Confidence(String percent, Span span) {}

    /** {@code use "lash.inspection"}. */
    record Use(Text file, Span span) implements Declaration {}

    /** {@code card tank_offset : length}. */
    record CardFact(Name name, TypeWords type, Span span) implements Declaration {}

    /** {@code hazard solvent "Open the door"}: a shop's own. */
    record HazardText(Name name, Text caution, Span span) implements Declaration {}

    /** {@code gauge leaves : leaf set}. */
    record Gauge(Name name, GaugeWords kind, @Nullable TypeWords of, Span span) implements Declaration {}

    /** What kinds of gauge there are. */
    enum GaugeWords {
        LEAF_SET,
        PIN_SET,
        READING,
        COUNTER
    }

    /** {@code setup plug starts fitted { … }}: a state of the bench and how it is changed. */
    record Setup(Name name, Name starts, List<Change> changes, List<While> whiles, Span span) implements Declaration {
        public Setup {
            changes = List.copyOf(changes);
            whiles = List.copyOf(whiles);
        }
    }

    /** {@code fitted -> out "Unscrew the glow plug" hazard hot}. */
    record Change(Name from, Name to, Text how, List<Name> hazards, Span span) {
        public Change {
            hazards = List.copyOf(hazards);
        }
    }

    /** {@code while offered hazard fuel, fire}. */
    record While(Name state, List<Name> hazards, Span span) {
        public While {
            hazards = List.copyOf(hazards);
        }
    }

    /** {@code stage "Valve gear, cold" { after cold … }}. */
    record Stage(Text title, List<Target> after, List<Declaration> body, Span span) implements Declaration {
        public Stage {
            after = List.copyOf(after);
            body = List.copyOf(body);
        }
    }

    /** {@code observe lash[valve] : gap with leaves setup covers off ask "…"}. */
    record Observe(
            Target target,
            TypeWords type,
            @Nullable Name gauge,
            List<State> states,
            @Nullable Text ask,
            List<Name> hazards,
            List<Text> notes,
            boolean optional,
            @Nullable Expression when,
            Span span)
            implements Declaration {
        public Observe {
            states = List.copyOf(states);
            hazards = List.copyOf(hazards);
            notes = List.copyOf(notes);
        }
    }

    /** A bench state that an observation needs: {@code covers off}. */
    record State(Name setup, Name state, Span span) {}

    /** {@code let lash_aim = (engine.lash_min + engine.lash_max) / 2}. */
    record Let(Target target, Expression value, Span span) implements Declaration {}

    /** {@code define turns_for(change : length) = change / pitch}. */
    record Define(Name name, List<Parameter> parameters, Expression body, Span span) implements Declaration {
        public Define {
            parameters = List.copyOf(parameters);
        }
    }

    /** {@code change : length}. */
    record Parameter(Name name, TypeWords type, Span span) {}

    /** {@code check lash_within[valve] "{valve} valve lash" critical gate { … }}. */
    record Check(
            Target target,
            Text title,
            @Nullable Name severity,
            boolean gate,
            List<Target> after,
            @Nullable Expression when,
            List<Expression> requirements,
            @Nullable Confidence confidence,
            List<Advice> advice,
            List<Text> because,
            Span span)
            implements Declaration {
        public Check {
            after = List.copyOf(after);
            requirements = List.copyOf(requirements);
            advice = List.copyOf(advice);
            because = List.copyOf(because);
        }
    }

    /** {@code if high advise "Screw the adjuster in"}: the word is an outcome, or {@code high} or {@code low}. */
    record Advice(Name outcome, Expression advice, Span span) {}

    /** {@code for valve in intake, exhaust { … }}. */
    record For(Name variable, List<Name> values, List<Declaration> body, Span span) implements Declaration {
        public For {
            values = List.copyOf(values);
            body = List.copyOf(body);
        }
    }

    /** {@code release { reject when any critical fails   hold when any fails or open   ready otherwise }}. */
    record Release(List<Rule> rules, Span span) implements Declaration {
        public Release {
            rules = List.copyOf(rules);
        }
    }

    /** One rule of a release; without a condition it is the one for everything else. */
    record Rule(Name result, @Nullable Condition condition, Span span) {}

    /** When a rule of a release holds. */
    sealed interface Condition {

        Span span();

        /** {@code any critical fails or open}: some check (of that severity) came out so. */
        record AnyCheck(@Nullable Name severity, List<Name> outcomes, Span span) implements Condition {
            public AnyCheck {
                outcomes = List.copyOf(outcomes);
            }
        }

        /** {@code lash_within[intake] fails or open}: that one check came out so. */
        record OneCheck(Target check, List<Name> outcomes, Span span) implements Condition {
            public OneCheck {
                outcomes = List.copyOf(outcomes);
            }
        }

        /** Both must hold ({@code and}), or one of them ({@code or}, written with a comma). */
        record Joined(Condition left, boolean and, Condition right, Span span) implements Condition {}
    }

    /** {@code rehearse "…" { engine … gauges … enter … expect … }}: a written case with its expected outcomes. */
    record Rehearse(Text title, List<Step> steps, Span span) implements Declaration {
        public Rehearse {
            steps = List.copyOf(steps);
        }
    }

    /** One line of a rehearsal. */
    sealed interface Step {

        Span span();

        /** {@code engine "cards/quillan-15.json" variant "early cam" serial "Q15-20417"}. */
        record Engine(
                Text card, @Nullable Text variant, @Nullable Text serial, Span span) implements Step {}

        /** {@code gauges "trays/bench-one.json"}. */
        record Gauges(Text tray, Span span) implements Step {}

        /** {@code enter head 21 degC}: one entry; a line with commas gives several. */
        record Enter(Target target, Entered entered, Span span) implements Step {}

        /** {@code expect lash_within[intake] open}. */
        record ExpectCheck(Target check, Name outcome, Span span) implements Step {}

        /** {@code expect release hold}. */
        record ExpectRelease(Name release, Span span) implements Step {}
    }

    /** What a rehearsal enters for an observation. */
    sealed interface Entered {

        Span span();

        /** A quantity or a plain number; a minus sign is part of {@code number}. */
        record Amount(String number, String unit, Span span) implements Entered {}

        /** A bare word: yes, no, or an option. */
        record Word(String word, Span span) implements Entered {}

        /** A text in quotes: words, a date, or an option with spaces. */
        record Quoted(Text text, Span span) implements Entered {}

        /** {@code passes "0.05" refuses "0.10"}. */
        record Trials(List<Trial> trials, Span span) implements Entered {
            public Trials {
                trials = List.copyOf(trials);
            }
        }

        /** {@code series 9200 rpm, 9230 rpm}. */
        record Readings(List<Expression.Amount> readings, Span span) implements Entered {
            public Readings {
                readings = List.copyOf(readings);
            }
        }

        /** {@code items "engine", "manual"}. */
        record Items(List<Text> items, Span span) implements Entered {
            public Items {
                items = List.copyOf(items);
            }
        }

        /** {@code cannot "the box was not sent"}. */
        record Cannot(Text why, Span span) implements Entered {}
    }

    /** One leaf (or stack, {@code "0.05 + 0.04"}) offered. */
    record Trial(Name result, Text leaves, Span span) {}
}
