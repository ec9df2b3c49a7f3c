package io.github.leafproof.dsl.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Everything that is read stands out from what it stands on by 4.5 to 1, light and dark: Web Content Accessibility
 * Guidelines 2.2, success criterion 1.4.3 (level AA), with its definitions of contrast ratio and relative luminance.
 */
class ContrastTest {

    private static final Pattern COLOUR = Pattern.compile("--([a-z-]+): (#[0-9a-f]{3,6})\\b");

    /** The colours of one scheme: the first that the style sheet gives are light, the second dark. */
    private static Map<String, String> colours(boolean dark) {
        int end = Style.SHARED.indexOf("} }");
        int begin = Style.SHARED.indexOf("@media screen and (prefers-color-scheme: dark)");
        String rules = dark ? Style.SHARED.substring(begin, end) : Style.SHARED.substring(0, begin);
        Map<String, String> colours = new LinkedHashMap<>();
        Matcher each = COLOUR.matcher(rules);
        while (each.find()) {
            colours.put(each.group(1), each.group(2));
        }
        return colours;
    }

    private static double luminance(String colour) {
        String six = colour.length() == 7 ? colour : colour.replaceAll("([0-9a-f])", "$1$1");
        double[] rgb = new double[3];
        for (int i = 0; i < 3; i++) {
            double part = Integer.parseInt(six.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            rgb[i] = part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
    }

    private static double contrast(String one, String other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    @Test
    void the_measure_is_that_of_the_guidelines() {
        // Black on white is 21:1 by definition; #767676 is the lightest grey that passes on white (well known of the
        // guidelines).
        assertThat(contrast("#000", "#fff")).isEqualTo(21.0);
        assertThat(contrast("#767676", "#ffffff")).isBetween(4.5, 4.6);
        assertThat(contrast("#777777", "#ffffff")).isLessThan(4.5);
    }

    @Test
    void all_words_can_be_read_light_and_dark() {
        for (boolean dark : new boolean[] {false, true}) {
            Map<String, String> colours = colours(dark);
            assertThat(colours).containsKeys("ink", "quiet", "link", "passes", "not-applicable");
            for (String ground : new String[] {"paper", "wash"}) {
                colours.forEach((name, colour) -> {
                    if (!name.equals("paper") && !name.equals("wash") && !name.equals("rule")) {
                        assertThat(contrast(colour, Objects.requireNonNull(colours.get(ground))))
                                .as("--%s on --%s, dark: %s", name, ground, dark)
                                .isGreaterThanOrEqualTo(4.5);
                    }
                });
            }
        }
    }
}
