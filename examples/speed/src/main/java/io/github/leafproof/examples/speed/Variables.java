package io.github.leafproof.examples.speed;

import java.util.HashMap;
import java.util.Map;

/** The findings as named variables, for languages that know them so. */
final class Variables {
    private Variables() {}

    static Map<String, Object> of(Look look, double lashMax) {
        Map<String, Object> variables = new HashMap<>();
        variables.put("head", look.head());
        variables.put("room", look.room());
        variables.put("thinIntake", look.thinIntake());
        variables.put("thickIntake", look.thickIntake());
        variables.put("thinExhaust", look.thinExhaust());
        variables.put("thickExhaust", look.thickExhaust());
        variables.put("arm", look.arm());
        variables.put("recess", look.recess());
        variables.put("needle", look.needle());
        variables.put("opening", look.opening());
        variables.put("drawn", look.drawn());
        variables.put("retreat", look.retreat());
        variables.put("found", look.found());
        variables.put("damaged", look.damaged());
        variables.put("compression", look.compression());
        variables.put("coversDry", look.coversDry());
        variables.put("box", Look.BOX);
        variables.put("lashMax", lashMax);
        return variables;
    }
}
