package takeup.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import takeup.roll.Roll;
import takeup.scans.Proposal;

/**
 * What the photographer decided about the scans of a roll. A later event takes the place of an earlier one on the same
 * thing.
 */
public sealed interface ReviewEvent {
    /** The review as it stands once this has happened. */
    Review appliedTo(Review review);

    /** One method for each kind, for rooms that must know which it is. */
    <R> R match(Cases<R> cases);

    /** A case for each kind. */
    interface Cases<R> {
        R accepted(Accepted event);

        R judged(Judged event);

        R unknown(Unknown event);
    }

    /** A scan and the frames on it; none where nobody logged it. */
    record PlacedScan(String file, List<FrameKey> frames) {
        public PlacedScan {
            frames = List.copyOf(frames);
        }
    }

    /** An alignment of scans and frames was accepted; it replaces the one before. */
    record Accepted(String folder, boolean isReversed, double confidence, List<PlacedScan> scans)
            implements ReviewEvent {
        public Accepted {
            scans = List.copyOf(scans);
        }

        /** A proposal, accepted. */
        public static Accepted of(Roll roll, Proposal proposal, String folder) {
            List<PlacedScan> placed = new ArrayList<>();
            for (int i = 0; i < proposal.scans().size(); i++) {
                placed.add(new PlacedScan(
                        proposal.scans().get(i).name(),
                        proposal.slot(i)
                                .map(slot -> slot.frames().stream()
                                        .map(it -> FrameKey.of(roll.frames().get(it)))
                                        .toList())
                                .orElse(List.of())));
            }
            return new Accepted(folder, proposal.isReversed(), proposal.confidence(), placed);
        }

        @Override
        public Review appliedTo(Review review) {
            return review.with(this);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.accepted(this);
        }
    }

    /** A frame got a verdict; an empty one takes the verdict back. */
    record Judged(FrameKey frame, Optional<Density> verdict) implements ReviewEvent {
        @Override
        public Review appliedTo(Review review) {
            return review.with(frame, verdict);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.judged(this);
        }
    }

    /** A kind that a later version wrote, with its text unchanged. */
    record Unknown(String kind, String text) implements ReviewEvent {
        @Override
        public Review appliedTo(Review review) {
            return review;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unknown(this);
        }
    }
}
