package io.axiswright.app.catalogues;

import java.time.Instant;

/**
 * A catalogue version without its document.
 *
 * @param name the catalogue's name
 * @param version its number, from 1
 * @param createdAt when it was stored
 * @param digest SHA-256 of its document
 */
public record VersionEntry(String name, int version, Instant createdAt, String digest) {}
