// SPDX-License-Identifier: MIT
#include "nest/straight/tree.hpp"

#include "nest/straight/block.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

double squared(Steps a, Steps b) {
    const double area = static_cast<double>(a) * static_cast<double>(b);
    return area * area;
}

} // namespace

Tree::Tree(const Problem& problem, const std::vector<Steps>& limits) : problem_(&problem) {
    for (std::size_t i = 0; i < problem.stretches.size(); ++i) {
        Node node;
        node.size = {limits[i], problem.stretches[i].across};
        node.slack = limits[i];
        node.stretch = static_cast<std::int32_t>(i);
        node.alive = true;
        nodes_.push_back(node);
    }
    edited_in_.assign(nodes_.size(), 0);
    listed_.assign(nodes_.size(), false);
    is_touched_.assign(nodes_.size(), false);
    for (std::int32_t i = 0; i < size(); ++i)
        touch(i);
    for (const Kind& kind : problem.kinds)
        for (const Stretch& stretch : problem.stretches) {
            std::uint32_t bits = 0;
            for (std::size_t orientation = 0; orientation < kind.orientations.size(); ++orientation)
                if (problem.suits(kind, kind.orientations[orientation], stretch))
                    bits |= 1U << orientation;
            suited_.push_back(bits);
        }
}

void Tree::touch(std::int32_t i) {
    if (is_touched_[static_cast<std::size_t>(i)])
        return;
    is_touched_[static_cast<std::size_t>(i)] = true;
    touched_.push_back(i);
}

void Tree::list_touched() {
    for (const std::int32_t i : touched_) {
        const auto at = static_cast<std::size_t>(i);
        is_touched_[at] = false;
        if (!listed_[at] && takes(nodes_[at])) {
            listed_[at] = true;
            open_.push_back(i);
        }
    }
    touched_.clear();
}

bool Tree::grows(const Node& node, Steps by) const {
    if (node.parent == no_node)
        return false;
    const Node& parent = (*this)[node.parent];
    if (by > parent.slack)
        return false;
    return parent.parent != no_node || !problem_->table ||
           node.size[parent.divided] + by <= *problem_->table;
}

Node& Tree::edit(std::int32_t i) {
    const auto at = static_cast<std::size_t>(i);
    if (edited_in_[at] != change_) {
        edited_in_[at] = change_;
        saved_.emplace_back(i, nodes_[at]);
    }
    touch(i);
    return nodes_[at];
}

void Tree::commit() {
    unused_.insert(unused_.end(), released_.begin(), released_.end());
    saved_.clear();
    created_.clear();
    released_.clear();
    ++change_;
}

void Tree::roll_back() {
    for (const auto& [i, node] : saved_) {
        nodes_[static_cast<std::size_t>(i)] = node;
        touch(i);
    }
    unused_.insert(unused_.end(), created_.rbegin(), created_.rend());
    saved_.clear();
    created_.clear();
    released_.clear();
    ++change_;
}

std::int32_t Tree::create(std::int32_t parent, Steps size_along, Steps size_across) {
    std::int32_t i = 0;
    if (unused_.empty()) {
        i = size();
        nodes_.emplace_back();
        edited_in_.push_back(0);
        listed_.push_back(false);
        is_touched_.push_back(false);
    } else {
        i = unused_.back();
        unused_.pop_back();
    }
    created_.push_back(i);
    Node fresh;
    fresh.size = {size_along, size_across};
    fresh.stretch = (*this)[parent].stretch;
    fresh.depth = (*this)[parent].depth + 1;
    fresh.divided = other((*this)[parent].divided);
    fresh.alive = true;
    edit(i) = fresh;
    attach(parent, i);
    return i;
}

void Tree::release(std::int32_t i) {
    edit(i).alive = false;
    released_.push_back(i);
}

void Tree::attach(std::int32_t parent, std::int32_t child) {
    Node& p = edit(parent);
    Node& c = edit(child);
    c.parent = parent;
    c.before = no_node;
    c.next = p.first;
    if (p.first != no_node)
        edit(p.first).before = child;
    p.first = child;
}

void Tree::detach(std::int32_t child) {
    const Node c = (*this)[child];
    if (c.before == no_node)
        edit(c.parent).first = c.next;
    else
        edit(c.before).next = c.next;
    if (c.next != no_node)
        edit(c.next).before = c.before;
}

