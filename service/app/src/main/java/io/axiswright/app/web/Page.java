package io.axiswright.app.web;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/**
 * A part of a collection.
 *
 * @param items its elements, in the collection's order
 * @param self address of this page
 * @param first address of the first page
 * @param next address of the next page; absent on the last one
 */
public record Page<T>(
        List<T> items, String self, String first, @Nullable String next) {

    /**
     * A page of the request being answered.
     *
     * @param rows the rows read, one more than the limit if there is a next page
     * @param limit the page's limit
     * @param cursor where a row stands
     * @param item a row as the caller sees it
     */
    public static <R, T> Page<T> of(List<R> rows, Limit limit, Function<R, Cursor> cursor, Function<R, T> item) {
        List<R> shown = rows.subList(0, Math.min(limit.value(), rows.size()));
        String next = shown.size() < rows.size() ? address(cursor.apply(shown.getLast())) : null;
        String self = ServletUriComponentsBuilder.fromCurrentRequest().build().toUriString();
        return new Page<>(shown.stream().map(item).toList(), self, address(null), next);
    }

    // the request's address is encoded already, and a cursor needs no encoding
    private static String address(@Nullable Cursor cursor) {
        var uri = ServletUriComponentsBuilder.fromCurrentRequest().replaceQueryParam("cursor");
        return (cursor == null ? uri : uri.queryParam("cursor", cursor.text()))
                .build()
                .toUriString();
    }

    /** The answer with this page, its links also in the Link header (RFC 8288). */
    public ResponseEntity<Page<T>> answer() {
        return ResponseEntity.ok().header(HttpHeaders.LINK, links()).body(this);
    }

    /** Its links as the Link header carries them (RFC 8288). */
    public String links() {
        return link(first, "first") + (next == null ? "" : ", " + link(next, "next"));
    }

    private static String link(String address, String relation) {
        return "<%s>; rel=\"%s\"".formatted(address, relation);
    }
}
