package io.axiswright.engine.topology;

/** What stands behind this discipline's remarks: geometry and counting, hardly any standard. */
final class Clauses {

    static final String ROUTE = "derived: measured way × factor + slack at both ends";
    static final String COUNT = "derived: counting against the catalogue's limits";
    static final String SEARCH = "derived: search over all layouts";
    static final String PRICE = "common practice, no source";
    static final String STOP = "ISO 11161 (span of control), from memory; IEC 60204-1, 9.2";

    private Clauses() {}
}
