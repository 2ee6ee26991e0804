package org.bondspan.io;

import java.util.List;
import java.util.stream.Collectors;

/** An input file cannot be used: one problem or several, in file order. Its message holds one line for each. */
public final class InputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    public InputException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public List<Problem> problems() {
        return problems;
    }
}
