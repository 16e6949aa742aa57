package io.axiswright.app.project;

import io.axiswright.app.catalogues.Catalogues;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.comparison.Comparison;
import io.axiswright.engine.comparison.ComparisonRequest;
import io.axiswright.engine.comparison.ComparisonResult;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.topology.SearchGate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Compares revisions, with each other or with what is sent, and keeps the last few answers: neither a revision nor a version of a
 * catalogue ever changes, and page after page of one comparison would otherwise be worked out anew.
 */
@Component
class Comparisons {

    /** Enough for 50 changes one by one and 20 trials of several; what is beyond it the answer names. */
    private static final int STUDY_BUDGET = 120;

    private static final int KEPT = 16;

    /** What is compared; the second side by the number of a revision, or by the digest of a request that is not stored. */
    private record Pair(UUID project, int from, String to) {}

    private final Catalogues catalogues;
    private final Comparison comparison;
    private final Map<Pair, ComparisonResult> kept = new LinkedHashMap<>(KEPT, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Pair, ComparisonResult> eldest) {
            return size() > KEPT;
        }
    };

    Comparisons(Catalogues catalogues, SearchGate gate) {
        this.catalogues = catalogues;
        this.comparison = new Comparison(gate);
    }

    /** Of two revisions of one project. Two callers who ask for the same at the same time may both work it out. */
    ComparisonResult of(UUID project, StoredRevision first, StoredRevision second) {
        return of(new Pair(project, first.number(), Integer.toString(second.number())), first, () -> request(second));
    }

    /**
     * Of a revision with a design that is not stored.
     *
     * @param digest the digest of the request that it came with
     */
    ComparisonResult with(UUID project, StoredRevision first, StudyRequest second, String digest) {
        return of(new Pair(project, first.number(), digest), first, () -> second);
    }

    private ComparisonResult of(Pair pair, StoredRevision first, Supplier<StudyRequest> second) {
        ComparisonResult known = known(pair);
        return known != null
                ? known
                : keep(pair, comparison.compare(new ComparisonRequest(request(first), second.get(), STUDY_BUDGET)));
    }

    private @Nullable ComparisonResult known(Pair pair) {
        synchronized (kept) {
            return kept.get(pair);
        }
    }

    private ComparisonResult keep(Pair pair, ComparisonResult result) {
        synchronized (kept) {
            kept.put(pair, result);
        }
        return result;
    }

    private StudyRequest request(StoredRevision revision) {
        return new StudyRequest(
                revision.codeBasis(),
                catalogues.require(revision.catalogue(), "/catalogue"),
                revision.design(),
                CatalogueSource.STORED);
    }
}
