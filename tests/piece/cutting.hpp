// SPDX-License-Identifier: MIT
// Cutting one panel as the driver does. For tests of piece/ only.
#pragma once

#include "develop/develop.hpp"
#include "geometry/geometry.hpp"
#include "panels.hpp"
#include "piece/piece.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

namespace pelt::test {

/// A film with room for everything: no allowances but those that a test sets.
inline Film film(Direction direction = Direction::any) {
    Film out;
    out.name = "film";
    out.width = 1524000;
    out.trim = 6000;
    out.direction = direction;
    out.allowances.wrap = 0;
    return out;
}

struct Cutting {
    std::vector<piece::Way> ways;
    Faults faults;

    const piece::Way& way() const {
        REQUIRE_MESSAGE(!ways.empty(), said());
        return ways.front();
    }
    const Piece& piece(std::size_t i = 0) const {
        REQUIRE(way().pieces.size() > i);
        return way().pieces[i];
    }
    std::string said() const {
        std::string text;
        for (const Fault& fault : faults)
            text += to_string(fault, false) + "\n";
        return text;
    }
};

inline Cutting cut(const Panel& panel, const Film& film, const piece::Wishes& wishes = {}) {
    Cutting out;
    const DevelopedPanel developed = develop::develop(panel, out.faults);
    if (!stops(out.faults))
        out.ways = piece::ways_to_cut(panel, developed, film, wishes, 0, 0, out.faults);
    return out;
}

inline piece::Wishes by_contour() {
    piece::Wishes wishes;
    wishes.by = CutBy::contour;
    return wishes;
}

inline double area_of(const Polygon& polygon) {
    return to_mm2(geometry::doubled_area(polygon));
}

/// Area in mm² to a hundredth: exact figures on the grid.
inline bool is_mm2(const Polygon& polygon, double expected) {
    return std::abs(area_of(polygon) - expected) < 0.01;
}

/// The box of a figure in whole millimetres.
struct BoxMm {
    double x0, y0, x1, y1;
    friend bool operator==(const BoxMm&, const BoxMm&) = default;
};

inline BoxMm box_mm(const Polygon& polygon) {
    const Box box = box_of(polygon.outer);
    const auto mm = [](Um um) { return static_cast<double>(um) / um_per_mm; };
    return {mm(box.low.x), mm(box.low.y), mm(box.high.x), mm(box.high.y)};
}

} // namespace pelt::test

namespace doctest {
template <>
struct StringMaker<pelt::test::BoxMm> {
    static String convert(const pelt::test::BoxMm& b) {
        return String(("[" + std::to_string(b.x0) + " " + std::to_string(b.y0) + " " +
                       std::to_string(b.x1) + " " + std::to_string(b.y1) + "]")
                          .c_str());
    }
};
} // namespace doctest
