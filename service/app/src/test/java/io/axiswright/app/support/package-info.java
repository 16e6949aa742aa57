/** What tests of the running service share: one database server, and stand-ins for what is plugged in elsewhere. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.support;
