package io.axiswright.engine.enclosure;

import io.axiswright.engine.design.Site;
import java.util.List;

/**
 * Enclosures whose heat is to be balanced.
 *
 * @param site where they stand: its {@code ambient} is the air around them, its {@code enclosureAmbient} the temperature what is
 *     in them was chosen for
 * @param enclosures the enclosures
 */
public record EnclosureRequest(Site site, List<EnclosedHeat> enclosures) {}