/// A piece of `parent`, as thick as the parent or with the rest of the thickness free beside it.
std::int32_t Tree::put(std::int32_t parent, std::size_t kind, std::uint8_t orientation,
                       Steps thickness) {
    const Orientation& size = problem_->kinds[kind].orientations[orientation];
    const std::array<Steps, 2> extent{size.along, size.across};
    const Axis d = (*this)[parent].divided;
    std::int32_t holder = parent;
    if (extent[other(d)] < thickness) {
        std::array<Steps, 2> wrapped = extent;
        wrapped[other(d)] = thickness;
        holder = create(parent, wrapped[along], wrapped[across]);
        edit(holder).slack = thickness - extent[other(d)];
    }
    const std::int32_t piece = create(holder, size.along, size.across);
    Node& p = edit(piece);
    p.kind = static_cast<std::int32_t>(kind);
    p.orientation = orientation;
    return piece;
}

void Tree::insert(std::size_t kind, const Option& option) {
    if (option.grow > 0)
        thicken(option.node, option.grow);
    const Node node = (*this)[option.node];
    const Axis d = node.divided;
    const Axis o = other(d);
    const Orientation& orientation = problem_->kinds[kind].orientations[option.orientation];
    const std::array<Steps, 2> extent{orientation.along, orientation.across};
    if (option.how == Option::How::first_with) {
        edit(option.node).slack = node.slack - extent[d];
        put(option.node, kind, option.orientation, node.size[o]);
        return;
    }
    std::array<Steps, 2> size = node.size;
    size[d] = node.slack;
    const std::int32_t part = create(option.node, size[along], size[across]);
    edit(option.node).slack = 0;
    edit(part).slack = node.size[o] - extent[o];
    put(part, kind, option.orientation, node.slack);
}

/// Film for a thicker node is taken from what is free in its parent; its children get the new
/// thickness as free film.
void Tree::thicken(std::int32_t i, Steps by) {
    const Axis o = other((*this)[i].divided);
    Node& node = edit(i);
    node.size[o] += by;
    edit(node.parent).slack -= by;
    std::int32_t next = no_node;
    for (std::int32_t c = (*this)[i].first; c != no_node; c = next) {
        next = (*this)[c].next;
        if ((*this)[c].is_piece()) {
            wrap(c, by);
        } else {
            Node& child = edit(c);
            child.size[o] += by;
            child.slack += by;
        }
    }
}

void Tree::wrap(std::int32_t piece, Steps slack) {
    const Node p = (*this)[piece];
    const Axis o = other((*this)[p.parent].divided);
    std::array<Steps, 2> size = p.size;
    size[o] += slack;
    detach(piece);
    const std::int32_t holder = create(p.parent, size[along], size[across]);
    edit(holder).slack = slack;
    attach(holder, piece);
    edit(piece).depth = p.depth + 1;
}

void Tree::add(std::int32_t parent, const Block& block) {
    const std::int32_t i = create(parent, block.size[along], block.size[across]);
    if (block.is_piece()) {
        Node& node = edit(i);
        node.kind = block.kind;
        node.orientation = block.orientation;
        return;
    }
    edit(i).slack = block.slack();
    for (const Block& child : block.children)
        add(i, child);
}

void Tree::adopt(std::size_t stretch, const Block& section) {
    const std::int32_t whole = root(stretch);
    const Steps width = (*this)[whole].size[across];
    if (!section.is_piece() && section.divided == along) {
        for (const Block& child : section.children)
            adopt(stretch, child);
        return;
    }
    edit(whole).slack -= section.size[along];
    if (section.is_piece() && section.size[across] == width) {
        add(whole, section);
        return;
    }
    const std::int32_t holder = create(whole, section.size[along], width);
    edit(holder).slack = width - section.size[across] + (section.is_piece() ? 0 : section.slack());
    if (section.is_piece())
        add(holder, section);
    for (const Block& child : section.children)
        add(holder, child);
}

void Tree::remove(std::int32_t i, std::vector<std::int32_t>& out) {
    if ((*this)[i].is_piece())
        out.push_back((*this)[i].kind);
    std::vector<std::int32_t> open{(*this)[i].first};
    while (!open.empty()) {
        const std::int32_t c = open.back();
        open.pop_back();
        if (c == no_node)
            continue;
        open.push_back((*this)[c].next);
        open.push_back((*this)[c].first);
        if ((*this)[c].is_piece())
            out.push_back((*this)[c].kind);
        release(c);
    }
    cut_out(i);
}

/// The node's film becomes free in its parent; parents that are empty then go the same way.
void Tree::cut_out(std::int32_t i) {
    while (true) {
        const std::int32_t parent = (*this)[i].parent;
        detach(i);
        Node& p = edit(parent);
        p.slack += (*this)[i].size[p.divided];
        release(i);
        if (p.first != no_node || p.parent == no_node) {
            draw_together(parent);
            return;
        }
        i = parent;
    }
}

