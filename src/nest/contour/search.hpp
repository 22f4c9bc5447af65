// SPDX-License-Identifier: MIT
// Epochs of all strands, joined after each: the same result for any number of threads.
#pragma once

#include "nest/contour/finish.hpp"
#include "nest/contour/strand.hpp"
#include "nest/nest.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

namespace pelt::nest::contour {

/// A part of the search's effort.
struct Stint {
    std::uint64_t epochs = 0; ///< 0: until the watch stops it
    double share_from = 0;    ///< of the whole effort, for the watch
    double share_to = 1;
};

/// The epochs that an effort stands for; 0: until the watch stops it.
std::uint64_t epochs_of(const Effort& effort);

/// Field look-ups of an epoch, by all strands together.
std::uint64_t work_between_joins(std::size_t items, std::size_t options);

class Search {
public:
    /// `bound` is a proven least length, 0 when there is none: reaching it ends the search.
    Search(const Problem& problem, const Finisher& finisher, const Effort& effort, Um bound,
           const Watch& watch);
    /// For a pattern that repeats, which is no layout yet.
    Search(const Problem& pattern, const Effort& effort, const Watch& watch);

    /// Starts from a layout that was found before; false when this problem has no such poses.
    bool start_from(const Layout& layout);
    /// Starts from poses without a conflict.
    void start_from(const Found& found);

    void run(const Stint& stint);

    /// The shortest so far; none when the film did not do.
    const std::optional<Layout>& layout() const { return layout_; }
    /// What the search itself takes for the shortest.
    const std::optional<Found>& best() const { return best_; }
    /// The watch asked to stop before the stint was over.
    bool stopped() const { return stopped_; }
    /// Nothing better is left to be found, or none at all.
    bool done() const;

    /// The pieces for which no film was left, when there is no layout.
    std::vector<std::size_t> misfits() const;

private:
    void make_strands();
    /// So many strands, each with about so much work; then they are joined.
    void advance_alone(std::uint64_t quota);
    void advance(std::size_t strands, std::uint64_t quota);
    void next_epoch();
    std::size_t constructing() const;
    void join();
    bool holds(const Found& found);
    bool enough_film() const;

    const Problem* problem_;
    const Finisher* finisher_; // none: the search is believed
    Effort effort_;
    Um bound_;
    const Watch* watch_;
    std::vector<std::unique_ptr<Strand>> strands_;
    std::optional<Found> best_;
    std::optional<Layout> layout_;
    std::uint64_t epochs_ = 0; ///< so far
    bool stopped_ = false;
};

} // namespace pelt::nest::contour
