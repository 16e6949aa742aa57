package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.catalogue.HousingHeat;
import io.axiswright.engine.catalogue.ShaftBearing;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.BeltTension;
import io.axiswright.engine.design.Cycloidal;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.design.DriveWish;
import io.axiswright.engine.design.EndFixity;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.NutRating;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.ScrewSupport;
import io.axiswright.engine.finding.LeadingDerivations;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Pressure;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Whatever the axis, what is printed beside a number leads to it. */
class DutyDerivationsTest {

    private static final long SEED = 4242;

    /** The highest of a periodic solution; found by search, or by following the course. */
    private static final Set<String> OPEN = Set.of("theta_max", "k_cycle", "k_move", "p_add");

    @Test
    void everyFormulaLeadsToItsResult() {
        Set<String> worked = new TreeSet<>();
        for (int n = 0; n < 120; n++) {
            RandomAxes random = new RandomAxes(SEED + n);
            Axis axis = n % 2 == 0 ? random.next("axis " + n) : random.nextUneven("axis " + n);
            DutyResult result = new DutySizing()
                    .size(Fixtures.request(List.of(Fixtures.inZone(axis)), List.of(Fixtures.unit("u", 50, 100))));
            worked.addAll(LeadingDerivations.assertTheyLead(result.derivations(), OPEN));
        }
        assertThat(worked)
                .contains(
                        "E_motored",
                        "E_returned",
                        "I_cycle",
                        "J_L'",
                        "N_side",
                        "P_peak",
                        "T_brake",
                        "T_c",
                        "T_hold",
                        "T_load",
                        "T_peak",
                        "T_pull",
                        "T_rms",
                        "T_stop",
                        "n_max",
                        "t_peak",
                        "x");
    }

    private static Set<String> worked(Axis axis, DriveUnit unit, GearUnit... gears) {
        DutyResult result = new DutySizing()
                .size(new DutyRequest(
                        Fixtures.SITE,
                        Fixtures.MAINS,
                        List.of(Fixtures.inZone(axis)),
                        List.of(Fixtures.ZONE),
                        List.of(unit),
                        List.of(),
                        List.of(),
                        List.of(gears)));
        return LeadingDerivations.assertTheyLead(result.derivations(), OPEN);
    }

    private static Axis moving(Mechanism mechanism, DriveSelection drive) {
        return Fixtures.axis(
                "axis",
                mechanism,
                null,
                drive,
                Fixtures.travel(0.3, 0.4, new Cycloidal()),
                Fixtures.dwell(0.3),
                Fixtures.travel(-0.3, 0.5, new Cycloidal()));
    }

    private static Screw screw(double length, @Nullable Pressure yield) {
        return Fixtures.screw(
                length,
                100,
                0.4,
                new ScrewSupport(EndFixity.FIXED_SUPPORTED, new Length(0.0165), null, null, null, yield),
                new NutRating(new Force(9000), null));
    }

    @Test
    void soDoThoseOfMechanismsShaftsAndGearUnits() {
        DriveUnit unit = Fixtures.withShaft(
                Fixtures.with(Fixtures.unit("u", "F1", 5, 2000, 100), 100, new HousingHeat(0.3, new Time(1800)), null),
                new ShaftBearing(new Force(1000), new Force(14000), new Length(0.1), new Length(0.02)));
        var belt = new Belt(
                new Length(0.05),
                new Inertia(1e-4),
                new Mass(30),
                new Angle(0.2),
                0.95,
                null,
                null,
                null,
                null,
                new BeltTension(new Force(400), new Force(10_000)));
        GearUnit gear = RandomShop.gear("g", 5, 200, 1000, 10);
        Axis geared = moving(belt, new DriveWish().gearUnit("g").made());
        Axis heavy = Fixtures.axis(
                "axis",
                Fixtures.hoist(0.1, 0, 200, 0, 0.9),
                null,
                new DriveWish().gearUnit("g").made(),
                Fixtures.travel(0.3, 3, new Cycloidal()),
                Fixtures.travel(-0.3, 3, new Cycloidal()));

        assertThat(worked(moving(screw(1, null), Fixtures.ANY), unit)).contains("n_perm", "F_perm", "L_10h");
        assertThat(worked(moving(screw(0.4, new Pressure(300e6)), Fixtures.ANY), unit))
                .contains("F_perm");
        assertThat(worked(moving(belt, Fixtures.ANY), unit))
                .contains("F_strand", "F_r,perm", "P_m,shaft", "L_10h,shaft");
        assertThat(worked(geared, unit, gear)).contains("M_peak", "M_rms", "M_stop");
        assertThat(worked(heavy, unit, gear)).contains("M_peak", "t_peak");
    }
}
