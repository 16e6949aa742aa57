/** The PostgreSQL server that serves when no database is configured. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.embedded;
