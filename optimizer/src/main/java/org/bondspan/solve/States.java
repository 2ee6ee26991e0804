package org.bondspan.solve;

/**
 * What is known of one side: at which nodes it can hang, at what cost, and by which arc it came there. Nodes ascend; a
 * bit set with running counts finds a node. Frozen.
 */
final class States {

    private final int firstWord;
    private final long[] words;
    private final int[] before;
    private final long[] weight;
    private final long[] extent;
    private final int[] arc;

    /** Bytes that states of nodes take, at most: of each node two numbers, an arc and its share of a bit set. */
    static long bytes(int[] nodes, int count) {
        int low = Integer.MAX_VALUE;
        int high = 0;
        for (int i = 0; i < count; i++) {
            low = Math.min(low, nodes[i] >> 6);
            high = Math.max(high, nodes[i] >> 6);
        }
        return 200 + 20L * count + 12L * Math.max(0, high - low + 1);
    }

    /** From scratch values by node. */
    States(int[] nodes, int count, Labels labels) {
        int low = Integer.MAX_VALUE;
        int high = 0;
        for (int i = 0; i < count; i++) {
            low = Math.min(low, nodes[i] >> 6);
            high = Math.max(high, nodes[i] >> 6);
        }
        firstWord = count == 0 ? 0 : low;
        words = new long[count == 0 ? 0 : high - low + 1];
        before = new int[words.length];
        for (int i = 0; i < count; i++) {
            words[(nodes[i] >> 6) - firstWord] |= 1L << nodes[i];
        }
        weight = new long[count];
        extent = new long[count];
        arc = new int[count];
        int place = 0;
        for (int word = 0; word < words.length; word++) {
            before[word] = place;
            for (long left = words[word]; left != 0; left &= left - 1) {
                int node = ((firstWord + word) << 6) + Long.numberOfTrailingZeros(left);
                weight[place] = labels.weight(node);
                extent[place] = labels.extent(node);
                arc[place++] = labels.arc(node);
            }
        }
    }

    int size() {
        return weight.length;
    }

    /** Place of a node in the list, or -1. */
    int find(int node) {
        int word = (node >> 6) - firstWord;
        if (word < 0 || word >= words.length || (words[word] >>> node & 1) == 0) {
            return -1;
        }
        return placeOf(word, 1L << node);
    }

    private int placeOf(int word, long bit) {
        return before[word] + Long.bitCount(words[word] & (bit - 1));
    }

    long weight(int place) {
        return weight[place];
    }

    long extent(int place) {
        return extent[place];
    }

    /** Arc that leads to the node from where the side hung before, or -1 when it landed or was joined here. */
    int arc(int place) {
        return arc[place];
    }

    boolean meets(States other) {
        int from = Math.max(firstWord, other.firstWord);
        int to = Math.min(firstWord + words.length, other.firstWord + other.words.length);
        for (int word = from; word < to; word++) {
            if ((words[word - firstWord] & other.words[word - other.firstWord]) != 0) {
                return true;
            }
        }
        return false;
    }

    /** Offers the sum of both to the labels of every node where both sides can hang. */
    void join(States other, Core core, Labels labels) {
        int from = Math.max(firstWord, other.firstWord);
        int to = Math.min(firstWord + words.length, other.firstWord + other.words.length);
        for (int word = from; word < to; word++) {
            int mine = word - firstWord;
            int theirs = word - other.firstWord;
            for (long left = words[mine] & other.words[theirs]; left != 0; left &= left - 1) {
                int node = (word << 6) + Long.numberOfTrailingZeros(left);
                long bit = left & -left;
                int i = placeOf(mine, bit);
                int j = other.placeOf(theirs, bit);
                labels.offer(
                        node,
                        weight[i] + other.weight[j] + core.tapWeight(node),
                        extent[i] + other.extent[j] + core.tap(node),
                        -1);
            }
        }
    }
}
