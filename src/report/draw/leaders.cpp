// SPDX-License-Identifier: MIT
#include "report/draw/leaders.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace pelt::report::draw {
namespace {

// In terms of the letters' size.
constexpr double lowest = 3.0; ///< the upper side of the first row above the line
constexpr double row_height = 1.1;
constexpr double apart = 0.35;
constexpr double dot = 0.14;

} // namespace

void Leaders::add(const Point& what, const std::string& number) {
    leaders_.push_back({what, number, letters_.width(number, size_, Face::bold) + apart * size_});
}

/// In their order, none over another, and each as near above its own as the others allow: the least
/// sum of squares of how far they stand aside, by joining neighbors that would overlap.
std::vector<double> Leaders::places_in(const std::vector<const Leader*>& row) const {
    struct Group {
        std::vector<double> widths;
        double width = 0;
        double wishes = 0; ///< where each would have the group begin, summed
        double begin() const { return wishes / static_cast<double>(widths.size()); }
        double end() const { return begin() + width; }
    };
    std::vector<Group> groups;
    for (const Leader* leader : row) {
        groups.push_back({{leader->width}, leader->width, leader->what.x - leader->width / 2});
        while (groups.size() > 1 && groups[groups.size() - 2].end() > groups.back().begin()) {
            const Group last = std::move(groups.back());
            groups.pop_back();
            Group& joined = groups.back();
            joined.wishes += last.wishes - static_cast<double>(last.widths.size()) * joined.width;
            joined.widths.insert(joined.widths.end(), last.widths.begin(), last.widths.end());
            joined.width += last.width;
        }
    }
    std::vector<double> places;
    double free_from = left_;
    for (const Group& group : groups) {
        double place = group.begin();
        for (const double width : group.widths) {
            places.push_back(std::max(place, free_from));
            free_from = places.back() + width;
            place += width;
        }
    }
    double free_to = right_;
    for (std::size_t i = row.size(); i-- > 0;) {
        places[i] = std::min(places[i], free_to - row[i]->width);
        free_to = places[i];
    }
    return places;
}

Leaders::Set Leaders::set() const {
    std::vector<const Leader*> sorted;
    double width = 0;
    for (const Leader& leader : leaders_) {
        sorted.push_back(&leader);
        width += leader.width;
    }
    std::stable_sort(sorted.begin(), sorted.end(), [](const Leader* a, const Leader* b) {
        return std::tuple(a->what.x, a->what.y) < std::tuple(b->what.x, b->what.y);
    });
    const auto rows = static_cast<std::size_t>(
        std::max(1.0, std::ceil(width / std::max(right_ - left_, 0.01 * size_))));
    Set set;
    for (std::size_t row = 0; row < rows; ++row) {
        std::vector<const Leader*> own;
        for (std::size_t i = row; i < sorted.size(); i += rows)
            own.push_back(sorted[i]);
        const std::vector<double> places = places_in(own);
        const double y = -(lowest + row_height * static_cast<double>(row)) * size_;
        for (std::size_t i = 0; i < own.size(); ++i)
            put(set, *own[i], places[i], y);
    }
    return set;
}

void Leaders::put(Set& set, const Leader& leader, double x, double y) const {
    const double middle = x + leader.width / 2;
    set.picture.marks.push_back(
        Path{Look::leader, {{{middle, y + 1.1 * size_}, leader.what}}, false});
    set.picture.marks.push_back(Circle{Look::arrow, leader.what, dot * size_});
    set.picture.marks.push_back(
        Text{leader.number, {middle, y + size_ / 2}, size_, Anchor::middle, Face::bold, false});
    set.height = std::max(set.height, -y);
    set.right = std::max(set.right, x + leader.width);
}

} // namespace pelt::report::draw
