// SPDX-License-Identifier: MIT
// A layout in the making: on every stretch of film a tree of straight cuts, with the film that is
// still free in it. Changes can be taken back.
//
// A node is a rectangle of film. A divided node is cut in one direction into its children, in no
// particular order, and what is left over in that direction (`slack`) is free. The children of a
// node cut along are rectangles or nodes cut across, and the other way round; there is no node
// with a single child and no slack but a stretch's own.
#pragma once

#include "nest/straight/problem.hpp"

#include <array>
#include <cstdint>
#include <vector>

namespace pelt::nest::straight {

enum Axis : std::uint8_t { along = 0, across = 1 };
inline Axis other(Axis d) {
    return d == along ? across : along;
}

struct Block;

inline constexpr std::int32_t no_node = -1;

struct Node {
    std::array<Steps, 2> size{}; ///< along, across
    Steps slack = 0;             ///< divided nodes: what is free at the end
    std::int32_t parent = no_node;
    std::int32_t first = no_node;  ///< child
    std::int32_t next = no_node;   ///< sibling
    std::int32_t before = no_node; ///< sibling
    std::int32_t kind = no_node;   ///< of the rectangle; divided nodes have none
    std::int32_t stretch = 0;
    std::int32_t depth = 0; ///< a child of the stretch has 1: freed by the first cut
    std::uint8_t orientation = 0;
    Axis divided = along; ///< the direction in which the children follow each other
    bool alive = false;
    bool is_piece() const { return kind != no_node; }
};

/// One way to put a rectangle into free film.
struct Option {
    enum class How : std::uint8_t {
        none,
        first_with,   ///< first a cut like its siblings', then across it
        first_against ///< the other way round
    };
    How how = How::none;
    std::int32_t node = no_node;
    std::uint8_t orientation = 0;
    Steps grow = 0;  ///< how much the node must first become thicker, at its parent's cost
    double loss = 0; ///< of room to put things, the least the better
};

class Tree {
public:
    /// Empty film; `limits[i]` of stretch i may be used.
    Tree(const Problem& problem, const std::vector<Steps>& limits);

    const Problem& problem() const { return *problem_; }
    std::int32_t root(std::size_t stretch) const { return static_cast<std::int32_t>(stretch); }
    std::size_t open_count() const { return open_.size(); }
    const Node& operator[](std::int32_t i) const { return nodes_[static_cast<std::size_t>(i)]; }
    /// All indices are below this; not all are alive.
    std::int32_t size() const { return static_cast<std::int32_t>(nodes_.size()); }

    /// The best option for a rectangle by Option::loss; How::none when it fits nowhere. A way to
    /// put it is passed over when `skip()` says so.
    template <class Skip>
    Option best_option(std::size_t kind, Skip&& skip);
    void insert(std::size_t kind, const Option& option);
    /// Puts a finished section into the free film of a stretch, which must be long enough.
    void adopt(std::size_t stretch, const Block& section);
    /// Takes a node and all in it out, appends the kinds of its rectangles to `out`, and draws the
    /// free film together.
    void remove(std::int32_t node, std::vector<std::int32_t>& out);

    /// Sets how much of a stretch may be used; its sections must fit.
    void set_limit(std::size_t stretch, Steps limit);
    Steps used(std::size_t stretch) const;
    Steps limit(std::size_t stretch) const { return (*this)[root(stretch)].size[along]; }

    /// Sum of squared areas of the free rectangles that can take a piece.
    double room() const;
    /// How often film is cut, trims not counted.
    std::size_t cuts() const;

    void commit();
    void roll_back();

private:
    Node& edit(std::int32_t i);
    std::int32_t create(std::int32_t parent, Steps size_along, Steps size_across);
    void release(std::int32_t i);
    void attach(std::int32_t parent, std::int32_t child);
    void detach(std::int32_t child);
    void cut_out(std::int32_t child);
    void draw_together(std::int32_t node);
    bool tighten(std::int32_t node);
    void dissolve_if_single(std::int32_t node);
    void set_depths(std::int32_t node, std::int32_t depth);
    void thicken(std::int32_t node, Steps by);
    void add(std::int32_t parent, const Block& block);
    void wrap(std::int32_t piece, Steps slack);
    std::int32_t put(std::int32_t parent, std::size_t kind, std::uint8_t orientation,
                     Steps thickness);
    bool takes(const Node& node) const {
        return node.alive && !node.is_piece() && node.slack > 0 && node.depth < problem_->stages;
    }
    bool grows(const Node& node, Steps by) const;
    void touch(std::int32_t i);
    void list_touched();
    void consider(Option& best, std::int32_t i, std::uint8_t orientation,
                  const std::array<Steps, 2>& extent, Steps over) const;
    void keep_better(Option& best, const Option& option) const;

    const Problem* problem_;
    std::vector<Node> nodes_;
    std::vector<std::int32_t> unused_;
    std::vector<std::uint32_t> edited_in_; ///< by node: the change that last saved it
    std::uint32_t change_ = 1;
    std::vector<std::pair<std::int32_t, Node>> saved_;
    std::vector<std::int32_t> touched_; ///< since the last look for an option
    std::vector<std::int32_t> open_;    ///< holds all nodes with free film, and some more
    std::vector<bool> is_touched_;
    std::vector<bool> listed_;          ///< by node: whether it is in open_
    std::vector<std::uint32_t> suited_; ///< by kind and stretch: a bit for every lie
    std::vector<std::int32_t> created_;
    std::vector<std::int32_t> released_;
};

template <class Skip>
Option Tree::best_option(std::size_t kind, Skip&& skip) {
    list_touched();
    Option best;
    const Kind& k = problem_->kinds[kind];
    for (std::size_t at = 0; at < open_.size();) {
        const std::int32_t i = open_[at];
        const Node& node = (*this)[i];
        if (!takes(node)) {
            listed_[static_cast<std::size_t>(i)] = false;
            open_[at] = open_.back();
            open_.pop_back();
            continue;
        }
        ++at;
        const std::uint32_t suited =
            suited_[kind * problem_->stretches.size() + static_cast<std::size_t>(node.stretch)];
        for (std::size_t orientation = 0; orientation < k.orientations.size(); ++orientation) {
            const Orientation& size = k.orientations[orientation];
            const std::array<Steps, 2> extent{size.along, size.across};
            if (extent[node.divided] > node.slack || (suited >> orientation & 1U) == 0)
                continue;
            const Steps over = extent[other(node.divided)] - node.size[other(node.divided)];
            if (over > 0 && !grows(node, over))
                continue;
            if (!skip())
                consider(best, i, static_cast<std::uint8_t>(orientation), extent, over);
        }
    }
    return best;
}

} // namespace pelt::nest::straight
