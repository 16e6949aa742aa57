package io.axiswright.app.embedded;

import java.nio.file.Path;

/** Another running service works on the same data directory. */
final class DataDirectoryInUse extends RuntimeException {

    private static final long serialVersionUID = 1L;

    DataDirectoryInUse(Path directory, String owner) {
        super("The data directory %s is in use by another running service%s."
                .formatted(directory, owner.isBlank() ? "" : " (process " + owner + ")"));
    }
}
