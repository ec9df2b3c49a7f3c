package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.bytecode.Term.Local;
import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Operation;
import io.github.leafproof.dsl.formula.Reckoning;
import io.github.leafproof.inspection.mechanism.Mechanism;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Slate;
import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;

/** What is computed of uncertain numbers: each on a line of the slate, where what they share is known. */
final class OnSlate {

    private final Code code;
    private final Label refused = new Label();

    private OnSlate(Code code) {
        this.code = code;
    }

    /** The term of a rule applied to numbers: one of the language's own, or a calculation of the trade. */
    static Term of(Computed.Rule rule, List<Term> numbers) {
        return new Term(Shape.WORKED, code -> {
            List<Local> places =
                    numbers.stream().map(number -> number.written().to(code)).toList();
            Local result = code.reserved(Shape.WORKED);
            Label end = new Label();
            if (code.loadLacks(places)) {
                code.storeState(result);
                code.load(result);
                code.jump(Opcodes.IFNE, end);
            }
            List<Integer> lines = new ArrayList<>();
            for (int i = 0; i < numbers.size(); i++) {
                lines.add(line(code, numbers.get(i).shape(), places.get(i)));
            }
            OnSlate computing = new OnSlate(code);
            computing.compute(rule, lines, result.value());
            code.jump(Opcodes.GOTO, end);
            code.place(computing.refused);
            code.push(Truth.NOT_COMPUTABLE);
            code.storeState(result);
            code.place(end);
            return result;
        });
    }

    /** The line of a number that is there. */
    static int line(Code code, Shape shape, Local place) {
        if (shape.isWorked()) {
            return place.value();
        }
        int line = code.line();
        write(code, shape, place, line);
        return line;
    }

    /** Writes a number that is there on a line. */
    static void write(Code code, Shape shape, Local place, int line) {
        if (shape.isKnown()) {
            code.outcomes();
            code.figures();
            code.push(line);
            code.loadDouble(place, 3);
            code.callOn(Outcomes.class, "write", void.class, Figures.class, int.class, double.class);
            return;
        }
        slate(code);
        code.push(line);
        if (shape.isWorked()) {
            code.push(place.value());
            code.callOn(Slate.class, "copy", void.class, int.class, int.class);
            return;
        }
        code.loadDouble(place, 0);
        if (shape.isStated()) {
            code.push(shape.stated(), Estimate.class);
            code.callOn(Slate.class, "write", void.class, int.class, double.class, Estimate.class);
        } else {
            code.callOn(Slate.class, "write", void.class, int.class, double.class);
        }
    }

    static void slate(Code code) {
        code.outcomes();
        code.field(Outcomes.class, "slate", Slate.class);
    }

    /** Loads one thing about a line. */
    static void about(Code code, int line, String what) {
        slate(code);
        code.push(line);
        code.callOn(Slate.class, what, double.class, int.class);
    }

    private void compute(Computed.Rule operation, List<Integer> lines, int into) {
        if (operation instanceof Reckoning reckoning) {
            reckoning(reckoning.mechanism(), lines, into);
            return;
        }
        int first = lines.get(0);
        if (operation instanceof Operation.InARow row) {
            inARow(row.signs().stream().map(OnSlate::named).toList(), lines, into);
        } else if (operation instanceof Operation.Erring erring) {
            erring(erring, first, into);
        } else if (operation instanceof Operation.Power power) {
            slate(code);
            code.push(into);
            code.push(first);
            code.push(power.exponent());
            code.callOn(Slate.class, "power", boolean.class, int.class, int.class, int.class);
            code.jump(Opcodes.IFEQ, refused);
        } else if (operation instanceof Operation.Function function) {
            function(function, lines, into);
        } else {
            one("negated", into, first);
        }
    }

    private void reckoning(Mechanism mechanism, List<Integer> lines, int into) {
        code.push(mechanism, Mechanism.class);
        slate(code);
        code.push(into);
        code.push(lines.stream().mapToInt(Integer::intValue).toArray(), int[].class);
        code.push(code.line());
        code.callOn(Mechanism.class, "on", boolean.class, Slate.class, int.class, int[].class, int.class);
        code.jump(Opcodes.IFEQ, refused);
    }

    private static String named(Operation.Sign sign) {
        return switch (sign) {
            case PLUS -> "plus";
            case MINUS -> "minus";
            case TIMES -> "times";
            case DIVIDED_BY -> "dividedBy";
        };
    }

    private void inARow(List<String> operations, List<Integer> lines, int into) {
        int soFar = lines.get(0);
        for (int i = 0; i < operations.size(); i++) {
            int next = i == operations.size() - 1 ? into : code.line();
            two(operations.get(i), next, soFar, lines.get(i + 1));
            soFar = next;
        }
    }

    private void erring(Operation.Erring erring, int number, int into) {
        int error = code.line();
        slate(code);
        code.push(error);
        code.push(erring.error(), Estimate.class);
        code.callOn(Slate.class, "write", void.class, int.class, Estimate.class);
        int added = error;
        if (erring.share()) {
            added = code.line();
            two("times", added, number, error);
        }
        two("plus", into, number, added);
    }

    private void function(Operation.Function function, List<Integer> lines, int into) {
        int first = lines.get(0);
        switch (function) {
            case MIN -> inARow(lines.stream().skip(1).map(each -> "min").toList(), lines, into);
            case MAX -> inARow(lines.stream().skip(1).map(each -> "max").toList(), lines, into);
            case ABS -> one("absolute", into, first);
            case SQRT -> one("sqrt", into, first);
            case SIN -> one("sin", into, first);
            case COS -> one("cos", into, first);
            case TAN -> {
                int sine = code.line();
                int cosine = code.line();
                one("sin", sine, first);
                one("cos", cosine, first);
                two("dividedBy", into, sine, cosine);
            }
        }
    }

    private void one(String operation, int into, int a) {
        slate(code);
        code.push(into);
        code.push(a);
        code.callOn(Slate.class, operation, boolean.class, int.class, int.class);
        code.jump(Opcodes.IFEQ, refused);
    }

    private void two(String operation, int into, int a, int b) {
        slate(code);
        code.push(into);
        code.push(a);
        code.push(b);
        code.callOn(Slate.class, operation, boolean.class, int.class, int.class, int.class);
        code.jump(Opcodes.IFEQ, refused);
    }
}
