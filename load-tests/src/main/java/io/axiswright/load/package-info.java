/** What the service costs, as ratios of things measured side by side in one run; nothing here compares absolute times. */
@org.jspecify.annotations.NullMarked
package io.axiswright.load;
