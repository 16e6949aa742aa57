package io.axiswright.app.web;

import java.net.URI;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import org.springframework.web.util.UriComponentsBuilder;

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

    /** The absolute address of a path with one query parameter, its variables filled in and encoded. */
    public static URI toQuery(String path, String parameter, String value, Object... variables) {
        return UriComponentsBuilder.fromUri(to(path, variables))
                .queryParam(parameter, value)
                .build()
                .encode()
                .toUri();
    }
}
