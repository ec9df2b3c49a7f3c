package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Target;
import java.util.List;

/**
 * A declaration where it counts: in which stage, behind which gates of that stage, in which round of its loops.
 *
 * @param stage the title of the stage, or empty
 * @param stageGates the gates that the stage waits for
 */
record Item<D extends Declaration>(D declaration, Env env, String stage, List<Target> stageGates) {

    Item {
        stageGates = List.copyOf(stageGates);
    }

    <E extends Declaration> Item<E> of(E other) {
        return new Item<>(other, env, stage, stageGates);
    }
}
