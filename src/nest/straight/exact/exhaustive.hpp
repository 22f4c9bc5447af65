// SPDX-License-Identifier: MIT
// Every straight way to lay out a small job on one endless stretch of film, by dynamic programming
// over which pieces a part holds. For every set of pieces the least sides are kept that some way of
// cutting needs, so nothing is lost; what cannot be in a layout within the length is forgotten.
//
// Any number of turns on the table: a part is a piece, or two parts side by side, or two parts one
// behind the other. Two or three turns: sections of pieces, or of columns of pieces, side by side.
// A layout is a stack of sections. Parts so wide that nothing fits beside them are sections.
#pragma once

#include "nest/straight/block.hpp"
#include "nest/straight/exact/stairs.hpp"
#include "nest/straight/exact/yards.hpp"

#include <functional>
#include <optional>

namespace pelt::nest::straight {

class Exhaustive {
public:
    /// Uses the width of the problem's first stretch, which is taken as endless. `weights` sharpen
    /// the tests of Yards.
    Exhaustive(const Problem& problem, std::vector<std::vector<double>> weights);
    /// From now on everything must lie in one section, which is a single piece or is slit first.
    void want_one_section() { one_section_ = true; }

    enum class End {
        found,   ///< sections() is a shortest layout
        none,    ///< there is none within the length
        gave_up, ///< too much work, or too much to remember
        stopped, ///< by the callback
    };
    /// Looks at all layouts within `length`. `work` counts ways to put two parts together; the
    /// callback is asked from time to time whether to go on.
    End run(Steps length, std::uint64_t work, int threads, const std::function<bool()>& go_on);

    Steps length() const;
    std::vector<Block> sections() const;
    std::uint64_t work_done() const { return work_done_; }

    /// Whether the tables for the job have a reasonable size, and about how much work it is.
    static bool possible(const Problem& problem);
    static double least_work(const Problem& problem);

private:
    /// What a thread works with.
    struct Lane {
        StairMaker maker;
        /// By state of a group: parts (three turns: columns) to go with what is left of it.
        std::vector<std::vector<State>> firsts;
        std::vector<Length> wholes; ///< by state of a group: of two lots of sections
    };
    void make_columns();
    Steps longest_part() const; ///< every part lies in one section, and that on the table
    /// States of one block and layer; those of one layer do not need each other.
    using Groups = std::vector<std::span<const State>>;
    Groups groups_from(std::size_t from, std::size_t states) const;
    void work_on(std::span<const State> group, Lane& lane) const;
    void find_pairs(std::span<const State> group, Lane& lane) const;
    /// Whether there are ways to make it other than of a pair.
    bool has_own_sides(State s) const;
    void make(State s, const std::vector<State>& firsts, Length whole, StairMaker& maker) const;
    void try_single(State s, StairMaker& maker) const;
    void try_last_piece(State s, StairMaker& maker) const;
    std::size_t last_kind(State s) const;
    bool is_one_section(State s) const { return one_section_ && s == states_.all(); }
    bool is_single(State s) const { return s == states_.one(last_kind(s)); }

    friend class Rebuilder;

    const Problem& problem_;
    std::vector<Demand> demands_;
    std::vector<std::vector<double>> weights_;
    Steps width_ = 0;
    bool one_section_ = false;
    States states_;
    std::optional<Yards> yards_;
    Stairs parts_;   ///< any turns: parts beside which something fits; else: such sections
    Stairs columns_; ///< three turns only
    std::uint64_t work_done_ = 0;
};

} // namespace pelt::nest::straight
