package io.axiswright.engine.motion;

import io.axiswright.engine.design.Trapezoidal;
import org.jspecify.annotations.Nullable;

/**
 * Trapezoids by any sufficient set of distance S, duration t, top speed v and, at each end, a share b of the time or an
 * acceleration a: S = v·(t − (t1 + t2)/2) with t1 = b1·t or v/a1, t2 = b2·t or v/a2.
 */
final class TrapezoidSolver {

    /** Shares typed in decimals need not add up to exactly one in binary. */
    private static final double ROUNDING = 1e-9;

    private static final String ACCEPTED =
            "two of distance, duration and topSpeed with an acceleration or a share, or all three of them";

    private final MoveData data;

    private TrapezoidSolver(MoveData data) {
        this.data = data;
    }

    /** One end: its share of the time or its acceleration. */
    private record End(@Nullable Double share, @Nullable Double acceleration) {

        boolean open() {
            return share == null && acceleration == null;
        }

        double share(double topSpeed, double duration) {
            return share != null ? share : acceleration == null ? 0 : topSpeed / acceleration / duration;
        }

        double timePerSpeed() {
            return share != null || acceleration == null ? 0 : 1 / acceleration;
        }

        double shareOr0() {
            return share == null ? 0 : share;
        }
    }

    static @Nullable ShapedMove solve(Trapezoidal law, MoveData data) {
        return new TrapezoidSolver(data)
                .solve(
                        new End(law.accelerationShare(), data.acceleration()),
                        new End(law.decelerationShare(), data.deceleration()));
    }

    private @Nullable ShapedMove solve(End rising, End falling) {
        if (rising.open() && falling.open()) {
            return openEnds();
        }
        if (rising.open() || falling.open()) {
            return data.frame() == 3 ? oneEnd(rising, falling) : mirrored(rising, falling);
        }
        if (rising.share != null && falling.share != null) {
            return shares(rising.share, falling.share);
        }
        if (rising.share != null && rising.acceleration != null && falling.acceleration != null) {
            return shares(rising.share, rising.share * rising.acceleration / falling.acceleration);
        }
        if (falling.share != null && falling.acceleration != null && rising.acceleration != null) {
            return shares(falling.share * falling.acceleration / rising.acceleration, falling.share);
        }
        return mixed(rising, falling);
    }

    private @Nullable ShapedMove mirrored(End rising, End falling) {
        End stated = rising.open() ? falling : rising;
        return stated.share != null ? shares(stated.share, stated.share) : mixed(stated, stated);
    }

    private @Nullable ShapedMove shares(double rising, double falling) {
        if (rising + falling > 1 + ROUNDING) {
            data.impossible(
                    "law/decelerationShare",
                    "the shares of acceleration and deceleration add up to " + (rising + falling),
                    "shares that add up to at most 1");
            return null;
        }
        return ShapedMove.of(NormalisedLaw.trapezoidal(rising, falling), data);
    }

    /** Nothing but distance, duration and top speed: the same ramp at both ends. */
    private @Nullable ShapedMove openEnds() {
        if (data.frame() < 3) {
            data.missing(ACCEPTED);
            return null;
        }
        Double sum = shareSum();
        return sum == null ? null : shares(sum / 2, sum / 2);
    }

    /** What the stated end leaves over is the other's. */
    private @Nullable ShapedMove oneEnd(End rising, End falling) {
        Double sum = shareSum();
        if (sum == null || data.topSpeed() == null || data.duration() == null) {
            return null;
        }
        double stated = (rising.open() ? falling : rising).share(data.topSpeed(), data.duration());
        double other = sum - stated;
        if (other <= 0) {
            data.clash(
                    rising.open() ? "deceleration" : "acceleration",
                    "distance, duration and topSpeed leave " + MoveData.time(sum * data.duration())
                            + " for both ramps, and this one takes " + MoveData.time(stated * data.duration()),
                    "a quicker ramp, or one of distance, duration and topSpeed less");
            return null;
        }
        return rising.open() ? shares(other, stated) : shares(stated, other);
    }

