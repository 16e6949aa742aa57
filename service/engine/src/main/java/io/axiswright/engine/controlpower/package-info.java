/** The 24 V DC control supply: which supplies and cables reach every gateway, drive and brake with enough voltage. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.controlpower;
