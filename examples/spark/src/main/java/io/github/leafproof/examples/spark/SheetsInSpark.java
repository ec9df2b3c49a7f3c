package io.github.leafproof.examples.spark;

import io.github.leafproof.dsl.ProcedureSource;
import io.github.leafproof.dsl.archive.Cabinet;
import io.github.leafproof.dsl.archive.Filed;
import io.github.leafproof.dsl.archive.Replay;
import io.github.leafproof.dsl.archive.ReplayJson;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.SheetLine;
import java.io.Serializable;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import scala.Tuple2;

/**
 * What is sent to every machine: the two revisions as texts, and the cards and trays as bytes. Each compiles a procedure
 * once, and makes of each line of the archive the line that {@code leafproof replay --json} makes of it.
 *
 * @param archive what the lines call their file
 * @param files cards and trays, by the names that the sheets give them
 */
record SheetsInSpark(String archive, ProcedureSource old, ProcedureSource now, Map<String, byte[]> files)
        implements MapPartitionsFunction<Tuple2<byte[], Long>, String>, Serializable {

    private static final long serialVersionUID = 1L;

    SheetsInSpark {
        // Not Map.copyOf: Spark's other way to send things makes maps of this kind again, and not of that.
        files = new HashMap<>(files);
    }

    /** The results of some lines, in their order; with each line comes its number, counted from 0. */
    @Override
    public Iterator<String> call(Iterator<Tuple2<byte[], Long>> lines) {
        Replay replay = Replay.of(old.procedure(), now.procedure(), Cabinet.holding(files), UnitSystem.METRIC);
        Iterable<Tuple2<byte[], Long>> all = () -> lines;
        return StreamSupport.stream(all.spliterator(), false)
                .map(line -> SheetLine.of(archive, line._2() + 1, line._1()))
                .filter(line -> !line.isBlank())
                .map(line -> ReplayJson.of(replay.compare(Filed.of(line, Path.of(""))))
                        .stripTrailing())
                .iterator();
    }
}
