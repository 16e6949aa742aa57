package io.axiswright.engine.numeric;

import com.google.ortools.Loader;

/** Loads the native library of the exact solver (OR-Tools), once. */
public final class NativeSolver {

    private NativeSolver() {}

    /** Whether the exact solver can be used on this machine; the first call loads it. */
    public static boolean available() {
        return Holder.AVAILABLE;
    }

    /** Initialised by the class loader: once, safely from every thread, only when asked for. */
    private static final class Holder {
        static final boolean AVAILABLE = load();

        private Holder() {}

        /** Where no library fits the machine the plain-Java solver answers alone, so a failure to load is no fault. */
        private static boolean load() {
            try {
                Loader.loadNativeLibraries();
                return true;
            } catch (LinkageError | RuntimeException missing) {
                return false;
            }
        }
    }
}
