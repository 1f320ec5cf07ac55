package eddyreach.engine.assure;

import java.util.Optional;

/**
 * What an engineer needs to answer for one target.
 *
 * @param assurance assured on, may be, assured off
 * @param explanation why, at some length; only for targets that are studied one by one
 * @param advice what to change; only for targets that are studied one by one
 */
public record Assessment(Assurance assurance, Optional<Explanation> explanation, Optional<Advice> advice) {}
