package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.AltitudeRule;
import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Site;

/** How much of its rated temperature rise a winding may use at a site, and of its current the electronics. */
final class Derating {

    /** Up to this altitude ratings hold, m (IEC 60034-1, confirmed by secondary sources). */
    static final double RATED_ALTITUDE = 1000;

    /** Up to this altitude the rule below is stated, m (IEC 60034-1, confirmed by a secondary source). */
    static final double HIGHEST_ALTITUDE = 4000;

    /** The permitted rise falls by 1 % per this height, m (IEC 60034-1; 1 % is confirmed, that it is of the rise is from memory). */
    private static final double METRES_PER_PERCENT = 100;

    private Derating() {}

    /**
     * The share x of the rated rise that is permitted, 0 … 1: the way from ambient to the limit temperature over the rated
     * way, times the thinner air's share. Losses go with it, torque with its square root. Air colder than rated or lower
     * than 1000 m earns no credit.
     */
    static double permittedShare(DriveUnit unit, Site site) {
        double rise = unit.ratedRise().si();
        double ambient = (unit.ratedAmbient().si() + rise - site.ambient().si()) / rise;
        return Math.max(0, Math.min(1, ambient) * thinAir(site));
    }

    /** The share of its rise at sea level that a winding may have in the thinner air of a site; 1 up to 1000 m. */
    static double thinAir(Site site) {
        double above = Math.max(0, site.altitude().si() - RATED_ALTITUDE);
        return 1 - above / METRES_PER_PERCENT / 100;
    }

    /** The share of their current, and so of torque, that the power electronics have by the item's own rule. */
    static double electronicsShare(DriveUnit unit, Site site) {
        AltitudeRule rule = unit.electronicsAltitude();
        if (rule == null) {
            return 1;
        }
        double above = Math.max(0, site.altitude().si() - rule.above().si());
        return Math.max(0, 1 - rule.sharePerHundredMetres() * above / 100);
    }
}