    /** b1 + b2 = 2·(1 − S/(v·t)), between 0 and 1. */
    private @Nullable Double shareSum() {
        if (data.distance() == null || data.duration() == null || data.topSpeed() == null) {
            return null;
        }
        double least = data.distance() / data.duration();
        if (data.topSpeed() <= least || data.topSpeed() > 2 * least * (1 + ROUNDING)) {
            data.clash(
                    "topSpeed",
                    data.distance(data.distance()) + " in " + MoveData.time(data.duration()) + " with a top speed of "
                            + data.speed(data.topSpeed()),
                    "a top speed above " + data.speed(least) + " and at most " + data.speed(2 * least));
            return null;
        }
        return 2 * (1 - least / data.topSpeed());
    }

    /** Each end by either its share or its acceleration, and at least one by its acceleration. */
    private @Nullable ShapedMove mixed(End rising, End falling) {
        double slow = rising.timePerSpeed() + falling.timePerSpeed();
        double even = 1 - (rising.shareOr0() + falling.shareOr0()) / 2;
        Double distance = data.distance();
        Double duration = data.duration();
        Double topSpeed = data.topSpeed();
        if (distance != null && duration != null) {
            return byDistanceAndTime(rising, falling, distance, duration, slow, even);
        }
        if (duration != null && topSpeed != null) {
            return finished(rising, falling, topSpeed * (duration * even - topSpeed * slow / 2), topSpeed, duration);
        }
        if (distance != null && topSpeed != null) {
            double time = (distance / topSpeed + topSpeed * slow / 2) / even;
            boolean reached = topSpeed * slow <= time * (2 * even - 1) * (1 + ROUNDING);
            if (reached || even < 1) {
                return finished(rising, falling, distance, topSpeed, time);
            }
            double peak = Math.sqrt(2 * distance / slow);
            return new ShapedMove(law(rising, falling, peak, peak * slow), distance, peak * slow, true, false);
        }
        data.missing(ACCEPTED);
        return null;
    }

    /** v²·slow/2 − v·t·even + S = 0; the smaller root is the one that leaves the ramps within the time. */
    private @Nullable ShapedMove byDistanceAndTime(
            End rising, End falling, double distance, double duration, double slow, double even) {
        double free = duration * even;
        double square = free * free - 2 * slow * distance;
        if (square < -ROUNDING * free * free) {
            data.clash(
                    "duration",
                    data.distance(distance) + " cannot be covered in " + MoveData.time(duration)
                            + " with these accelerations",
                    "at least " + MoveData.time(Math.sqrt(2 * slow * distance) / even)
                            + ", a shorter distance or a higher acceleration");
            return null;
        }
        double topSpeed = 2 * distance / (free + Math.sqrt(Math.max(0, square)));
        return finished(rising, falling, distance, topSpeed, duration);
    }

    private @Nullable ShapedMove finished(End rising, End falling, double distance, double topSpeed, double duration) {
        double ramps = (rising.share(topSpeed, duration) + falling.share(topSpeed, duration)) * duration;
        if (ramps > duration * (1 + ROUNDING)) {
            data.clash(
                    data.duration() == null ? "topSpeed" : "duration",
                    "the ramps to and from " + data.speed(topSpeed) + " take " + MoveData.time(ramps)
                            + " of a move that lasts " + MoveData.time(duration),
                    "a lower top speed, a higher acceleration or a longer move");
            return null;
        }
        return new ShapedMove(law(rising, falling, topSpeed, duration), distance, duration);
    }

    private static NormalisedLaw law(End rising, End falling, double topSpeed, double duration) {
        return NormalisedLaw.trapezoidal(rising.share(topSpeed, duration), falling.share(topSpeed, duration));
    }
}
