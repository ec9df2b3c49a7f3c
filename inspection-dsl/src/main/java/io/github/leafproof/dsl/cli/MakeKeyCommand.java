package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.seal.KeyPairFiles;
import io.github.leafproof.dsl.seal.SigningKey;
import io.github.leafproof.inspection.record.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Makes a pair of keys to seal reports with. */
@Command(
        name = "make-key",
        description = {
            "Makes a pair of keys, to seal reports and to verify them.",
            "",
            "The private one seals (inspect --sign), the public one verifies (verify-report --key)."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {"", "Example:", "  leafproof make-key shop", "", "Exit codes: 0 made, 2 bad input, 70 a bug of ours."
        })
final class MakeKeyCommand implements Callable<Integer> {

    @Parameters(
            paramLabel = "NAME",
            description = "What to call the two files: NAME.private.pem, which only you may read, and"
                    + " NAME.public.pem. Neither is written over another file.")
    private Path name = Path.of("");

    private final Console console;

    MakeKeyCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (String.valueOf(name.getFileName()).isBlank()) {
            console.err().print("""
                    leafproof: a key needs a name
                       help: shop, for example, for shop.private.pem and shop.public.pem
                    """);
            return Exit.BAD_INPUT.code();
        }
        KeyPairFiles files = KeyPairFiles.of(name);
        SigningKey key = SigningKey.generate();
        List<Problem> problems = files.write(key);
        console.complainOfFiles(problems);
        if (!problems.isEmpty()) {
            return Exit.BAD_INPUT.code();
        }
        console.print(files.privateKey() + " seals: keep it, and a copy of it, where nobody else can read it\n"
                + files.publicKey() + " verifies: give it to everybody who gets reports\n"
                + "fingerprint " + key.verifyingKey().fingerprint() + "\n");
        if (!files.isPrivate()) {
            console.err()
                    .print(files.privateKey() + ": others may be able to read this file here\n"
                            + "   help: move it to a place that only you can read\n");
        }
        return Exit.GOOD.code();
    }
}
