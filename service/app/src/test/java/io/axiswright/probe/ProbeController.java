package io.axiswright.probe;

import io.axiswright.app.openapi.Fails;
import io.axiswright.app.problem.Conflict;
import io.axiswright.app.problem.NotFound;
import io.axiswright.app.problem.PreconditionFailed;
import io.axiswright.app.problem.PreconditionRequired;
import io.axiswright.app.problem.ProblemKind;
import io.axiswright.app.problem.Unavailable;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Voltage;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;

/** Echoes documents and fails on demand. */
@RestController
@RequestMapping("/probe")
public class ProbeController {

    /**
     * An answer.
     *
     * @param design the design that was sent
     * @param findings remarks on it
     */
    public record Echo(Design design, List<Finding> findings) {}

    /**
     * Echoes a design.
     *
     * @param design the design
     */
    @PostMapping("/designs")
    @Fails(ProblemKind.CONFLICT)
    Echo echoDesign(@RequestBody Design design) {
        Finding low = FindingCode.CONTROL_VOLTAGE_LOW.at(
                "axis 1", "/axes/0", "IEC 60204-1", new Voltage(19.25), new Voltage(20.4));
        return new Echo(design, List.of(low));
    }

    /** Echoes a catalogue. */
    @PutMapping("/catalogues")
    Catalogue echoCatalogue(@RequestBody Catalogue catalogue) {
        return catalogue;
    }

    /** Takes any map, by the framework's own reader. */
    @PostMapping("/maps")
    Map<String, Integer> echoMap(@RequestBody Map<String, Integer> map) {
        return map;
    }

    /** Needs parameters. */
    @GetMapping("/parameters/{number}")
    Map<String, Object> parameters(
            @PathVariable int number, @RequestParam CodeBasis basis, @RequestHeader("Probe-Size") int size) {
        return Map.of("number", number, "basis", basis, "size", size);
    }

    /** Fails as asked. */
    @GetMapping("/failures/{which}")
    String fail(@PathVariable String which) {
        throw switch (which) {
            case "not-found" -> new NotFound("project", 4711);
            case "conflict" -> new Conflict("The number is taken.");
            case "precondition-failed" -> new PreconditionFailed("\"abc\"");
            case "precondition-required" -> new PreconditionRequired();
            case "unavailable" -> new Unavailable("All solvers are busy.", Duration.ofSeconds(3));
            case "status" -> new ResponseStatusException(HttpStatus.FORBIDDEN, "Not yours.");
            default -> new IllegalStateException("select secret from table_of_secrets");
        };
    }
}
