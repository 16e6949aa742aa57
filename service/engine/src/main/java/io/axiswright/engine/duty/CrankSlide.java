package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;

/**
 * How the slider of a crank goes over a range of angles: with u = r·sin − e and f = √(l² − u²) its way is r·sin − f' and the
 * bend of it r·cos − f'', where f·f' = −u·u' and f·f'' = −(u'² + u·u'' + f'²).
 *
 * @param way dx/dangle, m
 * @param bend d²x/dangle², m
 */
record CrankSlide(Enclosure way, Enclosure bend) {

    static CrankSlide of(double radius, double rod, double offset, Enclosure angle) {
        Enclosure sine = angle.sine().times(radius);
        Enclosure cosine = angle.cosine().times(radius);
        if (Double.isInfinite(rod)) {
            return new CrankSlide(sine, cosine);
        }
        Enclosure off = sine.plus(-offset);
        Enclosure perRoot = off.squared().times(-1).plus(rod * rod).root().inverse();
        Enclosure first = off.times(cosine).times(perRoot).times(-1);
        Enclosure second = cosine.squared()
                .plus(off.times(sine).times(-1))
                .plus(first.squared())
                .times(perRoot)
                .times(-1);
        return new CrankSlide(sine.plus(first.times(-1)), cosine.plus(second.times(-1)));
    }
}
