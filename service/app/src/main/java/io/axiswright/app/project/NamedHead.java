package io.axiswright.app.project;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The head of a branch as a request names it.
 *
 * @param project the project
 * @param branch the branch
 * @param ifMatch the request's If-Match, which must name the head as it is
 */
record NamedHead(UUID project, String branch, @Nullable String ifMatch) {}
