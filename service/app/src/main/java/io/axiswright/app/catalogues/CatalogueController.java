package io.axiswright.app.catalogues;

import io.axiswright.app.idempotency.Answer;
import io.axiswright.app.idempotency.IdempotencyKey;
import io.axiswright.app.idempotency.Once;
import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.NotFound;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.store.Documents;
import io.axiswright.app.web.Cursor;
import io.axiswright.app.web.EntityTag;
import io.axiswright.app.web.Limit;
import io.axiswright.app.web.Page;
import io.axiswright.engine.catalogue.Catalogue;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.time.Duration;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Catalogues and their versions over HTTP. */
@RestController
@RequestMapping("/v1/catalogues")
class CatalogueController {

    private static final UUID START = new UUID(0, 0);

    private final Once once;
    private final Catalogues catalogues;
    private final CatalogueHeads heads;
    private final CatalogueVersions versions;

    CatalogueController(Once once, Catalogues catalogues, CatalogueHeads heads, CatalogueVersions versions) {
        this.once = once;
        this.catalogues = catalogues;
        this.heads = heads;
        this.versions = versions;
    }

    /** Stores the catalogue as the next version of its name; 200 with the latest version if that says the same. */
    @PostMapping(produces = MediaType.APPLICATION_JSON_VALUE)
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = VersionSummary.class)))
    @Fails({ProblemKind.CONFLICT, ProblemKind.IDEMPOTENCY_KEY_REUSED})
    ResponseEntity<byte[]> storeCatalogue(
            @RequestBody Catalogue catalogue,
            @RequestHeader(name = IdempotencyKey.HEADER, required = false) @Nullable IdempotencyKey key) {
        return once.answer(
                        key,
                        Documents.write(catalogue),
                        keeping -> catalogues.store(catalogue, stored -> keeping.keep(answer(stored))))
                .entity();
    }

    private static Answer answer(StoredVersion stored) {
        VersionSummary summary = VersionSummary.of(stored.entry());
        HttpStatus status = stored.created() ? HttpStatus.CREATED : HttpStatus.OK;
        return new Answer(status.value(), summary.self(), summary.etag(), Documents.write(summary));
    }

    /** All catalogues, in the order they were first stored. */
    @GetMapping
    ResponseEntity<Page<CatalogueSummary>> listCatalogues(
            @RequestParam(required = false) @Nullable Cursor cursor,
            @RequestParam(defaultValue = Limit.DEFAULT) Limit limit) {
        var rows = heads.after(cursor == null ? START : cursor.position(), limit.plusOne());
        return Page.of(rows, limit, head -> new Cursor(head.id()), CatalogueSummary::of)
                .answer();
    }

    /** A catalogue's latest version and the list of all. */
    @GetMapping("/{name}")
    ResponseEntity<CatalogueOverview> getCatalogue(
            @PathVariable String name,
            @RequestParam(required = false) @Nullable Cursor cursor,
            @RequestParam(defaultValue = Limit.DEFAULT) Limit limit) {
        VersionEntry latest = heads.find(name)
                .flatMap(head -> versions.entry(name, head.latest()))
                .orElseThrow(() -> new NotFound("catalogue", name));
        var rows = versions.before(name, cursor == null ? Integer.MAX_VALUE : cursor.number(), limit.plusOne());
        var page = Page.of(rows, limit, entry -> Cursor.at(entry.version()), VersionSummary::of);
        return ResponseEntity.ok()
                .header(HttpHeaders.LINK, page.links())
                .body(new CatalogueOverview(VersionSummary.of(latest), page));
    }

    /** A version's document, byte for byte as stored. */
    @GetMapping(path = "/{name}/versions/{version}", produces = MediaType.APPLICATION_JSON_VALUE)
    @ApiResponse(responseCode = "200", content = @Content(schema = @Schema(implementation = Catalogue.class)))
    ResponseEntity<byte[]> getCatalogueVersion(@PathVariable String name, @PathVariable int version) {
        CatalogueVersion found = versions.find(name, version)
                .orElseThrow(() -> new NotFound("version", version + " of catalogue " + name));
        return ResponseEntity.ok()
                .eTag(new EntityTag(found.digest()).quoted())
                .cacheControl(
                        CacheControl.maxAge(Duration.ofDays(365)).cachePrivate().immutable())
                .contentType(MediaType.APPLICATION_JSON)
                .body(found.document());
    }
}
