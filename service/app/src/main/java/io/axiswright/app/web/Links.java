package io.axiswright.app.web;

import java.net.URI;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** Addresses of our resources as the caller reaches them. */
public final class Links {

    private Links() {}

    /** The absolute address of a path with its variables filled in and encoded. */
    public static URI to(String path, Object... variables) {
        return ServletUriComponentsBuilder.fromCurrentContextPath()
                .path(path)
                .encode()
                .buildAndExpand(variables)
                .toUri();
    }
}
