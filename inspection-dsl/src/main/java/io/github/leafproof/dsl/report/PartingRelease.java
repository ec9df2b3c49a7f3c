package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.dsl.report.Parting.Kind;
import io.github.leafproof.dsl.report.Parting.Link;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import java.util.ArrayList;
import java.util.List;

/** Where the release of an engine parts from the one that was expected: at a rule that holds, or at one that does not. */
final class PartingRelease {

    private static final int MOST_NAMED = 6;

    private PartingRelease() {}

    static Parting of(Judgement judgement, Release expected) {
        if (judgement.release().release() == expected) {
            throw new IllegalArgumentException("the release came out as expected");
        }
        List<ReleaseRule.Clause> clauses = judgement.graph().release().clauses();
        List<Link> links = new ArrayList<>();
        for (ReleaseRule.Clause clause : clauses) {
            boolean holds = clause.when().holds(judgement.verdicts());
            Link link = Link.of(Kind.RULE, "release", RuleWords.of(clause), holds ? "this decides" : "does not hold");
            boolean missed = !holds && clause.result() == expected;
            Link told = holds ? link.with(because(judgement)) : link;
            boolean first = links.stream().noneMatch(Link::parts);
            links.add((holds || missed) && first ? told.parting() : told);
            if (holds) {
                break;
            }
        }
        return new Parting(links, null);
    }

    private static List<String> because(Judgement judgement) {
        List<String> names = judgement.release().because();
        List<String> lines = new ArrayList<>();
        names.stream()
                .limit(MOST_NAMED)
                .flatMap(name -> judgement.verdict(name).stream())
                .forEach(verdict -> lines.add(words(judgement, verdict)));
        if (names.size() > MOST_NAMED) {
            lines.add("and " + (names.size() - MOST_NAMED) + " more");
        }
        return lines;
    }

    private static String words(Judgement judgement, Verdict verdict) {
        String said = verdict.check().name() + " " + ReleaseWords.said(verdict.outcome());
        List<String> why = why(judgement, verdict);
        return why.isEmpty() || verdict.outcome() == Outcome.PASSES ? said : said + ": " + String.join("; ", why);
    }

    private static List<String> why(Judgement judgement, Verdict verdict) {
        if (verdict.conformity() == null) {
            return Reporting.missing(verdict);
        }
        Account account = Account.of(verdict.check().requirement(), judgement.frame(verdict.check()));
        return account.reasons().isEmpty() ? List.of("it requires " + account.requirement()) : account.reasons();
    }
}
