package org.bondspan.layout;

import org.bondspan.units.WireSize;

/** A service with the circular mils of its phase conductors and the Table 250.66 size that they call for. */
public record ServiceState(String id, String supply, long area, WireSize need) {}
