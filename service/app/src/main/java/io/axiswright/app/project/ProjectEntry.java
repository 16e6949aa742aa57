package io.axiswright.app.project;

/** A project with its main branch. */
record ProjectEntry(Project project, Branch main) {}
