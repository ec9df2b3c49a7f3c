package io.github.leafproof.examples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * An archive as large as one likes, made from the bench's own sheets: nine in ten of the first look, the others of its other
 * procedures; numbers a little otherwise, leaves one larger or smaller, now and then a yes for a no, one sheet in five
 * hundred torn. The same number gives the same sheet every time.
 */
public final class GeneratedArchive {
    private static final long SEED = 20_260_304;

    /** The leaves of the bench's tray, thinnest first; its pins are not touched. */
    private static final List<String> LEAVES =
            List.of("0.03 mm", "0.04 mm", "0.05 mm", "0.06 mm", "0.08 mm", "0.10 mm");

    private static final Pattern LEAF = Pattern.compile("(\"leaf\": \")(0\\.[01]\\d mm)\"");
    private static final Pattern NUMBER = Pattern.compile("(\"value\": \")(-?\\d+(?:\\.\\d+)?)( [^\"]+\")");
    private static final Pattern YES_OR_NO = Pattern.compile("(\"value\": )(true|false)");
    private static final Pattern SERIAL = Pattern.compile("(\"serial\": \")[^\"]*\"");
    private static final Pattern NAME = Pattern.compile("(\"sheet\": \")[^\"]*\"");

    private static final String FIRST_LOOK = "\"procedure\": \"first_look\"";

    private final List<String> firstLooks;
    private final List<String> others;

    private GeneratedArchive(List<String> sheets) {
        this.firstLooks =
                sheets.stream().filter(sheet -> sheet.contains(FIRST_LOOK)).toList();
        this.others =
                sheets.stream().filter(sheet -> !sheet.contains(FIRST_LOOK)).toList();
    }

    /** An archive made from the sheets of a bench. */
    public static GeneratedArchive of(Path bench) throws IOException {
        try (Stream<Path> files = Files.list(bench.resolve("sheets"))) {
            return new GeneratedArchive(files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .map(GeneratedArchive::oneLine)
                    .toList());
        }
    }

    private static String oneLine(Path file) {
        try {
            // Cards and trays are copied beside the archive.
            return Files.readString(file).replaceAll("\\s*\\n\\s*", " ").strip().replace("\"../", "\"");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** So many sheets, each in a line. */
    public Stream<String> lines(int howMany) {
        return IntStream.range(0, howMany).mapToObj(this::line);
    }

    private String line(int number) {
        SplittableRandom random = new SplittableRandom(SEED + number);
        List<String> sheets = random.nextInt(10) == 0 ? others : firstLooks;
        String sheet = sheets.get(random.nextInt(sheets.size()));
        sheet = NAME.matcher(sheet).replaceFirst("$1" + "kept-" + number + "\"");
        sheet = SERIAL.matcher(sheet).replaceFirst("$1" + "Q15-" + (100_000 + number) + "\"");
        sheet = LEAF.matcher(sheet)
                .replaceAll(
                        found -> Matcher.quoteReplacement(found.group(1) + neighbour(found.group(2), random) + "\""));
        sheet = NUMBER.matcher(sheet)
                .replaceAll(found -> Matcher.quoteReplacement(
                        found.group(1) + jittered(new BigDecimal(found.group(2)), random) + found.group(3)));
        sheet = YES_OR_NO
                .matcher(sheet)
                .replaceAll(found -> found.group(1)
                        + (random.nextInt(300) == 0 ? !Boolean.parseBoolean(found.group(2)) : found.group(2)));
        return random.nextInt(500) == 0 ? sheet.substring(0, sheet.length() / 2) : sheet;
    }

    private static String neighbour(String leaf, SplittableRandom random) {
        int at = LEAVES.indexOf(leaf);
        int step = random.nextInt(10);
        int moved = step == 0 ? at - 1 : step == 1 ? at + 1 : at;
        return at < 0 ? leaf : LEAVES.get(Math.max(0, Math.min(LEAVES.size() - 1, moved)));
    }

    /** A tenth more or less at most, with as many digits as before. */
    private static String jittered(BigDecimal number, SplittableRandom random) {
        BigDecimal factor = BigDecimal.valueOf(random.nextInt(-100, 101), 3).add(BigDecimal.ONE);
        return number.multiply(factor)
                .setScale(Math.max(0, number.scale()), RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    /** Writes the archive, and the bench's cards and trays beside it. */
    public Path write(Path bench, Path folder, int howMany) throws IOException {
        for (String kind : List.of("cards", "trays")) {
            Files.createDirectories(folder.resolve(kind));
            for (Path file : Project.files(bench.resolve(kind))) {
                Files.write(folder.resolve(kind).resolve(String.valueOf(file.getFileName())), Files.readAllBytes(file));
            }
        }
        Path archive = folder.resolve("kept.jsonl");
        try (Writer out = Files.newBufferedWriter(archive, StandardCharsets.UTF_8);
                Stream<String> lines = lines(howMany)) {
            for (String line : (Iterable<String>) lines::iterator) {
                out.write(line);
                out.write('\n');
            }
        }
        return archive;
    }

    /** Takes the folder of the bench, the folder to write to, and the number of sheets. */
    public static void main(String[] arguments) throws IOException {
        Path bench = Path.of(arguments[0]);
        of(bench).write(bench, Path.of(arguments[1]), Integer.parseInt(arguments[2]));
    }
}
