// SPDX-License-Identifier: MIT
#include "nest/contour/jobs.hpp"

#include <geos_c.h>

#include <algorithm>
#include <cmath>
#include <cstdarg>
#include <memory>
#include <numbers>

namespace pelt::test {
namespace {

void silent(const char*, ...) {}

class Geos {
public:
    Geos() : handle_(initGEOS_r(silent, silent)) {}
    ~Geos() { finishGEOS_r(handle_); }
    Geos(const Geos&) = delete;
    Geos& operator=(const Geos&) = delete;

    using Shape = std::unique_ptr<GEOSGeometry, void (*)(GEOSGeometry*)>;

    std::shared_ptr<GEOSGeometry> polygon(const Polygon& polygon) const {
        std::vector<GEOSGeometry*> holes;
        for (const Ring& hole : polygon.holes)
            holes.push_back(ring(hole));
        GEOSGeometry* made = GEOSGeom_createPolygon_r(handle_, ring(polygon.outer), holes.data(),
                                                      static_cast<unsigned>(holes.size()));
        return {made, [h = handle_](GEOSGeometry* g) { GEOSGeom_destroy_r(h, g); }};
    }

    double distance(const GEOSGeometry* a, const GEOSGeometry* b) const {
        double d = 0;
        GEOSDistance_r(handle_, a, b, &d);
        return d;
    }

    double common_area(const GEOSGeometry* a, const GEOSGeometry* b) const {
        GEOSGeometry* common = GEOSIntersection_r(handle_, a, b);
        if (common == nullptr)
            return std::nan("");
        double area = 0;
        GEOSArea_r(handle_, common, &area);
        GEOSGeom_destroy_r(handle_, common);
        return area;
    }

private:
    GEOSGeometry* ring(const Ring& ring) const {
        GEOSCoordSequence* points =
            GEOSCoordSeq_create_r(handle_, static_cast<unsigned>(ring.size() + 1), 2);
        for (std::size_t i = 0; i <= ring.size(); ++i) {
            const GridPoint& p = ring[i % ring.size()];
            GEOSCoordSeq_setXY_r(handle_, points, static_cast<unsigned>(i),
                                 static_cast<double>(p.x), static_cast<double>(p.y));
        }
        return GEOSGeom_createLinearRing_r(handle_, points);
    }

