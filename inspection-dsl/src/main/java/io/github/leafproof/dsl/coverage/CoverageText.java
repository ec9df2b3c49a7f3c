package io.github.leafproof.dsl.coverage;

import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Occasion;
import io.github.leafproof.dsl.meaning.Saying;
import io.github.leafproof.dsl.meaning.Sayings;
import io.github.leafproof.dsl.meaning.Way;
import io.github.leafproof.dsl.source.Span;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Coverage as text for a terminal: how much is shown, and what is not, with its place and what would show it. */
public final class CoverageText {

    private CoverageText() {}

    /** The same coverage gives the same text on every machine; it ends in a line end. */
    public static String of(Coverage coverage) {
        StringBuilder text = new StringBuilder();
        Share all = coverage.share();
        text.append(coverage.procedure().source().name())
                .append(": ")
                .append(coverage.played() == 1 ? "1 rehearsal shows " : coverage.played() + " rehearsals show ")
                .append(all.shown())
                .append(" of the ")
                .append(all.asked())
                .append(" things that it can say: ")
                .append(all.words())
                .append('\n');
        for (Saying.Kind kind : Saying.Kind.values()) {
            Share share = coverage.share(kind);
            if (share.asked() > 0) {
                text.append(String.format(
                        Locale.ROOT,
                        "  %-22s %4d of %4d%s\n",
                        kind.several(),
                        share.shown(),
                        share.asked(),
                        share.shown() == share.asked() ? "" : "   " + share.words()));
            }
        }
        missing(coverage, text);
        return text.toString();
    }

    private static void missing(Coverage coverage, StringBuilder text) {
        Reaching reaching = new Reaching(coverage.procedure());
        Set<Saying> withItsCheck = withItsCheck(coverage);
        boolean first = true;
        for (Saying saying : coverage.sayings()) {
            List<Way> missing = coverage.missing(saying);
            if (missing.isEmpty() || withItsCheck.contains(saying)) {
                continue;
            }
            text.append(first ? "  no rehearsal shows:\n" : "");
            first = false;
            text.append("  ")
                    .append(place(saying.span()))
                    .append(' ')
                    .append(title(saying))
                    .append('\n');
            for (Way way : missing) {
                text.append(String.format(Locale.ROOT, "      %-14s %s\n", way.word(), reaching.words(saying, way)));
            }
        }
        if (!withItsCheck.isEmpty()) {
            text.append("  ")
                    .append(withItsCheck.size() == 1 ? "1 piece" : withItsCheck.size() + " pieces")
                    .append(" of advice not listed: what they are said for is listed\n");
        }
    }

    /** Advice that is not shown since its check never comes out so: no news of its own. */
    private static Set<Saying> withItsCheck(Coverage coverage) {
        Sayings sayings = coverage.procedure().sayings();
        Set<Saying> found = new HashSet<>();
        for (Saying saying : coverage.sayings()) {
            if (saying.kind() == Saying.Kind.CHECK) {
                List<Way> missing = coverage.missing(saying);
                for (Node.Check check : sayings.checksAt(saying)) {
                    for (int number = 0; number < check.advice().size(); number++) {
                        Saying advice = sayings.advice(check, number);
                        if (!coverage.missing(advice).isEmpty()
                                && comesOf(check.advice().get(number).occasion(), missing)) {
                            found.add(advice);
                        }
                    }
                }
            }
        }
        return found;
    }

    private static boolean comesOf(Occasion occasion, List<Way> ways) {
        return switch (occasion) {
            case FAILS -> ways.contains(Way.FAILS) || ways.contains(Way.FAILS_LOW) || ways.contains(Way.FAILS_HIGH);
            case HIGH -> ways.contains(Way.FAILS) || ways.contains(Way.FAILS_HIGH);
            case LOW -> ways.contains(Way.FAILS) || ways.contains(Way.FAILS_LOW);
            default -> ways.contains(Way.valueOf(occasion.name()));
        };
    }

    static String title(Saying saying) {
        return saying.kind().word() + " " + saying.name();
    }

    static String place(Span span) {
        return span.source().name() + ":" + span.source().at(span.start());
    }
}
