@org.jspecify.annotations.NullMarked
package io.axiswright.app.web;
