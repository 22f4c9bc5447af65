// SPDX-License-Identifier: MIT
#include "report/draw/roll_margins.hpp"

#include <algorithm>

namespace pelt::report::draw {
namespace {

// In terms of the letters' size.
constexpr double tick_row = 1.3;
constexpr double tick_length = 0.4;
constexpr double apart = 0.25;

} // namespace

DistanceRows distance_rows(const std::vector<Distance>& distances, double bottom, double gap,
                           double type, const Letters& letters) {
    DistanceRows out;
    std::vector<double> row_ends;
    for (const Distance& distance : distances) {
        const double half = letters.width(distance.words, type, Face::bold) / 2 + apart * type;
        std::size_t row = 0;
        while (row < row_ends.size() && row_ends[row] > distance.x - half)
            ++row;
        row_ends.resize(std::max(row_ends.size(), row + 1));
        row_ends[row] = distance.x + half;
        out.right = std::max(out.right, distance.x + half);
        const double y = bottom + gap + (tick_length + tick_row * static_cast<double>(row)) * type;
        out.picture.marks.push_back(
            Path{Look::tick, {{{distance.x, bottom}, {distance.x, y}}}, false});
        out.picture.marks.push_back(Text{distance.words,
                                         {distance.x, y + tick_row * type / 2},
                                         type,
                                         Anchor::middle,
                                         Face::bold,
                                         false});
    }
    out.height = gap + (tick_length + tick_row * static_cast<double>(row_ends.size())) * type;
    return out;
}

Picture ends_of_roll(const std::string& end, bool has_arrow, double left, double height,
                     double type, const Letters& letters) {
    Picture out;
    const double longest = std::max(letters.width_em(end, Face::plain),
                                    letters.width_em("film arrow", Face::plain) + 3.2);
    const double size = std::min(type, height / longest);
    const double middle = height / 2;
    out.marks.push_back(Text{end, {left - type, middle}, size, Anchor::middle, Face::plain, true});
    if (!has_arrow)
        return out;
    const double length = letters.width("film arrow", size);
    const double x = 1.2 * type;
    const double below = middle + (length + 3.2 * size) / 2;
    out.marks.push_back(
        Text{"film arrow", {x, below - length / 2}, size, Anchor::middle, Face::plain, true});
    out.marks.push_back(Arrow{{x, below - length - 1.6 * size}, 2.2 * size, 0});
    return out;
}

FlawMark flaw_mark(const Box& box, double type, const Letters& letters) {
    FlawMark out;
    out.picture.marks.push_back(Rectangle{Look::flaw, box});
    out.picture.marks.push_back(Path{Look::tick,
                                     {{{box.x, box.y}, {box.right(), box.bottom()}},
                                      {{box.x, box.bottom()}, {box.right(), box.y}}},
                                     false});
    for (const bool turned : {false, true}) {
        const Text text{"flaw",     {box.x + box.width / 2, box.y + box.height / 2},
                        type,       Anchor::middle,
                        Face::bold, turned};
        out.words = box_of(text, letters);
        if (box.holds(*out.words)) {
            out.picture.marks.push_back(Rectangle{Look::plate, *out.words});
            out.picture.marks.push_back(text);
            return out;
        }
    }
    out.words.reset();
    return out;
}

} // namespace pelt::report::draw
