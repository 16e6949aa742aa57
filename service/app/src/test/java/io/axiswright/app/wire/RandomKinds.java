package io.axiswright.app.wire;

import com.fasterxml.jackson.annotation.JsonIgnore;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One member of every kind the design and the catalogue do not have.
 *
 * @param finding a finding
 * @param derivation a derivation, with a map
 * @param belt a record of a sealed type, asked for by itself
 * @param price money
 * @param whole a long number
 * @param share an optional boxed number
 * @param decimal a decimal number
 * @param since a time stamp
 * @param day a date
 * @param id a UUID
 * @param nested a list of itself
 * @param curves polynomials
 * @param hidden not written
 */
public record RandomKinds(
        Finding finding,
        Derivation derivation,
        Belt belt,
        Money price,
        @Bounds(min = 0, max = 1e9) long whole,
        @Bounds(above = 0, max = 1) @Nullable Double share,
        @Bounds(min = 0, max = 1e6) BigDecimal decimal,
        Instant since,
        LocalDate day,
        UUID id,
        List<Inner> nested,
        List<Polynomial> curves,
        @JsonIgnore @Nullable Polynomial hidden) {

    /**
     * A record that nests in itself, with an accessor that is not data.
     *
     * @param inner more of it
     * @param on a truth value
     */
    public record Inner(List<Inner> inner, boolean on) {

        /** Not data. */
        public boolean isEmpty() {
            return inner.isEmpty();
        }
    }
}
