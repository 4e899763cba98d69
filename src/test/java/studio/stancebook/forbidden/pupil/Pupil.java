package studio.stancebook.forbidden.pupil;

import studio.stancebook.forbidden.master.Master;

/** Imports a module that it does not declare. */
public record Pupil(Master master) {}
