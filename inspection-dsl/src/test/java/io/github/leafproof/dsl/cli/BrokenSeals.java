package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.seal.Keys;
import io.github.leafproof.dsl.seal.SigningKey;
import io.github.leafproof.inspection.record.SealFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What goes wrong with keys and seals, for the lessons: on a copy of the bench, with a key that everybody has. */
record BrokenSeals(Path here) {

    private static final String OTHER_KEY = """
            -----BEGIN PUBLIC KEY-----
            MCowBQYDK2VwAyEA11qYAYKxCrfVS/7TyWQHOg7hcvPapiMlrwIaaPcHURo=
            -----END PUBLIC KEY-----
            """;

    String said(String code) throws IOException {
        Files.writeString(here.resolve("shop.private.pem"), Keys.PRIVATE_PEM);
        Files.writeString(here.resolve("shop.public.pem"), Keys.PUBLIC_PEM);
        inspect("shop.private.pem");
        return switch (code) {
            case "LP785" -> inspect("shop.public.pem");
            case "LP786" -> Terminal.run("make-key", path("shop")).err();
            case "LP787" -> {
                Files.delete(here.resolve("report.json.seal"));
                yield verify();
            }
            case "LP788" -> changed("report.json.seal", "leafproof-seal/1", "leafproof-seal/9");
            case "LP789" -> changed("report.json", "\"release\": \"hold\"", "\"release\": \"ready\"");
            case "LP790" -> changed("report.json.seal", "\"sha256\": ", "\"sha256\":  ");
            case "LP791" -> {
                Files.writeString(here.resolve("shop.public.pem"), OTHER_KEY);
                yield verify();
            }
            case "LP792" -> changed("trays/bench-one.json", "2027", "2028");
            case "LP793" -> {
                Files.delete(here.resolve("sheets/0419-tank.json"));
                yield verify();
            }
            case "LP794" -> resealed("\"release\": \"hold\"", "\"release\": \"ready\"");
            case "LP795" -> resealed("common practice", "the usual practice");
            default -> throw new IllegalArgumentException("no seal breaks with " + code);
        };
    }

    private String path(String name) {
        return here.resolve(name).toString();
    }

    private String inspect(String key) {
        return Terminal.run(
                        "inspect",
                        path("tank.inspection"),
                        "--sheet",
                        path("sheets/0419-tank.json"),
                        "--json",
                        path("report.json"),
                        "--sign",
                        path(key))
                .err();
    }

    private String verify() {
        return Terminal.run(
                        "verify-report", path("report.json"), "--inputs", path(""), "--key", path("shop.public.pem"))
                .err();
    }

    private void replace(String file, String written, String instead) throws IOException {
        String text = Files.readString(here.resolve(file));
        assertThat(text).contains(written);
        Files.writeString(here.resolve(file), text.replace(written, instead));
    }

    private String changed(String file, String written, String instead) throws IOException {
        replace(file, written, instead);
        return verify();
    }

    /** What the shop itself sealed, though no program wrote it. */
    private String resealed(String written, String instead) throws IOException {
        replace("report.json", written, instead);
        SigningKey key =
                SigningKey.read(here.resolve("shop.private.pem")).orElseThrow().content();
        byte[] report = Files.readAllBytes(here.resolve("report.json"));
        assertThat(SealFile.write(here.resolve("report.json.seal"), key.seal(report)))
                .isEmpty();
        return verify();
    }
}
