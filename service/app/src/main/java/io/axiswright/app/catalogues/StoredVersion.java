package io.axiswright.app.catalogues;

/**
 * What storing a catalogue led to.
 *
 * @param entry the version that now holds it
 * @param created whether it is new; false if the latest version held the same already
 */
public record StoredVersion(VersionEntry entry, boolean created) {}
