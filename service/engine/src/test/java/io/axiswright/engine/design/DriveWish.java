package io.axiswright.engine.design;

import org.jspecify.annotations.Nullable;

/** Says what a test wishes of a drive unit; what it does not say is not asked for. */
public final class DriveWish {

    private @Nullable String item;
    private @Nullable Feed feed;
    private boolean ventilated;
    private boolean braked;
    private boolean keepAlive;
    private @Nullable GearChoice gear;
    private @Nullable String gearUnit;
    private @Nullable Double brakeMargin;
    private @Nullable Boolean reserves;

    /** Any drive unit at all. */
    public static DriveSelection any() {
        return new DriveWish().made();
    }

    /** The same wishes as a selection has. */
    public static DriveWish like(DriveSelection drive) {
        DriveWish wish = new DriveWish();
        wish.item = drive.item();
        wish.feed = drive.feed();
        wish.ventilated = drive.forcedVentilationAllowed();
        wish.braked = drive.holdingBrake();
        wish.keepAlive = drive.keepAlive();
        wish.gear = drive.gear();
        wish.gearUnit = drive.gearUnit();
        wish.brakeMargin = drive.brakeMargin();
        wish.reserves = drive.reserves();
        return wish;
    }

    public DriveWish item(@Nullable String id) {
        item = id;
        return this;
    }

    public DriveWish feed(@Nullable Feed wished) {
        feed = wished;
        return this;
    }

    public DriveWish ventilated(boolean allowed) {
        ventilated = allowed;
        return this;
    }

    public DriveWish braked(boolean needed) {
        braked = needed;
        return this;
    }

    public DriveWish brakeMargin(double margin) {
        brakeMargin = margin;
        return this;
    }

    public DriveWish gear(GearChoice choice) {
        gear = choice;
        return this;
    }

    public DriveWish gearUnit(String id) {
        gearUnit = id;
        return this;
    }

    public DriveWish reserves() {
        reserves = true;
        return this;
    }

    public DriveSelection made() {
        return new DriveSelection(item, feed, ventilated, braked, keepAlive, gear, gearUnit, brakeMargin, reserves);
    }
}
