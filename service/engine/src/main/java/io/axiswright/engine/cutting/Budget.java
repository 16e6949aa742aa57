package io.axiswright.engine.cutting;

/** Work counted in steps instead of time, so that the same pieces are cut alike on every machine. */
final class Budget {

    private long left;

    Budget(long steps) {
        this.left = steps;
    }

    void use(long steps) {
        left -= steps;
    }

    /** Nothing more is to be tried. */
    void end() {
        left = 0;
    }

    boolean spent() {
        return left <= 0;
    }
}
