/** What can be bought: drive units, gateways, supplies, cables, protection, and what each item needs beside it. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.catalogue;
