/** What every stored thing needs: its key, its bytes and their hash, and a transaction that tries again. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.store;
