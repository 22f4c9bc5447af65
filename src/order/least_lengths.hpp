// SPDX-License-Identifier: MIT
// How short a length of a roll takes a set of pieces. Inside order/ only.
#pragma once

#include "order/fill.hpp"

#include <limits>
#include <map>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace pelt::order {

/// Proved by a layout of these copies on such film, without end: no layout of them is shorter. The
/// layout's bound holds for the pieces as it cuts them, which may have other shapes.
Um least_strip(const Job& job, const Copies& copies, const Roll& film, const Layout& layout);

/// Sets of a job's pieces as numbers: how many of each piece, in mixed radix, so that a part of a
/// set is a smaller number and what is left of it is their difference.
class PieceSets {
public:
    explicit PieceSets(const Job& job);

    /// None where there are more than `most`.
    static std::optional<std::size_t> count(const Job& job, std::size_t most);

    std::size_t all() const { return counts_.size() - 1; }
    std::size_t of(std::size_t set, std::size_t piece) const { return counts_[set][piece]; }
    bool is_part(std::size_t part, std::size_t set) const;
    /// No piece that must be of one batch.
    bool is_batch_free(std::size_t set) const { return batch_free_[set]; }
    /// Twice the area that they take at least.
    DoubleArea least_area(std::size_t set) const { return areas_[set]; }
    /// The copies behind the first `taken` of each piece.
    Copies copies(std::size_t set, const std::vector<std::size_t>& taken) const;

private:
    std::vector<std::vector<std::size_t>> counts_;
    std::vector<bool> batch_free_;
    std::vector<DoubleArea> areas_;
};

/// What a set takes of a roll.
struct Taken {
    static constexpr Um never = std::numeric_limits<Um>::max() / 4;
    Um length = never;   ///< the shortest that was found, within what there is of the roll
    Um at_least = never; ///< proved; `never`: the roll cannot hold them
    std::shared_ptr<const Layout> layout = nullptr; ///< of that length, of the first copies
};

/// Rolls that differ by more than their lengths.
std::size_t kinds_of_film(const Job& job);

/// What sets take of a job's rolls, each asked of the search once. Rolls that differ by their
/// lengths alone share what is known.
class LeastLengths {
public:
    LeastLengths(const Job& job, const PieceSets& sets, const nest::Effort& effort,
                 const nest::Watch& watch);

    const Taken& of(std::size_t roll, std::size_t set);
    /// The same on film without end.
    const Taken& on_endless(std::size_t roll, std::size_t set);
    /// Whether bounds of pieces as they were cut hold for all layouts of them.
    bool one_shape_each() const { return one_shape_each_; }
    /// The watch said so: what is found from then on is nothing.
    bool stopped() const { return stopped_; }

private:
    Taken look_on_endless(std::size_t roll, std::size_t set);
    Taken look(std::size_t roll, std::size_t set);
    std::optional<Layout> fill(std::size_t roll, std::size_t set, std::optional<Um> available,
                               bool& fits);

    const Job& job_;
    const PieceSets& sets_;
    nest::Effort effort_;
    const nest::Watch& watch_;
    bool one_shape_each_;
    bool stopped_ = false;
    std::vector<std::size_t> like_; ///< by roll: the first that differs by its length alone
    std::map<std::pair<std::size_t, std::size_t>, Taken> endless_;
    std::map<std::pair<std::size_t, std::size_t>, Taken> known_;
};

} // namespace pelt::order
