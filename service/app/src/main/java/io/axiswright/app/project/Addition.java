package io.axiswright.app.project;

import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A revision to be added.
 *
 * @param project the project
 * @param branch the branch whose head it follows
 * @param ifMatch the request's If-Match, which must name that head
 * @param draft what it is to be; asked for once the head is found and is the one named
 */
record Addition(UUID project, String branch, @Nullable String ifMatch, Function<Branch, Draft> draft) {}
