package io.github.leafproof.examples.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * What was found at one engine: the common work that all engines of the comparison do. Lengths are in millimetres, temperatures
 * in degrees Celsius. The engine is invented, and so is every number.
 *
 * @param thinIntake whether the leaf of 0.050 mm passes at the intake valve
 * @param thickIntake whether the leaf of 0.110 mm passes there
 * @param arm what the throttle arm is made of: metal or plastic
 * @param recess how deep the low-speed needle stands, standard uncertainty 0.05 mm
 * @param needle turns of the high-speed needle, standard uncertainty 0.05
 * @param opening of the throttle at idle, standard uncertainty 0.01 mm
 * @param drawn whether fuel was drawn
 * @param retreat how far it falls back
 * @param compression by feel, from 0 to 4
 */
public record Look(
        double head,
        double room,
        boolean thinIntake,
        boolean thickIntake,
        boolean thinExhaust,
        boolean thickExhaust,
        String arm,
        double recess,
        double needle,
        double opening,
        boolean drawn,
        double retreat,
        List<String> found,
        int damaged,
        int compression,
        boolean coversDry) {

    /** What the box has to hold. */
    public static final List<String> BOX = List.of("engine", "exhaust", "glow plug", "feeler leaf", "manual");

    public Look {
        found = List.copyOf(found);
    }

    /** So many engines, the same for the same seed. About every third of each kind of finding is bad or doubtful. */
    public static List<Look> random(int number, long seed) {
        Random random = new Random(seed);
        List<Look> looks = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            looks.add(random(random));
        }
        return List.copyOf(looks);
    }

    private static Look random(Random random) {
        boolean plastic = random.nextBoolean();
        // No two temperatures differ by exactly the limit: what a last bit decides is no part of this work.
        double room = tenths(150, 250, random);
        double head = tenths(-70, 70, random) + room + 0.05;
        return new Look(
                round(head),
                room,
                often(random),
                !often(random),
                often(random),
                !often(random),
                plastic ? "plastic" : "metal",
                round((plastic ? 1 : 0) + tenths(-4, 4, random) + 0.003),
                round(3 + tenths(-4, 4, random) + 0.003),
                round(0.775 + tenths(-2, 2, random) / 2 + 0.003),
                often(random),
                round(Math.max(0, tenths(-30, 40, random)) + 0.05),
                box(random),
                often(random) ? 0 : 1 + random.nextInt(3),
                random.nextInt(5),
                often(random));
    }

    private static List<String> box(Random random) {
        List<String> found = new ArrayList<>(BOX);
        if (!often(random)) {
            found.remove(random.nextInt(found.size()));
        }
        return found;
    }

    private static boolean often(Random random) {
        return random.nextInt(3) > 0;
    }

    private static double tenths(int from, int to, Random random) {
        return (from + random.nextInt(to - from + 1)) / 10.0;
    }

    /** To a thousandth, so that the number is the one that its decimals say. */
    private static double round(double number) {
        return Math.round(number * 1000) / 1000.0;
    }
}
