package org.bondspan.layout;

import java.util.List;
import java.util.Optional;

/**
 * How a proposal joins one service with one thing that must be connected.
 *
 * @param thing id of the electrode, frame or piping
 * @param lawful whether there is a lawful way of sufficient size
 * @param passes ids of the conductors and paths of the best way, in order from the service; empty when there is none
 * @param thinnest id of the smallest conductor passed; empty when the way needs none
 */
public record JudgedWay(String service, String thing, boolean lawful, List<String> passes, Optional<String> thinnest) {
    public JudgedWay {
        passes = List.copyOf(passes);
    }
}
