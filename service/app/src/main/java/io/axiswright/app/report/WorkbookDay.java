package io.axiswright.app.report;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Makes a workbook bear a day instead of the moment it was written, so that the same bill is the same bytes. */
final class WorkbookDay {

    private static final String PROPERTIES = "docProps/core.xml";

    private WorkbookDay() {}

    /** The same workbook, made at the beginning of that day. */
    static byte[] set(byte[] workbook, LocalDate day) throws IOException {
        var bytes = new ByteArrayOutputStream(workbook.length);
        try (var in = new ZipInputStream(new ByteArrayInputStream(workbook));
                var out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                var dated = new ZipEntry(entry.getName());
                dated.setTimeLocal(day.atStartOfDay());
                out.putNextEntry(dated);
                byte[] content = in.readAllBytes();
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
