package io.github.leafproof.examples.spark;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.ProcedureSource;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.spark.api.java.function.MapFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoder;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import scala.Tuple2;

/** Judges an archive with a sheet in each line under two revisions of a procedure, on as many machines as Spark has. */
public final class ReplayAnArchive {
    private ReplayAnArchive() {}

    /**
     * Takes the old revision, the new one, the archive, and a folder that is not there yet, for the results. The cards and
     * trays lie in the archive's folder and below it.
     */
    public static void main(String[] arguments) throws IOException {
        Procedure old = Procedure.read(Path.of(arguments[0])).orElseThrow();
        Procedure now = Procedure.read(Path.of(arguments[1])).orElseThrow();
        Path archive = Path.of(arguments[2]);
        try (SparkSession spark =
                SparkSession.builder().appName("Leafproof replay").getOrCreate()) {
            results(spark, old, now, archive).write().text(arguments[3]);
            PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
            movements(spark, spark.read().textFile(arguments[3])).forEach(out::println);
        }
    }

    /** A line of JSON for each sheet, as {@code leafproof replay --json} writes them, in the order of the archive. */
    static Dataset<String> results(SparkSession spark, Procedure old, Procedure now, Path archive) throws IOException {
        Path folder = Objects.requireNonNull(archive.toAbsolutePath().getParent());
        SheetsInSpark sheets = new SheetsInSpark(
                String.valueOf(archive.getFileName()),
                ProcedureSource.of(old),
                ProcedureSource.of(now),
                filesBelow(folder));
        return numbered(spark, archive).mapPartitions(sheets, Encoders.STRING());
    }

    /** The lines as bytes, for a torn sheet may be no text, and their numbers from 0. */
    private static Dataset<Tuple2<byte[], Long>> numbered(SparkSession spark, Path archive) {
        Encoder<Tuple2<byte[], Long>> encoder = Encoders.tuple(Encoders.BINARY(), Encoders.LONG());
        Dataset<byte[]> lines = spark.read()
                .option("lineSep", "\n")
                .text(archive.toUri().toString())
                .selectExpr("CAST(value AS BINARY)")
                .map((MapFunction<Row, byte[]>) row -> row.getAs(0), Encoders.BINARY());
        return spark.createDataset(lines.javaRDD().zipWithIndex().rdd(), encoder);
    }

    /** What may be cards and trays; which of them a sheet names is asked when it is judged. */
    private static Map<String, byte[]> filesBelow(Path folder) throws IOException {
        Map<String, byte[]> files = new HashMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) all.filter(each -> each.toString().endsWith(".json"))::iterator) {
                files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        return files;
    }

    /** How many sheets came out how, and which releases moved where, a line each. */
    static List<String> movements(SparkSession spark, Dataset<String> results) {
        Dataset<Row> read = spark.read()
                .schema("result STRING, old STRUCT<release: STRING>, new STRUCT<release: STRING>")
                .json(results);
        Dataset<Row> counted = read.selectExpr(
                        "result",
                        "coalesce(old.release, 'not judged') AS before",
                        "coalesce(new.release, 'not judged') AS after")
                .selectExpr("CASE WHEN result = 'differs' AND before <> after"
                        + " THEN concat(before, ' → ', after) ELSE result END AS came_out")
                .groupBy("came_out")
                .count()
                .orderBy("came_out");
        return counted.map(
                        (MapFunction<Row, String>) row -> row.getString(0) + ": " + row.getLong(1), Encoders.STRING())
                .collectAsList();
    }
}
