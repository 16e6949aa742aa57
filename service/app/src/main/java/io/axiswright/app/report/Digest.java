package io.axiswright.app.report;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** Digests of what is sent, so that the caller can tell whether it arrived whole. */
final class Digest {

    private Digest() {}

    /** The value of the header {@code Repr-Digest} (RFC 9530, section 3). */
    static String header(byte[] bytes) {
        return "sha-256=:" + Base64.getEncoder().encodeToString(sha256(bytes)) + ":";
    }

    static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
