// SPDX-License-Identifier: MIT
#include "read/edge_words.hpp"

#include "read/decimal.hpp"
#include "read/flat_ring.hpp"
#include "read/outline.hpp"
#include "read/quantities.hpp"
#include "read/suggest.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <string_view>
#include <utility>

namespace pelt::read {
namespace {

constexpr std::array<std::string_view, 4> ways{"top", "bottom", "left", "right"};
constexpr std::array<std::string_view, 4> girth_words{"top", "bottom", "start", "end"};

template <std::size_t N>
bool is_one_of(std::string_view word, const std::array<std::string_view, N>& words) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

std::string way_of(GridPoint normal) {
    if (std::abs(normal.y) >= std::abs(normal.x))
        return normal.y > 0 ? "top" : "bottom";
    return normal.x > 0 ? "right" : "left";
}

/// How far a normal points in a way, to compare edges: its share in that direction.
double towards(GridPoint normal, std::string_view way) {
    const double x = static_cast<double>(normal.x);
    const double y = static_cast<double>(normal.y);
    const double length = std::max(1.0, std::hypot(x, y));
    if (way == "top" || way == "bottom")
        return (way == "top" ? y : -y) / length;
    return (way == "right" ? x : -x) / length;
}

/// The two numbers of a word like 2-3.
std::optional<std::pair<std::string, std::string>> pair_of(std::string_view word) {
    const std::size_t dash = word.find('-');
    if (dash == std::string_view::npos || dash == 0 || dash + 1 == word.size())
        return std::nullopt;
    const auto digits = [](std::string_view text) {
        return std::all_of(text.begin(), text.end(), is_digit);
    };
    if (!digits(word.substr(0, dash)) || !digits(word.substr(dash + 1)))
        return std::nullopt;
    return std::pair(std::string(word.substr(0, dash)), std::string(word.substr(dash + 1)));
}

Heading opposite(Heading heading) {
    switch (heading) {
    case Heading::right:
        return Heading::left;
    case Heading::left:
        return Heading::right;
    case Heading::up:
        return Heading::down;
    case Heading::down:
        break;
    }
    return Heading::up;
}

std::string way_of(Heading heading, bool girths) {
    switch (heading) {
    case Heading::right:
        return girths ? "end" : "right";
    case Heading::left:
        return girths ? "start" : "left";
    case Heading::up:
        return "top";
    case Heading::down:
        break;
    }
    return "bottom";
}

bool is_front_or_rear(std::string_view word) {
    return word == "front" || word == "rear";
}

} // namespace

EdgeWords::EdgeWords(const Panel& panel)
    : has_front_and_rear_(panel.lies != LiesOn::front && panel.lies != LiesOn::rear),
      forward_(panel.forward) {
    if (const auto* girths = std::get_if<GirthsForm>(&panel.form)) {
        girths_ = true;
        known_ = !girths->stations.empty();
    }
    const auto* outline = std::get_if<OutlineForm>(&panel.form);
    if (outline == nullptr || outline->segments.empty())
        return;
    const auto flat = flat_ring(*outline);
    if (!flat || flat->ring.size() < 3)
        return;
    known_ = true;
    const bool clockwise = doubled_area(flat->ring) < 0;
    const std::size_t n = outline->segments.size();
    for (std::size_t i = 1; i <= n; ++i) {
        const OutlineSegment& segment = outline->segments[i % n];
        const GridPoint from = on_grid(outline->segments[i - 1].to);
        const GridPoint to = on_grid(segment.to);
        const GridPoint right_of_way{to.y - from.y, from.x - to.x};
        const GridPoint normal =
            clockwise ? GridPoint{-right_of_way.x, -right_of_way.y} : right_of_way;
        edges_.push_back({edge_number(i % n, n), segment.name, way_of(normal), normal});
    }
}

std::string EdgeWords::in_the_drawing(const std::string& word) const {
    const bool named = std::any_of(edges_.begin(), edges_.end(),
                                   [&](const Edge& edge) { return edge.name == word; });
    if (!is_front_or_rear(word) || named || !has_front_and_rear_ || !forward_)
        return word;
    return way_of(word == "front" ? *forward_ : opposite(*forward_), girths_);
}

void EdgeWords::tell_front(const std::string& word, const Place& place, Context& context) const {
    const std::string ways_there = girths_ ? "'top', 'bottom', 'start' and 'end'"
                                           : "'top', 'bottom', 'left' and 'right'";
    if (!has_front_and_rear_)
        context.fault(place, quoted(word) + " is no edge of a panel on the front or the rear face",
                      "its edges are " + ways_there);
    else
        context.fault(place, "which edge is the " + word + " one is not known",
                      "give 'forward', or name the edge " + ways_there);
}

void EdgeWords::check(const std::string& word, const Place& place, Context& context) const {
    const bool named = std::any_of(edges_.begin(), edges_.end(),
                                   [&](const Edge& edge) { return edge.name == word; });
    if (is_front_or_rear(word) && !named) {
        tell_front(word, place, context);
        return;
    }
    if (!known_ || word == "all" || (girths_ && is_one_of(word, girth_words)))
        return;
    if (girths_) {
        const std::string meant = word == "left" ? "start" : word == "right" ? "end" : "";
        context.fault(place, quoted(word) + " is not an edge of a panel with girths",
                      meant.empty() ? "its edges are 'top', 'bottom', 'start' and 'end'"
                                    : "did you mean '" + meant + "'?");
        return;
    }
    const bool selects = std::any_of(edges_.begin(), edges_.end(), [&](const Edge& edge) {
        return word == edge.number || word == edge.name || word == edge.way;
    });
    if (selects)
        return;
    if (is_one_of(word, ways))
        tell_way(word, place, context);
    else if (pair_of(word))
        tell_pair(word, place, context);
    else if (word == "start" || word == "end")
        context.fault(place, quoted(word) + " is an edge of panels with girths only",
                      word == "start" ? "did you mean 'left'?" : "did you mean 'right'?");
    else {
        std::vector<std::string> known;
        for (const Edge& edge : edges_)
            if (!edge.name.empty())
                known.push_back(edge.name);
        for (const std::string_view other : {"all", "top", "bottom", "left", "right"})
            known.emplace_back(other);
        context.fault(
            place, quoted(word) + " is not an edge of this panel",
            did_you_mean(word, known, "its edges are numbers such as '1-2', and", context));
    }
}

void EdgeWords::tell_pair(const std::string& word, const Place& place, Context& context) const {
    const auto [from, to] = *pair_of(word);
    const std::string turned = to + "-" + from;
    const std::string last = std::to_string(edges_.size());
    const bool reversed = std::any_of(edges_.begin(), edges_.end(),
                                      [&](const Edge& edge) { return edge.number == turned; });
    if (reversed) {
        context.fault(place, quoted(word) + " runs against the order of the points",
                      "write '" + turned + "'");
        return;
    }
    std::string from_here;
    for (const Edge& edge : edges_)
        if (edge.number.starts_with(from + "-"))
            from_here = edge.number;
    context.fault(place, quoted(word) + " is not an edge of this panel",
                  from_here.empty()
                      ? "its points are 1 to " + last + ", its edges '1-2' to '" + last + "-1'"
                      : "the edge from point " + from + " is '" + from_here + "'");
}

void EdgeWords::tell_way(const std::string& word, const Place& place, Context& context) const {
    const auto nearest =
        std::max_element(edges_.begin(), edges_.end(), [&](const Edge& a, const Edge& b) {
            return towards(a.normal, word) < towards(b.normal, word);
        });
    context.fault(place, "no edge of this panel looks to the " + word + " within 45 degrees",
                  "did you mean '" + nearest->number + "', which comes nearest?");
}

} // namespace pelt::read
