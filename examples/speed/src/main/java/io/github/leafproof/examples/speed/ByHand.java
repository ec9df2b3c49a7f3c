package io.github.leafproof.examples.speed;

/** The rules as a programmer would write them for this one job. What all others are measured by. */
public final class ByHand implements Contestant<Look> {

    private final double lashMax;

    public ByHand(double lashMax) {
        this.lashMax = lashMax;
    }

    @Override
    public Look bound(Look look) {
        return look;
    }

    @Override
    public void judge(Look look, Verdicts into) {
        boolean cold = Math.abs(look.head() - look.room()) <= 5;
        into.set(Verdicts.COLD, yes(cold));
        into.set(Verdicts.LASH_INTAKE, cold ? lash(look.thinIntake(), look.thickIntake()) : Verdicts.BLOCKED);
        into.set(Verdicts.LASH_EXHAUST, cold ? lash(look.thinExhaust(), look.thickExhaust()) : Verdicts.BLOCKED);
        double datum = look.arm().equals("metal") ? 0 : 1;
        into.set(Verdicts.RECESS, within(look.recess(), 0.05, datum - 0.2, datum + 0.2));
        into.set(Verdicts.NEEDLE, within(look.needle(), 0.05, 2.75, 3.25));
        into.set(Verdicts.OPENING, within(look.opening(), 0.01, 0.70, 0.85));
        into.set(Verdicts.PRIME, yes(look.drawn() && look.retreat() <= 2));
        into.set(Verdicts.FASTENERS, yes(look.damaged() == 0));
        into.set(Verdicts.BOX, yes(look.found().containsAll(Look.BOX)));
        into.set(Verdicts.COMPRESSION, yes(look.compression() >= 2));
        into.set(Verdicts.COVERS, yes(look.coversDry()));
        into.set(Verdicts.RELEASE, release(into));
    }

    private static int yes(boolean holds) {
        return holds ? Verdicts.PASSES : Verdicts.FAILS;
    }

    private int lash(boolean thin, boolean thick) {
        double low = thin ? 0.050 : 0;
        double high = thick ? Double.POSITIVE_INFINITY : 0.110;
        if (low >= 0.03 && high <= lashMax) {
            return Verdicts.PASSES;
        }
        return low > lashMax || high < 0.03 ? Verdicts.FAILS : Verdicts.OPEN;
    }

    private static int within(double x, double u, double lower, double upper) {
        double p = Verdicts.phi((upper - x) / u) - Verdicts.phi((lower - x) / u);
        if (p >= 0.95) {
            return Verdicts.PASSES;
        }
        return p <= 0.05 ? Verdicts.FAILS : Verdicts.OPEN;
    }

    private static int release(Verdicts of) {
        boolean blocked = false;
        boolean bad = false;
        for (int check = 0; check < Verdicts.RELEASE; check++) {
            int verdict = of.get(check);
            blocked |= verdict == Verdicts.BLOCKED;
            bad |= verdict == Verdicts.FAILS || verdict == Verdicts.OPEN;
        }
        if (blocked) {
            return Verdicts.UNFINISHED;
        }
        boolean critical = of.get(Verdicts.LASH_INTAKE) == Verdicts.FAILS
                || of.get(Verdicts.LASH_EXHAUST) == Verdicts.FAILS
                || of.get(Verdicts.PRIME) == Verdicts.FAILS
                || of.get(Verdicts.COMPRESSION) == Verdicts.FAILS;
        if (critical) {
            return Verdicts.REJECT;
        }
        return bad ? Verdicts.HOLD : Verdicts.READY;
    }
}
