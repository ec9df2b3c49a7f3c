package io.github.leafproof.dsl.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The declarations of a procedure that compiles: whatever is read is declared above, and every value is of the kind that
 * its place asks for. Its gauges and facts are those of the tests' workshop.
 */
public final class MadeProcedure {

    private static final int DEEPEST = 3;

    private static final String BENCH = """
            gauge leaves : leaf set
            gauge pins : pin set
            gauge infrared : reading of temperature
            gauge depth : reading of length
            gauge clicks : counter
            hazard solvent "Open the door: degreaser burns."
            setup covers starts fitted {
              fitted -> off "Lift the covers" hazard solvent
              off -> fitted "Refit the covers"
              while off hazard eyes
            }
            """;

    private final Chance chance;
    private final MadeExpression values;
    private final StringBuilder text = new StringBuilder(BENCH);
    private final List<String> gates = new ArrayList<>();
    private final List<String> shopFacts = new ArrayList<>();
    private final List<Integer> ends = new ArrayList<>();
    private int declared;

    private MadeProcedure(Chance chance) {
        this.chance = chance;
        this.values = new MadeExpression(chance);
    }

    /** A procedure of chance. */
    public static MadeProcedure of(Chance chance) {
        MadeProcedure made = new MadeProcedure(chance);
        made.declare();
        return made;
    }

    /** The declarations; a header has to stand above them. */
    public String text() {
        return text.toString();
    }

    /** The same text in pieces, none of which ends within a declaration. */
    List<String> pieces() {
        List<String> pieces = new ArrayList<>();
        int start = 0;
        for (int end : ends) {
            pieces.add(text.substring(start, end));
            start = end;
        }
        pieces.add(text.substring(start));
        return pieces;
    }

    /** What an engine card says of the facts that the procedure declares, as members of a JSON object. */
    String shopFacts() {
        return String.join(", ", shopFacts);
    }

    private void declare() {
        ends.add(text.length());
        Kind.ALL.forEach(this::observe);
        ends.add(text.length());
        function();
        for (int more = chance.below(8); more > 0; more--) {
            switch (chance.below(5)) {
                case 0 -> observe(chance.of(Kind.ALL));
                case 1 -> function();
                case 2 -> loop();
                case 3 -> card();
                default -> let();
            }
            ends.add(text.length());
        }
        check();
        for (int more = chance.below(5); more > 0; more--) {
            if (chance.oneIn(3)) {
                stage();
            } else {
                check();
            }
            ends.add(text.length());
        }
        if (chance.oneIn(3)) {
            text.append("decide ")
                    .append(chance.of(List.of("at 99 %", "by simple acceptance")))
                    .append('\n');
        }
        if (chance.oneIn(3)) {
            release();
        }
    }

    private String newName(String what) {
        return what.toLowerCase(Locale.ROOT) + "_" + declared++;
    }

    private void observe(Kind kind) {
        // A condition on another observation must not hang on this one, which is declared only now.
        String clauses = clauses();
        String name = newName(kind.name());
        text.append("observe ")
                .append(name)
                .append(" : ")
                .append(chance.of(kind.types()))
                .append(clauses)
                .append('\n');
        values.declare(kind, name);
    }

    private String clauses() {
        StringBuilder clauses = new StringBuilder();
        clauses.append(chance.oneIn(4) ? " setup covers off" : "");
        clauses.append(chance.oneIn(4) ? " hazard propeller, solvent" : "");
        clauses.append(" ask \"What is it, {engine.model}?\"");
        clauses.append(chance.oneIn(4) ? " note \"Look twice.\"" : "");
        clauses.append(chance.oneIn(5) ? " optional" : "");
        // The first observations stand alone: there is nothing yet to hang on.
        boolean hangs = declared > Kind.ALL.size() && chance.oneIn(4);
        return clauses.append(hangs ? " when " + values.of(Kind.CONDITION, 1) : "")
                .toString();
    }

