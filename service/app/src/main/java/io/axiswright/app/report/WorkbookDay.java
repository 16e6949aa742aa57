package io.axiswright.app.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * Makes a workbook bear a day instead of the moment it was written, so that the same bill is the same bytes. It is read by its
 * directory: a stream of the JDK takes the sizes behind larger sheets, which are of 64 bits, for ones of 32.
 */
final class WorkbookDay {

    private static final String PROPERTIES = "docProps/core.xml";

    private WorkbookDay() {}

    /** The same workbook, made at the beginning of that day. */
    static byte[] set(byte[] workbook, LocalDate day) throws IOException {
        var bytes = new ByteArrayOutputStream(workbook.length);
        try (var in = ZipFile.builder().setByteArray(workbook).get();
                var out = new ZipOutputStream(bytes)) {
            for (ZipArchiveEntry entry : Collections.list(in.getEntries())) {
                var dated = new ZipEntry(entry.getName());
                dated.setTimeLocal(day.atStartOfDay());
                out.putNextEntry(dated);
                byte[] content = in.getInputStream(entry).readAllBytes();
                out.write(entry.getName().equals(PROPERTIES) ? created(content, day) : content);
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] created(byte[] properties, LocalDate day) {
        return new String(properties, StandardCharsets.UTF_8)
                .replaceAll(">[^<]*</dcterms:created>", ">" + day + "T00:00:00Z</dcterms:created>")
                .getBytes(StandardCharsets.UTF_8);
    }
}
