package io.axiswright.app.support;

import io.axiswright.app.problem.Conflict;
import io.axiswright.app.problem.NotFound;
import io.axiswright.app.problem.PreconditionFailed;
import io.axiswright.app.problem.PreconditionRequired;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.List;
import org.springframework.boot.autoconfigure.AutoConfiguration;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;

/** Answers our exceptions with their status where nothing else does. */
@AutoConfiguration
@RestControllerAdvice
public class Answers {

    @ExceptionHandler
    ResponseEntity<String> notFound(NotFound e) {
        return ResponseEntity.status(HttpStatus.NOT_FOUND).body(e.getMessage());
    }

    @ExceptionHandler
    ResponseEntity<String> conflict(Conflict e) {
        return ResponseEntity.status(HttpStatus.CONFLICT).body(e.getMessage());
    }

    @ExceptionHandler
    ResponseEntity<String> failed(PreconditionFailed e) {
        return ResponseEntity.status(HttpStatus.PRECONDITION_FAILED)
                .eTag(e.currentTag())
                .body(e.getMessage());
    }

    @ExceptionHandler
    ResponseEntity<String> required(PreconditionRequired e) {
        return ResponseEntity.status(HttpStatus.PRECONDITION_REQUIRED).body(e.getMessage());
    }

    @ExceptionHandler
    ResponseEntity<List<Fault>> invalid(InvalidDesign e) {
        return ResponseEntity.unprocessableContent().body(e.faults());
    }
}
