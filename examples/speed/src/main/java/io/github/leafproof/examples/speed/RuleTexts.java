package io.github.leafproof.examples.speed;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** So many rules of one kind, each with numbers of its own, in the languages that know types. */
record RuleTexts(int rules) {

    /** A procedure: a reading and a check for each rule. */
    String procedure() {
        return "procedure rules \"Rules\" revision 1\n"
                + each(rule -> "observe x" + rule + " : length\ncheck c" + rule + " \"Check\" major { require x" + rule
                        + " * 2 between " + rule + ".1 mm and " + (rule + 1) + " mm }\n");
    }

    /** Expressions of CEL, one for each rule. */
    List<String> cel() {
        return IntStream.range(0, rules)
                .mapToObj(rule -> "recess * 2.0 >= " + rule + ".1 && recess * 2.0 <= " + (rule + 1) + ".0")
                .toList();
    }

    /** A script of MVEL or Janino that puts down the verdict of each rule in the place that it fills in. */
    String script(String variable) {
        return each(rule -> "into.set(" + rule % 12 + ", " + variable + " * 2 >= " + rule + ".1 && " + variable
                + " * 2 <= " + (rule + 1) + ".0 ? 0 : 1);\n");
    }

    /** Rules of Drools. */
    String drl() {
        return "package io.github.leafproof.examples.speed;\ndialect \"java\"\n"
                + "import io.github.leafproof.examples.speed.ByDrools.Bench;\n"
                + "import io.github.leafproof.examples.speed.ByDrools.Found;\n"
                + each(rule -> "rule \"c" + rule + "\" when Bench(retreat >= " + rule / 2.0 + ", retreat <= "
                        + (rule + 1) / 2.0 + ") then insert(new Found(" + rule % 12 + ", 0)); end\n");
    }

    private String each(IntFunction<String> text) {
        return IntStream.range(0, rules).mapToObj(text).collect(Collectors.joining());
    }
}
