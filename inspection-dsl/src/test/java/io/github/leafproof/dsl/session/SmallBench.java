package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.StepOrder;
import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.SheetEngine;
import io.github.leafproof.inspection.record.TrialGiven;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;

/** Sessions by the small bench of {@link Workshop}, on a day when the clock stands still. */
final class SmallBench {

    static final Heading HEADING =
            Heading.of("0412", LocalDate.of(2026, 3, 4)).withEngine(new SheetEngine("Q15-1", "used", null, null));
    static final Inspector MK =
            Inspector.named("mk").byClock(Clock.fixed(Instant.parse("2026-03-04T10:12:00Z"), ZoneOffset.UTC));

    /** Covers and plug, a cold engine, a gap behind a gate, and what only some engines have. */
    static final String DECLARATIONS = """
            gauge leaves : leaf set
            gauge infrared : reading of temperature
            setup covers starts fitted {
              fitted -> off "Lift the covers" hazard eyes
              off -> fitted "Refit the covers"
            }
            setup plug starts fitted { fitted -> out "Unscrew the plug"  out -> fitted "Refit the plug" }
            setup tank starts empty { empty -> filled "Fill the tank" hazard fuel  while filled hazard fire }
            observe marks : text ask "Read the marks"
            observe head : temperature with infrared ask "Temperature of the head"
            observe room : temperature with infrared ask "Temperature of the room"
            observe lash : gap with leaves setup covers off ask "Offer the leaves"
            observe gear : one of oiled, dry, rusty setup covers off ask "Valve gear"
            observe oiled_now : yes/no setup covers off when gear is not oiled ask "Oil it now"
            observe thread : yes/no setup plug out, covers fitted ask "Plug thread"
            observe rattle : yes/no optional ask "Does it rattle?"
            observe primes : yes/no setup tank filled hazard propeller ask "Does it prime?"
            check cold "Cold" major gate { require head - room within 3 K of 0 K }
            check inside "Lash" critical gate {
              after cold
              require lash between engine.lash_min and engine.lash_max
              if open advise next_leaf(lash, engine.lash_min, engine.lash_max)
            }
            check oiled "Oiled" major { require gear is oiled or oiled_now }
            check threads "Plug thread" minor { require thread }
            check quiet "Quiet" minor { require not rattle }
            check fuelled "Primes" major { after inside require primes }
            """;

    private SmallBench() {}

    static Basis basis(String declarations) {
        Workshop bench = Workshop.of(declarations);
        Evidence.Files files = bench.evidence().orElseThrow().files();
        return new Basis(bench.compiled(), files.card(), files.tray());
    }

    static Session session(String declarations) {
        return Session.inMemory(basis(declarations), HEADING, MK).orElseThrow();
    }

    static Session session() {
        return session(DECLARATIONS);
    }

    static Given words(String text) {
        return new Given.Words(text);
    }

    static Given yes(boolean yes) {
        return new Given.Flag(yes);
    }

    static Given count(int number) {
        return new Given.Count(BigDecimal.valueOf(number));
    }

    /** {@code "passes 0.05 mm", "refuses 0.04 mm + 0.05 mm"}. */
    static Given trials(String... trials) {
        return new Given.Trials(Arrays.stream(trials)
                .map(trial -> {
                    int blank = trial.indexOf(' ');
                    return new TrialGiven(
                            List.of(trial.substring(blank + 1).split(" \\+ ")),
                            TrialResult.named(trial.substring(0, blank)).orElseThrow(),
                            "");
                })
                .toList());
    }

    /** All that is ahead, as a person would say it. */
    static List<String> ahead(Standing standing) {
        return standing.ahead().steps().stream()
                .map(step -> step instanceof StepOrder.Change change
                        ? change.change().how()
                        : ((StepOrder.Observe) step).observation().name())
                .toList();
    }

    static String next(Standing standing) {
        return standing.next().map(step -> step.observation().name()).orElse("nothing");
    }

    static List<String> said(Read<?> refused) {
        return refused.problems().stream().map(Problem::toString).toList();
    }
}
