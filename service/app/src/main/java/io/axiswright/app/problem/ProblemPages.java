package io.axiswright.app.problem;

import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** What each kind of failure means. */
@RestController
@Tag(name = "Problems", description = "What each kind of failure means.")
@RequestMapping("/problems")
class ProblemPages {

    /**
     * All kinds of failure.
     *
     * @param items the kinds, by status
     */
    record ProblemPageList(List<ProblemPage> items) {}

    /**
     * A kind of failure.
     *
     * @param type the reference that problems of this kind carry
     * @param code the kind as a word that never changes
     * @param status the HTTP status it is answered with
     * @param title what it is called
     * @param description what it means and what to do
     */
    record ProblemPage(String type, String code, int status, String title, String description) {

        static ProblemPage of(ProblemKind kind) {
            return new ProblemPage(kind.type(), kind.name(), kind.status(), kind.title(), kind.description());
        }
    }

    /** Lists all kinds of failure. */
    @GetMapping
    ProblemPageList listProblemKinds() {
        return new ProblemPageList(
                Stream.of(ProblemKind.values()).map(ProblemPage::of).toList());
    }

    /**
     * Describes one kind of failure.
     *
     * @param slug the last part of its type
     */
    @GetMapping("/{slug}")
    ProblemPage describeProblemKind(@PathVariable String slug) {
        return ProblemKind.find(slug).map(ProblemPage::of).orElseThrow(() -> new NotFound("kind of problem", slug));
    }
}
