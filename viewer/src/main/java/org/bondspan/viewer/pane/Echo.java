package org.bondspan.viewer.pane;

/**
 * Controls tell of every change, also of those that a pane makes to show a desk. Lets through only what the user does.
 */
final class Echo {
    private final Runnable settle;
    private boolean muted;

    Echo() {
        this(() -> {});
    }

    /** @param settle puts the controls right after a choice, for the desk may have come to nothing new by it */
    Echo(Runnable settle) {
        this.settle = settle;
    }

    /** Changes controls without being told of it. */
    void mute(Runnable changes) {
        muted = true;
        try {
            changes.run();
        } finally {
            muted = false;
        }
    }

    /** Does what a change of a control is to bring about, unless the pane made it. */
    void hear(Runnable action) {
        if (!muted) {
            action.run();
            settle.run();
        }
    }
}
