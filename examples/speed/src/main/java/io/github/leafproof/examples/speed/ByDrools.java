package io.github.leafproof.examples.speed;

import java.util.List;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.runtime.ClassObjectFilter;
import org.kie.api.runtime.KieContainer;
import org.kie.api.runtime.KieSession;

/** Drools keeps facts in a working memory and lets rules match them. */
public final class ByDrools implements Contestant<ByDrools.Bench> {

    private final KieContainer rules;
    private final double lashMax;

    public ByDrools(double lashMax) {
        this.lashMax = lashMax;
        this.rules = compiled(Texts.ofCommonWork("drl"));
    }

    static KieContainer compiled(String text) {
        KieServices services = KieServices.Factory.get();
        KieFileSystem files = services.newKieFileSystem();
        files.write("src/main/resources/common_work.drl", text);
        KieBuilder builder = services.newKieBuilder(files).buildAll();
        if (builder.getResults().hasMessages(Message.Level.ERROR)) {
            throw new IllegalStateException(builder.getResults().toString());
        }
        return services.newKieContainer(builder.getKieModule().getReleaseId());
    }

    /** One verdict, once it is found; of check 11, the release. */
    public static final class Found {
        private final int check;
        private final int verdict;

        public Found(int check, int verdict) {
            this.check = check;
            this.verdict = verdict;
        }

        public int getCheck() {
            return check;
        }

        public int getVerdict() {
            return verdict;
        }
    }

    /** The findings at one engine as a fact: what rules match has names that begin with get and is. */
    public static final class Bench {
        private final Look look;
        private final double lashMax;
        private final List<Gap> gaps;
        private final List<Reading> readings;

        Bench(Look look, double lashMax) {
            this.look = look;
            this.lashMax = lashMax;
            this.gaps = List.of(
                    new Gap(Verdicts.LASH_INTAKE, look.thinIntake(), look.thickIntake()),
                    new Gap(Verdicts.LASH_EXHAUST, look.thinExhaust(), look.thickExhaust()));
            double datum = look.arm().equals("metal") ? 0 : 1;
            this.readings = List.of(
                    new Reading(Verdicts.RECESS, look.recess(), 0.05, datum - 0.2, datum + 0.2),
                    new Reading(Verdicts.NEEDLE, look.needle(), 0.05, 2.75, 3.25),
                    new Reading(Verdicts.OPENING, look.opening(), 0.01, 0.70, 0.85));
        }

        public double getLashMax() {
            return lashMax;
        }

        public double getDegreesApart() {
            return Math.abs(look.head() - look.room());
        }

        public List<Gap> getGaps() {
            return gaps;
        }

        public List<Reading> getReadings() {
            return readings;
        }

        public boolean isDrawn() {
            return look.drawn();
        }

        public double getRetreat() {
            return look.retreat();
        }

        public int getDamaged() {
            return look.damaged();
        }

        public boolean isComplete() {
            return look.found().containsAll(Look.BOX);
        }

        public int getCompression() {
            return look.compression();
        }

        public boolean isCoversDry() {
            return look.coversDry();
        }

        /** What two leaves show of a gap. */
        public static final class Gap {
            private final int check;
            private final double low;
            private final double high;

            Gap(int check, boolean thin, boolean thick) {
                this.check = check;
                this.low = thin ? 0.050 : 0;
                this.high = thick ? Double.POSITIVE_INFINITY : 0.110;
            }

            public int getCheck() {
                return check;
            }

            public double getLow() {
                return low;
            }

            public double getHigh() {
                return high;
            }
        }

        /** A reading between limits. */
        public static final class Reading {
            private final int check;
            private final double reading;
            private final double u;
            private final double lower;
            private final double upper;

            Reading(int check, double reading, double u, double lower, double upper) {
                this.check = check;
                this.reading = reading;
                this.u = u;
                this.lower = lower;
                this.upper = upper;
            }

            public int getCheck() {
                return check;
            }

            public double getWithin() {
                return Verdicts.phi((upper - reading) / u) - Verdicts.phi((lower - reading) / u);
            }
        }
    }

    @Override
    public Bench bound(Look look) {
        return new Bench(look, lashMax);
    }

    @Override
    public void judge(Bench look, Verdicts into) {
        KieSession session = rules.newKieSession();
        try {
            session.insert(look);
            session.fireAllRules();
            for (Object found : session.getObjects(new ClassObjectFilter(Found.class))) {
                into.set(((Found) found).check, ((Found) found).verdict);
            }
        } finally {
            session.dispose();
        }
    }
}
