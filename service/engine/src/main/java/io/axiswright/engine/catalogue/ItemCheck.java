package io.axiswright.engine.catalogue;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Power;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What the data of a single item must not contradict each other in. */
final class ItemCheck {

    private ItemCheck() {}

    /** The faults of an item that stands at the given JSON Pointer. */
    static List<Fault> faults(Item item, String pointer) {
        return switch (item) {
            case DriveUnit unit ->
                Stream.of(
                                notRising(unit.continuousCurve(), pointer + "/continuousCurve"),
                                notRising(unit.intermittentCurve(), pointer + "/intermittentCurve"),
                                lessThanWithoutLoad(unit, pointer + "/ratedLoss"),
                                notWider(unit.inputTerminals(), pointer + "/inputTerminals").stream())
                        .flatMap(Function.identity())
                        .toList();
            case BrakingUnit unit ->
                unless(
                        unit.chopperOff().si() < unit.chopperOn().si(),
                        pointer + "/chopperOff",
                        "The chopper would switch off at or above the voltage that switches it on.",
                        "less than chopperOn");
            case FasteningPart part -> ofFastening(part, pointer);
            case GearUnit unit ->
                unless(
                        unit.nominalTorque().si() <= unit.peakTorque().si(),
                        pointer + "/peakTorque",
                        "The peak torque is below the nominal torque.",
                        "at least nominalTorque");
            case CableGland gland ->
                unless(
                        gland.clampsAbove().si() < gland.clampsUpTo().si(),
                        pointer + "/clampsUpTo",
                        "No cable is thicker than clampsAbove and not thicker than this.",
                        "more than clampsAbove");
            case BulkCable cable ->
                unless(
                        cable.cutAllowance() == null
                                || cable.reelLength() != null
                                        && cable.cutAllowance().si()
                                                < cable.reelLength().si(),
                        pointer + "/cutAllowance",
                        "No reel is longer than the allowance for each cut from it.",
                        "a cutAllowance less than reelLength, and only with reelLength");
            case CableAssembly cable ->
                Stream.concat(
                                withoutWidth(cable.endList(), pointer + "/ends").stream(),
                                carriesOn(cable, pointer + "/joinedLength").stream())
                        .toList();
            case ProtectiveDevice device -> ofDevice(device, pointer);
            case OutputProtection device -> notFaster(device.clearingPoints(), pointer + "/clearingPoints");
            default -> List.of();
        };
    }

    private static List<Fault> ofFastening(FasteningPart part, String pointer) {
        return Stream.of(
                        unless(
                                part.shaftAbove().si() < part.shaftUpTo().si(),
                                pointer + "/shaftUpTo",
                                "No shaft is thicker than shaftAbove and not thicker than this.",
                                "more than shaftAbove"),
                        unless(
                                part.keyWidth() == null || part.kind() == FasteningKind.KEY,
                                pointer + "/keyWidth",
                                "A part of kind " + part.kind() + " is no key.",
                                "nothing, or the kind KEY"))
                .flatMap(List::stream)
                .toList();
    }

    private static List<Fault> ofDevice(ProtectiveDevice device, String pointer) {
        var points = device.clearingPoints() == null ? List.<ClearingPoint>of() : device.clearingPoints();
        var band = device.instantaneousTripping();
        return Stream.of(
                        notFaster(points, pointer + "/clearingPoints"),
                        unless(
                                band == null || band.lower() <= band.upper(),
                                pointer + "/instantaneousTripping/upper",
                                "The tripping band ends below its beginning.",
                                "at least lower"),
                        notWider(device.terminals(), pointer + "/terminals"))
                .flatMap(List::stream)
                .toList();
    }

    private static List<Fault> notWider(@Nullable TerminalRange terminals, String pointer) {
        return unless(
                terminals == null
                        || terminals.largest() == null
                        || terminals.holds(terminals.largest().area().si()),
                pointer + "/largest",
                "The largest size the terminals take is below the smallest.",
                "a size not below smallest");
    }

    private static Stream<Fault> lessThanWithoutLoad(DriveUnit unit, String pointer) {
        Power rated = unit.ratedLoss();
        return unless(
                rated == null || rated.si() >= unit.standbyLoss().si(),
                pointer,
                "The loss at rated torque is below that without load.",
                "at least standbyLoss")
                .stream();
    }

    private static Stream<Fault> notRising(List<CurvePoint> curve, String pointer) {
        return IntStream.range(1, curve.size())
                .filter(k ->
                        curve.get(k).speed().si() <= curve.get(k - 1).speed().si())
                .mapToObj(k -> new Fault(
                        pointer + "/" + k + "/speed",
                        FaultCode.INCONSISTENT,
                        "The speed is not above that of the point before.",
                        "points in order of rising speed"));
    }

    private static List<Fault> notFaster(List<ClearingPoint> points, String pointer) {
        return IntStream.range(1, points.size())
                .filter(k -> points.get(k).current().si()
                                <= points.get(k - 1).current().si()
                        || points.get(k).time().si() > points.get(k - 1).time().si())
                .mapToObj(k -> new Fault(
                        pointer + "/" + k,
                        FaultCode.INCONSISTENT,
                        "It does not follow the point before: more current is cleared at least as fast.",
                        "points in order of rising current and falling time"))
                .toList();
    }

    private static List<Fault> withoutWidth(List<CableEnd> ends, String pointer) {
        return IntStream.range(0, ends.size())
                .filter(k -> ends.get(k).kind() == CableEndKind.MOULDED
                        && ends.get(k).width() == null)
                .mapToObj(k -> new Fault(
                        pointer + "/" + k + "/width",
                        FaultCode.MISSING,
                        "A moulded end without its width: what it passes cannot be told.",
                        "the width of the widest part of the end"))
                .toList();
    }

    private static List<Fault> carriesOn(CableAssembly cable, String pointer) {
        return cable.coupler() == null || !cable.use().isNetworkLink() || cable.joinedLength() != null
                ? List.of()
                : List.of(new Fault(
                        pointer,
                        FaultCode.MISSING,
                        "A link of the network that may be joined without how far its signals carry over a coupler.",
                        "the longest that two of it may be together"));
    }

    private static List<Fault> unless(boolean holds, String pointer, String detail, String accepted) {
        return holds ? List.of() : List.of(new Fault(pointer, FaultCode.INCONSISTENT, detail, accepted));
    }
}