    GEOSContextHandle_t handle_;
};

// Doubles hold distances of some metres to about a nanometre; overlaps of touching pieces show as
// slivers of less than a square micrometre a millimetre of contact.
constexpr double distance_slack_um = 1e-3;
constexpr double area_slack_um2 = 2e3;

std::vector<Turn> turns_of(std::mt19937& random) {
    switch (random() % 3) {
    case 0:
        return {no_turn};
    case 1:
        return {no_turn, half_turn};
    default:
        return {no_turn, quarter_turn, half_turn, three_quarter_turn};
    }
}

Ring star(std::mt19937& random, Um least, Um most, std::size_t points, bool clockwise) {
    std::uniform_real_distribution<double> radius(static_cast<double>(least),
                                                  static_cast<double>(most));
    Ring ring;
    for (std::size_t i = 0; i < points; ++i) {
        const double angle =
            2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(points);
        const double r = radius(random);
        ring.push_back({std::llround(r * std::cos(angle)), std::llround(r * std::sin(angle))});
    }
    if (clockwise)
        std::reverse(ring.begin(), ring.end());
    return ring;
}

void check_demand(const std::vector<Piece>& pieces, const Layout& layout,
                  std::vector<std::string>& faults) {
    std::vector<std::vector<int>> seen;
    for (const Piece& piece : pieces)
        seen.emplace_back(piece.ids.size(), 0);
    for (const UsedRoll& used : layout.rolls)
        for (const Placement& p : used.placements)
            ++seen.at(p.piece).at(p.copy);
    for (const auto& copies : seen)
        for (const int n : copies)
            if (n != 1)
                faults.push_back("a copy is there " + std::to_string(n) + " times");
}

void check_roll(const Geos& geos, const std::vector<Piece>& pieces, const Roll& roll, Um gap,
                const UsedRoll& used, bool freely, std::vector<std::string>& faults) {
    std::vector<std::shared_ptr<GEOSGeometry>> shapes;
    Um far = 0;
    GridPoint before{};
    for (const Placement& p : used.placements) {
        const CutShape& shape = pieces[p.piece].shapes.at(p.shape);
        if (!(freely && pieces[p.piece].direction == Direction::any) &&
            std::find(shape.turns.begin(), shape.turns.end(), p.turn) == shape.turns.end())
            faults.push_back("a turn that is not allowed");
        if (!roll.arrow_known && pieces[p.piece].direction != Direction::any)
            faults.push_back("a directed piece on a roll without an arrow");
        const Polygon outline = placed(shape.outline, p.turn, p.at);
        const Box box = box_of(outline.outer);
        if (box.low.x < 0 || box.low.y < roll.trim || box.high.y > roll.width - roll.trim ||
            (roll.available && box.high.x > *roll.available))
            faults.push_back("outside the film");
        if (box.low < before)
            faults.push_back("not in the order of coming free");
        before = box.low;
        far = std::max(far, box.high.x);
        shapes.push_back(geos.polygon(outline));
        for (const Flaw& flaw : roll.flaws) {
            const auto bare = geos.polygon({rectangle(flaw.from, flaw.low.value_or(0), flaw.to,
                                                      flaw.high.value_or(roll.width)),
                                            {}});
            if (!(geos.common_area(bare.get(), shapes.back().get()) < area_slack_um2))
                faults.push_back("a flaw is covered");
        }
    }
    if (far != used.length)
        faults.push_back("the length is not the far side of the last piece");
    for (std::size_t i = 0; i < shapes.size(); ++i)
        for (std::size_t j = i + 1; j < shapes.size(); ++j) {
            if (geos.distance(shapes[i].get(), shapes[j].get()) <
                static_cast<double>(gap) - distance_slack_um)
                faults.push_back("nearer than the gap");
            if (!(geos.common_area(shapes[i].get(), shapes[j].get()) < area_slack_um2))
                faults.push_back("overlap");
        }
}

} // namespace

Piece piece_of(Polygon outline, std::vector<Turn> turns, std::size_t copies) {
    Piece piece;
    piece.ids.resize(copies);
    piece.direction = turns.size() == 1   ? Direction::one_way
                      : turns.size() == 2 ? Direction::two_way
                                          : Direction::any;
    piece.wrapped = outline;
    piece.shapes.push_back({std::move(outline), std::move(turns)});
    return piece;
}

Ring rectangle(Um low_x, Um low_y, Um high_x, Um high_y, bool clockwise) {
    Ring ring{{low_x, low_y}, {high_x, low_y}, {high_x, high_y}, {low_x, high_y}};
    if (clockwise)
        std::reverse(ring.begin(), ring.end());
    return ring;
}

Roll roll_of(Um width, std::optional<Um> available) {
    Roll roll;
    roll.name = "new 1";
    roll.width = width;
    roll.available = available;
    return roll;
}

std::vector<Piece> random_pieces(std::mt19937& random, std::size_t kinds) {
    std::vector<Piece> pieces;
    for (std::size_t k = 0; k < kinds; ++k) {
        Polygon outline;
        outline.outer = star(random, 50'000, 300'000, 3 + random() % 20, false);
        if (random() % 4 == 0) {
            outline.outer = star(random, 250'000, 300'000, 8 + random() % 8, false);
            outline.holes.push_back(star(random, 120'000, 180'000, 4 + random() % 6, true));
        }
        pieces.push_back(piece_of(std::move(outline), turns_of(random), 1 + random() % 3));
    }
    return pieces;
}

std::string faults_of(const std::vector<Piece>& pieces, const std::vector<Roll>& rolls, Um gap,
                      const Layout& layout, bool freely) {
    std::vector<std::string> faults;
    check_demand(pieces, layout, faults);
    const Geos geos;
    for (const UsedRoll& used : layout.rolls)
        check_roll(geos, pieces, rolls.at(used.roll), gap, used, freely, faults);
    std::string lines;
    for (const std::string& fault : faults)
        lines += fault + "\n";
    return lines;
}

nest::Result nested(const std::vector<Piece>& pieces, const std::vector<Roll>& rolls, Um gap,
                    int threads, double share) {
    nest::Goal goal;
    goal.by = CutBy::contour;
    goal.gap = gap;
    nest::Effort effort;
    effort.threads = threads;
    return nest::nest(pieces, rolls, goal, effort,
                      [share](const nest::Progress& progress) { return progress.share < share; });
}

nest::Result nested_freely(const std::vector<Piece>& pieces, const std::vector<Roll>& rolls, Um gap,
                           int threads) {
    nest::Goal goal;
    goal.by = CutBy::contour;
    goal.gap = gap;
    goal.free_turns = true;
    nest::Effort effort;
    effort.threads = threads;
    return nest::nest(pieces, rolls, goal, effort, {});
}

nest::Result tried(const std::vector<Piece>& pieces, const std::vector<Roll>& rolls, Um gap,
                   int threads) {
    nest::Goal goal;
    goal.by = CutBy::contour;
    goal.gap = gap;
    return nest::nest(pieces, rolls, goal, {1, threads, 1, true}, {});
}

std::vector<Numbers> numbers(const Layout& layout) {
    std::vector<Numbers> out;
    for (const UsedRoll& used : layout.rolls)
        for (const Placement& p : used.placements)
            out.emplace_back(used.roll, p.piece, p.copy, p.shape, p.turn.millidegrees, p.at.x,
                             p.at.y);
    return out;
}

} // namespace pelt::test
