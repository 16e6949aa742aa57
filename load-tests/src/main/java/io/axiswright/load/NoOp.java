package io.axiswright.load;

import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** The least an endpoint can do: reads the body, answers bytes it was given before. */
@RestController
class NoOp {

    private volatile byte[] answer = new byte[0];

    void answer(byte[] bytes) {
        answer = bytes.clone();
    }

    @PostMapping(path = "/noop", produces = MediaType.APPLICATION_JSON_VALUE)
    byte[] noOp(@RequestBody byte[] body) {
        return body.length == 0 ? body : answer;
    }
}
