package io.github.leafproof.dsl.seal;

import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.RawFile;
import io.github.leafproof.inspection.record.Read;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;

/** The public half of a shop's key: everybody may have it, and tell by it what the shop sealed. */
public final class VerifyingKey {

    private final PublicKey key;

    VerifyingKey(PublicKey key) {
        this.key = key;
    }

    /** The key in a PEM file ({@code BEGIN PUBLIC KEY}), or why there is none. */
    public static Read<Document<VerifyingKey>> read(Path file) {
        return KeyFile.read(file, Pem.PUBLIC, VerifyingKey::of);
    }

    /** The key that these bytes of a SubjectPublicKeyInfo (RFC 8410) are; empty where they are none, or written oddly. */
    static Optional<VerifyingKey> of(byte[] info) {
        try {
            PublicKey key = KeyFactory.getInstance(SigningKey.ALGORITHM).generatePublic(new X509EncodedKeySpec(info));
            return Optional.of(new VerifyingKey(key)).filter(made -> Arrays.equals(key.getEncoded(), info));
        } catch (GeneralSecurityException noSuchKey) {
            return Optional.empty();
        }
    }

    /** Whether this key's private half signed these bytes. */
    public boolean verifies(byte[] signed, byte[] signature) {
        try {
            Signature ed25519 = Signature.getInstance(SigningKey.ALGORITHM);
            ed25519.initVerify(key);
            ed25519.update(signed);
            return ed25519.verify(signature);
        } catch (GeneralSecurityException noSignature) {
            // So it is with one of another length, or a key that is no point of the curve.
            return false;
        }
    }

    /**
     * What people compare over the telephone: the SHA-256 of the key's SubjectPublicKeyInfo, 64 lower-case hexadecimal
     * digits.
     */
    public String fingerprint() {
        return RawFile.of("", key.getEncoded()).sha256();
    }

    /** The key as a seal has it. */
    public String base64() {
        return Base64.getEncoder().encodeToString(key.getEncoded());
    }

    /** The key as a PEM file. */
    public String pem() {
        return new Pem(Pem.PUBLIC, key.getEncoded()).text();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof VerifyingKey same && same.base64().equals(base64());
    }

    @Override
    public int hashCode() {
        return base64().hashCode();
    }

    @Override
    public String toString() {
        return fingerprint();
    }
}
