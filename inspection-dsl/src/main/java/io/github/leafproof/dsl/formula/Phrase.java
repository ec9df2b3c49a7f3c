package io.github.leafproof.dsl.formula;

import java.util.List;

/** A text with holes, filled in when it is shown. A hole whose value is lacking says why instead. */
public record Phrase(List<Formula> parts, List<Integer> digits) implements Formula {

    public Phrase {
        parts = List.copyOf(parts);
        digits = List.copyOf(digits);
    }

    @Override
    public Value value(Frame frame) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < parts.size(); i++) {
            text.append(Shown.value(parts.get(i).value(frame), digits.get(i), frame.units()));
        }
        return new Value.Words(text.toString());
    }

    @Override
    public String words() {
        StringBuilder text = new StringBuilder("\"");
        for (Formula part : parts) {
            text.append(part instanceof Constant ? part.words() : "{" + part.words() + "}");
        }
        return text.append('"').toString();
    }
}