/// From a node in which film became free up to the stretch: nodes shrink to the thickness that
/// their children need, so that free film gathers in the largest rectangles.
void Tree::draw_together(std::int32_t i) {
    while (i != no_node) {
        const std::int32_t parent = (*this)[i].parent;
        while (parent != no_node && tighten(i)) {
        }
        if ((*this)[i].alive)
            dissolve_if_single(i);
        i = parent;
    }
}

bool Tree::tighten(std::int32_t i) {
    const Axis o = other((*this)[i].divided);
    Steps spare = (*this)[i].size[o];
    for (std::int32_t c = (*this)[i].first; c != no_node; c = (*this)[c].next)
        spare = std::min(spare, (*this)[c].is_piece() ? 0 : (*this)[c].slack);
    if (spare == 0)
        return false;
    edit(i).size[o] -= spare;
    edit((*this)[i].parent).slack += spare;
    std::int32_t next = no_node;
    for (std::int32_t c = (*this)[i].first; c != no_node; c = next) {
        next = (*this)[c].next;
        Node& child = edit(c);
        child.size[o] -= spare;
        child.slack -= spare;
        dissolve_if_single(c);
    }
    return true;
}

/// A node that is nothing but its only child gives way to it; the child's own children then
/// follow the cuts of the parent.
void Tree::dissolve_if_single(std::int32_t i) {
    const Node node = (*this)[i];
    if (node.parent == no_node || node.is_piece() || node.slack > 0 || node.first == no_node ||
        (*this)[node.first].next != no_node)
        return;
    const std::int32_t only = node.first;
    detach(i);
    release(i);
    if ((*this)[only].is_piece()) {
        attach(node.parent, only);
        set_depths(only, node.depth);
        return;
    }
    edit(node.parent).slack += (*this)[only].slack;
    std::int32_t next = no_node;
    for (std::int32_t c = (*this)[only].first; c != no_node; c = next) {
        next = (*this)[c].next;
        attach(node.parent, c);
        set_depths(c, node.depth);
    }
    release(only);
}

void Tree::set_depths(std::int32_t i, std::int32_t depth) {
    edit(i).depth = depth;
    for (std::int32_t c = (*this)[i].first; c != no_node; c = (*this)[c].next)
        set_depths(c, depth + 1);
}

void Tree::keep_better(Option& best, const Option& option) const {
    if (best.how == Option::How::none || option.loss < best.loss)
        best = option;
}

/// Loss: what the squares of the free areas lose. It asks for tight fits and for free film in
/// one piece.
void Tree::consider(Option& best, std::int32_t i, std::uint8_t orientation,
                    const std::array<Steps, 2>& extent, Steps over) const {
    const Node& node = (*this)[i];
    const Axis d = node.divided;
    const Axis o = other(d);
    const Steps thickness = node.size[o];
    if (over > 0) {
        const Node& parent = (*this)[node.parent];
        const double before =
            squared(node.slack, thickness) + squared(parent.slack, parent.size[d]);
        const double after = squared(node.slack - extent[d], extent[o]) +
                             squared(parent.slack - over, parent.size[d]);
        keep_better(best, {Option::How::first_with, i, orientation, over,
                           before - after + squared(over, node.size[d] - node.slack)});
        return;
    }
    const double before = squared(node.slack, thickness);
    const bool inner = node.depth + 1 < problem_->stages;
    const double beside =
        squared(node.slack - extent[d], thickness) + (inner ? squared(extent[d], -over) : 0);
    keep_better(best, {Option::How::first_with, i, orientation, 0, before - beside});
    if (node.parent != no_node && inner && over < 0 && extent[d] < node.slack) {
        const double above =
            squared(node.slack, -over) +
            (node.depth + 2 < problem_->stages ? squared(node.slack - extent[d], extent[o]) : 0);
        keep_better(best, {Option::How::first_against, i, orientation, 0, before - above});
    }
}

void Tree::set_limit(std::size_t stretch, Steps limit) {
    Node& node = edit(root(stretch));
    node.slack += limit - node.size[along];
    node.size[along] = limit;
}

Steps Tree::used(std::size_t stretch) const {
    const Node& node = (*this)[root(stretch)];
    return node.size[along] - node.slack;
}

double Tree::room() const {
    double sum = 0;
    for (const Node& node : nodes_)
        if (takes(node))
            sum += squared(node.slack, node.size[other(node.divided)]);
    return sum;
}

std::size_t Tree::cuts() const {
    std::size_t sum = 0;
    for (const Node& node : nodes_)
        if (node.alive && node.parent != no_node)
            sum += 1;
    // each child is cut off but the last one of a node without slack
    for (const Node& node : nodes_)
        if (node.alive && !node.is_piece() && node.parent != no_node && node.slack == 0)
            sum -= 1;
    return sum;
}

} // namespace pelt::nest::straight
