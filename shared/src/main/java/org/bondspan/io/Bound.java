package org.bondspan.io;

/** Something read together with where it was read from, for checks that look at several things at once. */
record Bound<T>(T value, Fields fields) {}
