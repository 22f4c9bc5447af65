// SPDX-License-Identifier: MIT
// One line of search with its own generator: start, shrink, separate, disrupt.
#pragma once

#include "nest/contour/constructor.hpp"
#include "nest/contour/separator.hpp"

#include <vector>

namespace pelt::nest::contour {

/// What a pattern asks beside every gap: its repeats lie on the grid as they are. Rounding moves
/// two pieces towards each other by at most the diagonal of a micrometre, the rounded period a
/// repeat by at most one more.
inline constexpr double pattern_margin_um = 3;

/// A layout in which the search sees no conflict.
struct Found {
    std::vector<Pose> poses;
    double end = 0;
};

class Strand {
public:
    Strand(const Problem& problem, std::uint64_t seed, std::size_t index);

    /// Searches for about `quota` field look-ups.
    void run(std::uint64_t quota);

    const std::optional<Found>& best() const { return best_; }

    /// Items for which the first layout had no film.
    const std::vector<std::uint32_t>& left_over() const { return left_over_; }

    /// Starts from this layout instead of making its own.
    void start_from(const Found& found);
    /// Goes on from this layout unless its own is shorter; all but the first strands also unless
    /// their own is nearly as short, so that not all of them search in one place.
    void adopt(const Found& found);
    /// Forgets a layout that was found wanting, and goes back to the one that it began with.
    void reject();

private:
    struct Failed {
        double total = 0;
        std::vector<Pose> poses;
    };
    void construct();
    void aim();
    void succeed();
    void give_up();
    void retry();
    void swap_two_large(std::vector<Pose>& poses);
    std::uint64_t work() const { return separator_.work() + extra_work_; }

    const Problem* problem_;
    Random random_;
    std::size_t index_;
    Separator separator_;
    Mover mover_;
    std::uint64_t extra_work_ = 0;
    std::optional<Found> best_;
    std::optional<Found> constructed_; ///< holds on the grid, whatever the search makes of it
    bool started_ = false;
    std::vector<std::uint32_t> left_over_;
    double target_ = 0;
    double stride_;  // share by which the film gets shorter next
    int sweeps_ = 0; // of this attempt
    std::vector<Failed> failed_;
};

/// Usable film before `end`.
double film_before(const Problem& problem, double end);

} // namespace pelt::nest::contour
