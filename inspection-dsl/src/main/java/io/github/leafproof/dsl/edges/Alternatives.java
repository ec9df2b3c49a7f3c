package io.github.leafproof.dsl.edges;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.syntax.Declaration.Entered;
import io.github.leafproof.dsl.syntax.Text;
import io.github.leafproof.inspection.record.Given;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What else may be entered where there are no steps in between: the other word, the other options, a thing less. */
final class Alternatives {

    private static final Pattern WORD = Pattern.compile("[\\p{L}_][\\p{L}_0-9]*");

    private Alternatives() {}

    static List<Change> to(Type type, Entered entered) {
        List<Change> others = new ArrayList<>();
        if (type instanceof Type.YesNo && entered instanceof Entered.Word word) {
            boolean yes = word.word().equals("yes");
            others.add(Change.of(new Given.Flag(!yes), yes ? "no" : "yes"));
        } else if (type instanceof Type.Choice choice && !choice.graded()) {
            choice.options().stream()
                    .filter(option -> !option.equals(chosen(entered)))
                    .map(Alternatives::option)
                    .forEach(others::add);
        } else if (entered instanceof Entered.Items items) {
            List<String> things = items.items().stream().map(Text::plain).toList();
            for (int i = 0; i < things.size() && things.size() > 1; i++) {
                List<String> rest = new ArrayList<>(things);
                String gone = rest.remove(i);
                others.add(new Change(
                        new Given.Items(rest),
                        "items "
                                + String.join(
                                        ", ",
                                        rest.stream().map(Alternatives::quoted).toList()),
                        "without " + gone));
            }
        }
        return others;
    }

    /** The option that is entered, bare or in quotes. */
    static String chosen(Entered entered) {
        return entered instanceof Entered.Word word
                ? word.word()
                : entered instanceof Entered.Quoted quoted ? quoted.text().plain() : "";
    }

    /** Another option instead. */
    static Change option(String option) {
        return Change.of(new Given.Words(option), WORD.matcher(option).matches() ? option : quoted(option));
    }

    /** A text as procedures write it. */
    static String quoted(String text) {
        return "\""
                + text.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("{", "\\{")
                        .replace("}", "\\}") + "\"";
    }
}
