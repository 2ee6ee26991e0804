package org.bondspan.layout;

import java.util.Optional;

/**
 * What a site would need if one path that may not carry did: it shows what the exclusion costs and is no advice.
 *
 * @param path that may not carry
 * @param copper of the least interconnection with it; empty where there is none even so
 */
public record ExclusionCost(String path, Optional<Copper> copper) {}
