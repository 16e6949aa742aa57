package io.axiswright.engine.enclosure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.axiswright.engine.design.Enclosure;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.ThermalResistance;
import io.axiswright.engine.quantity.VolumeFlow;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatBalanceTest {

    private static final double ICE_POINT = 273.15;

    /** Walls that pass next to nothing, so that only the cooler counts. */
    private static final double FELT = 1e-9;

    private static Enclosure box(
            double width,
            double height,
            double depth,
            boolean rear,
            int sides,
            @Nullable Double transfer,
            @Nullable VolumeFlow flow,
            @Nullable ThermalResistance exchanger) {
        return new Enclosure(
                "panel",
                new Length(width),
                new Length(height),
                new Length(depth),
                rear,
                sides,
                false,
                transfer,
                List.of(),
                null,
                flow,
                exchanger);
    }

    private static EnclosureResult balance(
            Enclosure enclosure, double watts, double outside, double limit, double high) {
        var site = new Site(new Temperature(outside + ICE_POINT), new Temperature(limit + ICE_POINT), new Length(high));
        return new HeatBalance()
                .balance(new EnclosureRequest(
                        site,
                        List.of(new EnclosedHeat(
                                "/e/0", enclosure, List.of(new HeatSource("other", new Power(watts))), List.of()))));
    }

    private static double rise(EnclosureResult result, double outside) {
        return result.enclosures().getFirst().insideTemperature().si() - ICE_POINT - outside;
    }

    /**
     * industrialmonitordirect.com, forced air cooling: 800 W at 1005 J/(kg·K) and 3 K are printed 0.265 kg/s. The same site's
     * enclosure airflow page prints 30.86 CFM for 500 W and 15 K by W/(1.08·ΔT), which is for BTU/h and °F: right is 500 · 3.412 / (1.08 · 27)
     * = 58.5 CFM. Air at sea level and 20 °C: 101325/(287.05 · 293.15) = 1.2041 kg/m³; 1 CFM = 4.7195e-4 m³/s.
     */
    @Test
    void publishedAirFlows() {
        assertThat(flowThrough(800, 3) * 1.2041).isCloseTo(0.265, within(0.0005));
        assertThat(flowThrough(500, 15) / 4.7195e-4).isCloseTo(58.5, within(0.2));
    }

    /** Flow of air at 20 °C that keeps what is inside so many kelvin warmer, walls aside, m³/s. */
    private static double flowThrough(double watts, double kelvin) {
        var walls = new Enclosure(
                "panel",
                new Length(1),
                new Length(1),
                new Length(1),
                false,
                null,
                false,
                1e-9,
                List.of(),
                null,
                null,
                null);
        var flow = balance(walls, watts, 20, 20 + kelvin, 0)
                .enclosures()
                .getFirst()
                .airFlowNeeded();
        return Objects.requireNonNull(flow).si();
    }

    /**
     * Effective areas by the formulas of installed area in common use, for 1.0 wide, 2.0 high, 0.5 deep: free standing
     * 1.8·H·(W + D) + 1.4·W·D = 6.1; against a wall 1.4·W·(H + D) + 1.8·D·H = 5.3; first of a row, free 1.4·D·(H + W) + 1.8·W·H
     * = 5.7; middle, free 1.8·W·H + 1.4·W·D + D·H = 5.3; middle, against a wall 1.4·W·(H + D) + D·H = 4.5 m².
     */
    @ParameterizedTest
    @CsvSource({"false, 0, 6.1", "true, 0, 5.3", "false, 1, 5.7", "false, 2, 5.3", "true, 2, 4.5"})
    void effectiveArea(boolean rear, int sides, double area) {
        assertThat(balance(box(1, 2, 0.5, rear, sides, null, null, null), 100, 20, 40, 0)
                        .enclosures()
                        .getFirst()
                        .effectiveArea()
                        .si())
                .isCloseTo(area, within(1e-9));
    }

    /**
     * industrialmonitordirect.com, enclosure natural cooling: 500 W, 35 °C inside, 20 °C outside, painted steel 5.5 W/m²K need
     * 6.06 m². A box 1 × 1 × D free standing has 1.8·(1 + D) + 1.4·D = 1.8 + 3.2·D: D = 1.33125 m.
     */
    @Test
    void publishedSurfaceGivesThePublishedTemperature() {
        EnclosureResult result = balance(box(1, 1, 1.33125, false, 0, null, null, null), 500, 20, 35, 0);
        assertThat(rise(result, 20)).isCloseTo(15, within(0.01));
        assertThat(result.enclosures().getFirst().removable().si()).isCloseTo(500, within(0.5));
    }

    /**
     * elliottelectric.com, heat dissipation in electrical enclosures: a closed box of 48 × 36 × 16 in with 300 W rises by 30 °F,
     * 16.7 K by its chart. 5.5 W/m²K over the effective surface of 3.416 m² gives 15.97 K, 4 % less: the chart counts all six
     * faces and lets them pass less.
     */
    @Test
    void publishedChart() {
        EnclosureResult result =
                balance(box(36 * 0.0254, 48 * 0.0254, 16 * 0.0254, false, 0, null, null, null), 300, 20, 40, 0);
        assertThat(rise(result, 20)).isCloseTo(15.97, within(0.02)).isCloseTo(16.7, withinPercentage(5));
    }

    /**
     * A fan: V = P/(ρ·c·ΔT) = 500/(1.204 · 1005 · 15) m³/s = 99.2 m³/h at 20 °C and sea level; the usual 3.1·P/ΔT of the trade,
     * 103.3 m³/h, allows for warmer air. At 1000 m the air is 11.3 % thinner in pressure (ISO 2533: 89 875 Pa).
     */
    @Test
    void fan() {
        Enclosure felted = box(1, 1, 1, false, 0, FELT, null, null);
        assertThat(cubicMetresAnHour(balance(felted, 500, 20, 35, 0))).isCloseTo(99.2, within(0.1));
        assertThat(cubicMetresAnHour(balance(felted, 500, 20, 35, 0))).isCloseTo(3.1 * 500 / 15, withinPercentage(4.5));
        assertThat(cubicMetresAnHour(balance(felted, 500, 20, 35, 1000)))
                .isCloseTo(99.2 * 101_325 / 89_875, withinPercentage(0.1));
        Enclosure blown = box(1, 1, 1, false, 0, FELT, new VolumeFlow(99.2 / 3600), null);
        assertThat(rise(balance(blown, 500, 20, 35, 0), 20)).isCloseTo(15, within(0.02));
    }

    private static double cubicMetresAnHour(EnclosureResult result) {
        return Objects.requireNonNull(result.enclosures().getFirst().airFlowNeeded())
                        .si()
                * 3600;
    }

    /** Walls of 5.5 · 6.1 = 33.55 W/K beside an exchanger of 0.05 K/W, 20 W/K: 535.5 W over 53.55 W/K are 10 K. */
    @Test
    void exchangerBesideTheWalls() {
        Enclosure cooled = box(1, 2, 0.5, false, 0, null, null, new ThermalResistance(0.05));
        assertThat(rise(balance(cooled, 535.5, 30, 45, 0), 30)).isCloseTo(10, within(1e-9));
    }

    @Test
    void whatIsHotterThanItsContentsStandIsAViolation() {
        Enclosure box = box(1, 2, 0.5, false, 0, null, null, null);
        // 33.55 W/K over 10 K: 335.5 W
        assertThat(balance(box, 335, 35, 45, 0).findings()).isEmpty();
        assertThat(balance(box, 336, 35, 45, 0).findings())
                .singleElement()
                .satisfies(f -> assertThat(f.code()).isEqualTo(FindingCode.ENCLOSURE_TOO_HOT))
                .extracting(Finding::pointer)
                .isEqualTo("/e/0");
    }

    /** No flow of air of 45 °C cools to 45 °C. */
    @Test
    void airAsWarmAsTheLimitCoolsNothing() {
        EnclosureBalance hot = balance(box(1, 2, 0.5, false, 0, null, null, null), 10, 45, 45, 0)
                .enclosures()
                .getFirst();
        assertThat(hot.airFlowNeeded()).isNull();
        assertThat(hot.removable().si()).isZero();
    }
}
