package io.github.leafproof.dsl.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What the program can be asked to do, in the order in which its help lists it. */
enum Verb {
    INSPECT,
    VERIFY_REPORT,
    MAKE_KEY,
    GUIDE,
    CARD,
    EXPLAIN,
    DRAW,
    HISTORY,
    VET,
    REHEARSE,
    REPLAY,
    MUTANTS,
    EDGES,
    TIDY,
    RECKON,
    WHY;

    /**
     * The verb that a command line names, or all of them where it names none that we know: for help, and for what to say of a
     * slip. Each verb costs the start some milliseconds, and the options before it take no value.
     */
    static List<Verb> startedBy(String... arguments) {
        List<Verb> all = List.of(values());
        return Arrays.stream(arguments)
                .filter(argument -> !argument.startsWith("-"))
                .limit(1)
                .flatMap(word -> all.stream().filter(verb -> verb.word().equals(word)))
                .findFirst()
                .map(List::of)
                .orElse(all);
    }

    private String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The command behind the verb. */
    Object command(Console console) {
        return switch (this) {
            case INSPECT -> new InspectCommand(console);
            case VERIFY_REPORT -> new VerifyReportCommand(console);
            case MAKE_KEY -> new MakeKeyCommand(console);
            case GUIDE -> new GuideCommand(console);
            case CARD -> new CardCommand(console);
            case EXPLAIN -> new ExplainCommand(console);
            case DRAW -> new DrawCommand(console);
            case HISTORY -> new HistoryCommand(console);
            case VET -> new VetCommand(console);
            case REHEARSE -> new RehearseCommand(console);
            case REPLAY -> new ReplayCommand(console);
            case MUTANTS -> new MutantsCommand(console);
            case EDGES -> new EdgesCommand(console);
            case TIDY -> new TidyCommand(console);
            case RECKON -> new ReckonCommand(console);
            case WHY -> new WhyCommand(console);
        };
    }
}
