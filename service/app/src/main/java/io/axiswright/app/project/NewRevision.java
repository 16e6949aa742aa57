package io.axiswright.app.project;

import io.axiswright.app.catalogues.CatalogueReference;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;

/**
 * The next state of a project.
 *
 * @param message what changed and why, 1 to 2000 characters
 * @param author who changed it, 1 to 200 characters
 * @param codeBasis the code it is to be built to
 * @param catalogue what it is bought from
 * @param design the machine
 */
public record NewRevision(
        String message, String author, CodeBasis codeBasis, CatalogueReference catalogue, Design design) {}
