package io.github.leafproof.dsl.seal;

import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.RawFile;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Seal;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.Signature;
import java.security.interfaces.EdECPrivateKey;
import java.security.spec.NamedParameterSpec;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;

/** The private half of a shop's key: whoever has it can seal reports in the shop's name. */
public final class SigningKey {

    static final String ALGORITHM = "Ed25519";

    private final PrivateKey key;
    private final VerifyingKey verifyingKey;

    private SigningKey(PrivateKey key, PublicKey publicHalf) {
        this.key = key;
        this.verifyingKey = new VerifyingKey(publicHalf);
    }

    /** A new key, by the platform's own source of chance. */
    public static SigningKey generate() {
        try {
            KeyPair pair = KeyPairGenerator.getInstance(ALGORITHM).generateKeyPair();
            return new SigningKey(pair.getPrivate(), pair.getPublic());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform of this age has Ed25519", e);
        }
    }

    /** The key in a PEM file of PKCS#8 ({@code BEGIN PRIVATE KEY}), or why there is none. */
    public static Read<Document<SigningKey>> read(Path file) {
        return KeyFile.read(file, Pem.PRIVATE, SigningKey::of);
    }

    /** The key that these bytes of PKCS#8 (RFC 8410) are; empty where they are none. */
    static Optional<SigningKey> of(byte[] pkcs8) {
        try {
            PrivateKey key = KeyFactory.getInstance(ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(pkcs8));
            return Optional.of(new SigningKey(key, publicHalf(key)));
        } catch (GeneralSecurityException noSuchKey) {
            return Optional.empty();
        }
    }

    /**
     * The public half. A file need not hold it, and the platform computes one only for a pair that it makes: so it makes this
     * pair once more, from the 32 bytes that a private key is (RFC 8032, 5.1.5) in place of chance.
     */
    private static PublicKey publicHalf(PrivateKey key) throws GeneralSecurityException {
        byte[] secret = ((EdECPrivateKey) key).getBytes().orElseThrow();
        KeyPairGenerator generator = KeyPairGenerator.getInstance(ALGORITHM);
        generator.initialize(NamedParameterSpec.ED25519, new NoChance(secret));
        KeyPair again = generator.generateKeyPair();
        if (!Arrays.equals(((EdECPrivateKey) again.getPrivate()).getBytes().orElseThrow(), secret)) {
            throw new IllegalStateException("this platform makes Ed25519 keys in a way of its own");
        }
        return again.getPublic();
    }

    /** Gives the same bytes every time. */
    private static final class NoChance extends SecureRandom {
        private static final long serialVersionUID = 1L;
        private final byte[] bytes;

        NoChance(byte[] bytes) {
            this.bytes = bytes.clone();
        }

        @Override
        public void nextBytes(byte[] wanted) {
            System.arraycopy(bytes, 0, wanted, 0, wanted.length);
        }
    }

    /** Seals a report, of which these are the bytes. The same key and report give the same seal. */
    public Seal seal(byte[] report) {
        byte[] signature = sign(report);
        if (!verifyingKey.verifies(report, signature)) {
            throw new IllegalStateException("the platform does not verify what it has signed");
        }
        return new Seal(
                RawFile.of("", report).sha256(),
                verifyingKey.base64(),
                Base64.getEncoder().encodeToString(signature));
    }

    /** The 64 bytes of the signature. */
    byte[] sign(byte[] text) {
        try {
            Signature ed25519 = Signature.getInstance(ALGORITHM);
            ed25519.initSign(key);
            ed25519.update(text);
            return ed25519.sign();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("a key of the platform's own signs", e);
        }
    }

    /** The half that everybody may have. */
    public VerifyingKey verifyingKey() {
        return verifyingKey;
    }

    /** The key as a PEM file, which nobody but its owner may read. */
    public String pem() {
        return new Pem(Pem.PRIVATE, key.getEncoded()).text();
    }

    /** Never the key itself. */
    @Override
    public String toString() {
        return "private half of " + verifyingKey.fingerprint();
    }
}
