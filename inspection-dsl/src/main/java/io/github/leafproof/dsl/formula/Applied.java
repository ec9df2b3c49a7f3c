package io.github.leafproof.dsl.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A function that the procedure defines, applied to arguments. */
public record Applied(String function, Formula body, List<Formula> arguments) implements Formula {

    public Applied {
        arguments = List.copyOf(arguments);
    }

    @Override
    public Value value(Frame frame) {
        return body.value(inside(frame));
    }

    /** Another formula of the same body, applied to the same arguments. */
    public Applied instead(Formula inside) {
        return new Applied(function, inside, arguments);
    }

    /** The frame that the body is evaluated in. */
    public Frame inside(Frame frame) {
        Value[] values = new Value[arguments.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = arguments.get(i).value(frame);
        }
        return frame.within(values);
    }

    @Override
    public void account(Frame frame, Account account) {
        body.account(inside(frame), account);
    }

    @Override
    public String words() {
        return arguments.stream().map(Formula::words).collect(Collectors.joining(", ", function + "(", ")"));
    }

    @Override
    public List<Formula> parts() {
        List<Formula> parts = new ArrayList<>(arguments);
        parts.add(body);
        return parts;
    }
}
