/** What the collections and conditional requests of every resource have in common: pages, links and preconditions. */
@org.jspecify.annotations.NullMarked
package io.axiswright.app.web;