    private void let() {
        Kind kind = chance.of(List.of(
                Kind.LENGTH,
                Kind.NUMBER,
                Kind.CONDITION,
                Kind.TEMPERATURE,
                Kind.DIFFERENCE,
                Kind.ANGLE,
                Kind.TEXT,
                Kind.TIME,
                Kind.DATE));
        String value = values.of(kind, DEEPEST);
        String name = newName("let");
        text.append("let ").append(name).append(" = ").append(value).append('\n');
        values.declare(kind, name);
    }

    /** A fact of the shop's own, which the card at hand may state or not. */
    private void card() {
        List<Kind> kinds =
                Kind.ALL.stream().filter(each -> !each.onCard().isEmpty()).toList();
        Kind kind = chance.of(kinds);
        String name = newName("fact");
        text.append("card ")
                .append(name)
                .append(" : ")
                .append(kind.types().get(0))
                .append('\n');
        if (chance.below(3) > 0) {
            shopFacts.add("\"" + name + "\": " + chance.of(kind.onCard()));
        }
        values.declare(kind, "engine." + name);
    }

    private void function() {
        String name = newName("function");
        text.append("define ").append(name).append("(a : length, b : number) = ");
        text.append(chance.of(
                List.of("a * b", "a - a / (1 + b * b)", "if b at least 1 then a else -a", "a * (b ± 0.1) (u 1 %)")));
        text.append('\n');
        values.declareFunction(name);
    }

    private void loop() {
        String name = newName("looped");
        text.append("for v in left, right {\n  observe ").append(name).append("[v] : length with depth ask \"{v}\"\n");
        text.append("  check check_").append(name).append("[v] \"The {v} one\" minor gate { require ");
        text.append(name).append("[v] at most (if v is left then 1 mm else ").append(values.of(Kind.LENGTH, 1));
        text.append(") }\n}\n");
        gates.add("check_" + name + "[left]");
        values.declare(Kind.LENGTH, name + "[left]");
        values.declare(Kind.LENGTH, name + "[right]");
    }

    private void stage() {
        text.append("stage \"Stage ").append(declared).append("\" {\n");
        text.append(gates.isEmpty() || chance.oneIn(2) ? "" : "after " + chance.of(gates) + "\n");
        check();
        text.append("}\n");
    }

    private void check() {
        String name = newName("check");
        boolean gate = chance.oneIn(3);
        text.append("check ").append(name).append(" \"Check\" ");
        text.append(chance.of(List.of("critical", "major", "minor"))).append(gate ? " gate {\n" : " {\n");
        text.append(gates.isEmpty() || chance.oneIn(2) ? "" : "  after " + chance.of(gates) + "\n");
        text.append(chance.oneIn(4) ? "  when " + values.of(Kind.CONDITION, 1) + "\n" : "");
        text.append(chance.oneIn(4) ? "  at 99.9 %\n" : "");
        text.append("  require ").append(values.of(Kind.CONDITION, DEEPEST)).append('\n');
        text.append("  if fails advise ").append(values.text(DEEPEST)).append('\n');
        text.append(chance.oneIn(2) ? "  if open advise next_leaf(gap_1, 0.05 mm, 0.1 mm)\n" : "");
        text.append(
                chance.oneIn(4) ? "  if high advise adjuster_turn(gap_1, 0.06 mm, engine.adjuster_pitch, 1)\n" : "");
        text.append(chance.oneIn(2) ? "  because \"common practice\"\n" : "").append("}\n");
        if (gate) {
            gates.add(name);
        }
    }

    private void release() {
        text.append("release {\n  reject when any critical fails and any ");
        text.append(chance.of(List.of("major open", "minor untested or blocked", "passes")))
                .append('\n');
        text.append(gates.isEmpty() ? "" : "  hold when " + chance.of(gates) + " fails or open\n");
        text.append("  unfinished when any untested or blocked\n  ready otherwise\n}\n");
    }
}
