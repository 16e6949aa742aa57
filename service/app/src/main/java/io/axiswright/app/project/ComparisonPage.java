package io.axiswright.app.project;

import io.axiswright.app.web.Cursor;
import io.axiswright.app.web.Limit;
import io.axiswright.app.web.Page;
import io.axiswright.engine.comparison.ComparisonResult;
import io.axiswright.engine.comparison.Consequence;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;

/**
 * What one answer holds of a comparison: all of it, or a page of its consequences with whatever else there is.
 *
 * @param comparison the comparison with the consequences of this page
 * @param next address of the next page; null on the last one, and where no limit is asked for
 * @param links the page's links as the Link header carries them; null where no limit is asked for
 */
record ComparisonPage(
        ComparisonResult comparison,
        @Nullable String next,
        @Nullable String links) {

    /** The page of the request being answered. */
    static ComparisonPage of(ComparisonResult whole, @Nullable Cursor cursor, @Nullable Limit limit) {
        List<Consequence> all = whole.consequences();
        int start = cursor == null ? 0 : Math.clamp(cursor.number(), 0, all.size());
        if (limit == null) {
            return new ComparisonPage(start == 0 ? whole : whole.with(all.subList(start, all.size())), null, null);
        }
        Page<Consequence> page = Page.of(
                IntStream.range(start, all.size()).boxed().toList(), limit, place -> Cursor.at(place + 1), all::get);
        return new ComparisonPage(whole.with(page.items()), page.next(), page.links());
    }

    /** The answer with a body that shows this page. */
    <T> ResponseEntity<T> answer(T body) {
        var answer = ResponseEntity.ok();
        return (links == null ? answer : answer.header(HttpHeaders.LINK, links)).body(body);
    }
}
