package io.axiswright.engine.containment;

import io.axiswright.engine.quantity.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What runs along a route.
 *
 * @param id the route
 * @param cables its power cables; what shares the route is what their ampacities are lowered for
 * @param loadedConductors conductors of theirs that carry current
 * @param fill share of the inside that all cables along it take; absent on an open route and where there are none
 * @param fillLimit the most they may take
 * @param fillClause the rule behind that
 * @param smallestConduit metric designator of the smallest conduit of the stated type that holds them; absent where none does, or
 *     the route is none of such a conduit
 * @param leastBendRadius smallest radius at the inner edge that its power cables allow; absent where there are none
 */
public record RouteUse(
        String id,
        List<RoutedCable> cables,
        int loadedConductors,
        @Nullable Double fill,
        @Nullable Double fillLimit,
        @Nullable String fillClause,
        @Nullable Integer smallestConduit,
        @Nullable Length leastBendRadius) {}
