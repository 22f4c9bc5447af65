// SPDX-License-Identifier: MIT
#include "read/context.hpp"

#include "model/limits.hpp"

#include <algorithm>
#include <tuple>

namespace pelt::read {
namespace {

constexpr std::size_t most_listed = 100;

/// A hostile file can have a million faults; more than this are only counted.
constexpr std::size_t most_kept = 2'000;

bool stands_before(const Fault& a, const Fault& b) {
    return std::tie(a.place.line, a.place.column) < std::tie(b.place.line, b.place.column);
}

} // namespace

bool Context::full() const {
    return told_ >= most_kept;
}

void Context::fault(const Place& place, std::string what, std::string remedy) {
    ++wrong_;
    if (told_++ < most_kept)
        faults_.push_back({Severity::file, place, panel, std::move(what), std::move(remedy)});
}

void Context::add(Faults faults) {
    for (Fault& fault : faults) {
        wrong_ += stops({fault}) ? 1 : 0;
        if (told_++ < most_kept)
            faults_.push_back(std::move(fault));
    }
}

bool Context::may_draw(std::size_t points, const Place& place) {
    const bool told = drawn_ > limit::drawn_points;
    drawn_ += points;
    if (drawn_ <= limit::drawn_points)
        return true;
    if (!told)
        fault(place,
              "the outlines of the file take more than " + limit::in_groups(limit::drawn_points) +
                  " points up to here, those along arcs included",
              "make several files of it, or leave out points that lie on a straight line");
    else
        ++wrong_;
    return false;
}

bool Context::may_compare(std::size_t letters) {
    if (letters > limit::letters_compared - compared_)
        return false;
    compared_ += letters;
    return true;
}

void Context::finish(Faults& faults, std::size_t& unlisted) && {
    std::stable_sort(faults_.begin(), faults_.end(), stands_before);
    const std::size_t listed = std::min(faults_.size(), most_listed);
    unlisted = told_ - listed;
    faults_.resize(listed);
    faults = std::move(faults_);
}

} // namespace pelt::read
