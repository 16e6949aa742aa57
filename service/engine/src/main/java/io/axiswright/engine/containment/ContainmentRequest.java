package io.axiswright.engine.containment;

import io.axiswright.engine.design.CodeBasis;
import java.util.List;

/**
 * Routes to be examined.
 *
 * @param codeBasis the code they follow
 * @param stretches the routes with their cables
 */
public record ContainmentRequest(CodeBasis codeBasis, List<RoutedStretch> stretches) {}
