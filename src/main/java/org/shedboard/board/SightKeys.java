package org.shedboard.board;

import java.util.List;

/** The keys of the time axis, the same wherever there is one. */
final class SightKeys {
    private SightKeys() {}

    static List<Binding> of(Board board) {
        Sight sight = board.sight();
        Sight.Extent extent = Sight.Extent.of(board.expectOutlook());
        boolean earlier = sight.canMove(-1, extent);
        boolean later = sight.canMove(1, extent);
        return List.of(
                Binding.when(earlier, '<', Deed.SEE_EARLIER, "off.sight_begins"),
                Binding.when(later, '>', Deed.SEE_LATER, "off.sight_ends"),
                // the same two keys of most keyboards without Shift
                Binding.when(earlier, ',', Deed.SEE_EARLIER, "off.sight_begins"),
                Binding.when(later, '.', Deed.SEE_LATER, "off.sight_ends"),
                Binding.when(sight.closer(1, extent).isPresent(), '+', Deed.SEE_CLOSER, "off.sight_closest"),
                Binding.when(sight.closer(-1, extent).isPresent(), '-', Deed.SEE_FURTHER, "off.sight_widest"),
                Binding.when(!sight.isFollowing(), Key.HOME, Deed.SEE_NOW, "off.sight_follows"));
    }

    static Board after(Board board, Deed deed) {
        Sight sight = board.sight();
        Sight.Extent extent = Sight.Extent.of(board.expectOutlook());
        return board.seeing(
                switch (deed) {
                    case SEE_EARLIER -> sight.moved(-1, extent);
                    case SEE_LATER -> sight.moved(1, extent);
                    case SEE_CLOSER -> sight.closer(1, extent).orElse(sight);
                    case SEE_FURTHER -> sight.closer(-1, extent).orElse(sight);
                    case SEE_NOW -> sight.following();
                    default -> throw new IllegalStateException(deed + " does not move the time axis");
                });
    }
}
