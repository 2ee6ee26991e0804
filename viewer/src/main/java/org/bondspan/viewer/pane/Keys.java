package org.bondspan.viewer.pane;

import org.bondspan.viewer.state.Message;

/** What the keyboard does. */
final class Keys {
    private Keys() {}

    static Message message() {
        return Message.notice(
                "Keys",
                "On the plan: arrows move, + and \u2212 nearer and further, 0 the whole level, C into where conductors"
                        + " crowd, N and P the next and the last thing, Enter selects or measures there, Escape selects"
                        + " nothing.",
                "Ctrl+Page Up and Page Down: levels. Ctrl+1, 2, 3: answer, proposal, side by side. Ctrl+K: pin.",
                "Ctrl+M: measure. Ctrl+L: words. Ctrl+D: light or dark. Ctrl+Period: stop. F6: the next part of the"
                        + " window. F9: the plan alone. Alt with an underlined letter: that control.");
    }
}
