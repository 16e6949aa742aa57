/** What joins the parts chosen and brings cables into enclosures: links, glands, cable ends and the disconnecting device. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.wiring;
