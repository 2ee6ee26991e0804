package org.bondspan.viewer.work;

import org.bondspan.viewer.state.Message;

/** How a work is asked to end. Asked on the thread of the window, heard on that of the work. */
final class Halt {
    /** What a work says that was to write files and heard in time that it is given up. */
    static final Message NOTHING_WRITTEN = Message.notice("Given up. Nothing was written.");

    private volatile boolean outdated;
    private volatile boolean stopped;
    private volatile boolean givenUp;

    /** Another work is to begin: nobody waits for an answer any more. */
    void outdate() {
        outdated = true;
    }

    /** The user wants what there is so far. */
    void stop() {
        stopped = true;
    }

    /** The user wants nothing of it. */
    void giveUp() {
        givenUp = true;
    }

    /** Whether a search that answers a question is to end with its best. */
    boolean endsSearch() {
        return outdated || isStopped();
    }

    boolean isStopped() {
        return stopped || givenUp;
    }

    boolean isGivenUp() {
        return givenUp;
    }
}
