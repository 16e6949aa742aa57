package io.axiswright.app.problem;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import java.util.List;
import java.util.Objects;
import org.springframework.validation.FieldError;
import org.springframework.validation.ObjectError;
import org.springframework.web.bind.MethodArgumentNotValidException;
import org.springframework.web.method.annotation.HandlerMethodValidationException;

/** The faults that annotations of bean validation find. */
final class BeanFaults {

    private BeanFaults() {}

    /** The faults of a body. */
    static SpringFailure of(MethodArgumentNotValidException e) {
        List<ProblemError> errors =
                e.getAllErrors().stream().map(BeanFaults::inBody).toList();
        return new SpringFailure(ProblemKind.INVALID_DESIGN, "The document has faults.", errors);
    }

    /** The faults of parameters. */
    static SpringFailure of(HandlerMethodValidationException e) {
        List<ProblemError> errors = e.getParameterValidationResults().stream()
                .flatMap(result -> result.getResolvableErrors().stream()
                        .map(error -> ProblemError.ofParameter(
                                Objects.requireNonNullElse(
                                        result.getMethodParameter().getParameterName(), "parameter"),
                                FaultCode.OUT_OF_RANGE.name(),
                                Objects.requireNonNullElse(error.getDefaultMessage(), "The value has no meaning."),
                                null)))
                .toList();
        return new SpringFailure(ProblemKind.INVALID_PARAMETER, "Parameters have faults.", errors);
    }

    private static ProblemError inBody(ObjectError error) {
        String pointer = error instanceof FieldError field
                ? "/" + field.getField().replace("[", "/").replace("]", "").replace('.', '/')
                : "";
        String detail = Objects.requireNonNullElse(error.getDefaultMessage(), "The value has no meaning.");
        return ProblemError.of(new Fault(pointer, FaultCode.OUT_OF_RANGE, detail, detail));
    }
}
