package io.axiswright.app.wire;

import java.lang.invoke.LambdaMetafactory;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Takes components from records as compiled code would; a method handle that is no constant costs twice the time. */
final class Accessors {

    private static final MethodType ANY = MethodType.methodType(Object.class, Object.class);

    private Accessors() {}

    /** What takes the component from a record of its class. */
    @SuppressWarnings("unchecked") // the factory makes what its first type says
    static Function<Object, @Nullable Object> of(RecordComponent component) {
        try {
            var lookup = MethodHandles.privateLookupIn(component.getDeclaringRecord(), MethodHandles.lookup());
            MethodHandle accessor = lookup.unreflect(component.getAccessor());
            return (Function<Object, @Nullable Object>) LambdaMetafactory.metafactory(
                            lookup,
                            "apply",
                            MethodType.methodType(Function.class),
                            ANY,
                            accessor,
                            accessor.type().wrap())
                    .getTarget()
                    .invoke();
        } catch (RuntimeException | Error e) {
            throw e;
        } catch (Throwable e) {
            throw new IllegalStateException(e);
        }
    }
}
