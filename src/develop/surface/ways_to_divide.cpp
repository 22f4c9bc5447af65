// SPDX-License-Identifier: MIT
#include "develop/surface/ways_to_divide.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace pelt::develop {
namespace {

constexpr double full_turn = 2 * std::numbers::pi;

/// What the outline covers, taken as a thin wire's worth of points: its middle and its long axis.
class Ways {
public:
    explicit Ways(const PlaceToDivide& place) : place_(place) {
        measure();
        middles_.push_back(middle_);
        if (std::hypot(place.peak.x - middle_.x, place.peak.y - middle_.y) > .08 * reach_)
            middles_.push_back(place.peak);
    }

    std::vector<WayToDivide> all() {
        own_lines();
        halves();
        for (int n = 3; n <= most_pieces; ++n) {
            strips(n);
            stars(n);
        }
        gratings();
        reliefs();
        return std::move(out_);
    }

private:
    static constexpr int most_pieces = 8;

    /// By the area inside: sums over the triangles from the first point.
    void measure() {
        const auto& p = place_.outline;
        double area = 0;
        double x = 0;
        double y = 0;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (std::size_t i = 0; i < p.size(); ++i) {
            const Point a = p[i];
            const Point b = p[(i + 1) % p.size()];
            const double c = a.x * b.y - b.x * a.y;
            area += c / 2;
            x += c * (a.x + b.x) / 6;
            y += c * (a.y + b.y) / 6;
            xx += c * (a.x * a.x + a.x * b.x + b.x * b.x) / 12;
            yy += c * (a.y * a.y + a.y * b.y + b.y * b.y) / 12;
            xy += c * (2 * a.x * a.y + a.x * b.y + b.x * a.y + 2 * b.x * b.y) / 24;
        }
        middle_ = {x / area, y / area};
        const double mxx = xx / area - middle_.x * middle_.x;
        const double myy = yy / area - middle_.y * middle_.y;
        const double mxy = xy / area - middle_.x * middle_.y;
        long_way_ = .5 * std::atan2(2 * mxy, mxx - myy);
        for (const Point& at : p)
            reach_ = std::max(reach_, std::hypot(at.x - middle_.x, at.y - middle_.y));
    }

    void add(Division::Kind kind, std::vector<Slit> slits, bool own = false) {
        out_.push_back({kind, own, std::move(slits)});
    }

    Point beyond(Point from, double way, double far) const {
        return {from.x + far * std::cos(way), from.y + far * std::sin(way)};
    }

    Slit across(Point through, double way) const {
        return {beyond(through, way, -3 * reach_), beyond(through, way, 3 * reach_)};
    }

    /// A line's ends are read to the millimeter at best.
    static void reach_over_the_rim(std::vector<Slit>& slits) {
        constexpr double share = .03;
        const auto longer = [](Point from, Point& to) {
            to = {to.x + share * (to.x - from.x), to.y + share * (to.y - from.y)};
        };
        longer(slits.front()[1], slits.front()[0]);
        longer(slits.back()[0], slits.back()[1]);
    }

    void own_lines() {
        std::vector<Slit> together;
        for (const std::vector<Point>& line : place_.own_lines) {
            std::vector<Slit> slits;
            for (std::size_t i = 0; i + 1 < line.size(); ++i)
                slits.push_back({line[i], line[i + 1]});
            reach_over_the_rim(slits);
            together.insert(together.end(), slits.begin(), slits.end());
            add(Division::Kind::seam, slits, true);
        }
        if (place_.own_lines.size() > 1)
            add(Division::Kind::seam, together, true);
    }

    void halves() {
        constexpr int ways = 8;
        for (const Point& through : middles_)
            for (int k = 0; k < ways; ++k)
                add(Division::Kind::seam, {across(through, long_way_ + k * full_turn / 16)});
        for (const double beside : {-.15, .15})
            for (const double turn : {0.0, full_turn / 4})
                add(Division::Kind::seam,
                    {across(beyond(middle_, long_way_ + turn + full_turn / 4, beside * reach_),
                            long_way_ + turn)});
    }

    /// How far the outline reaches along a way, from the middle.
    std::pair<double, double> extent(double way) const {
        std::pair<double, double> out{0, 0};
        for (const Point& p : place_.outline) {
            const double at = (p.x - middle_.x) * std::cos(way) + (p.y - middle_.y) * std::sin(way);
            out = {std::min(out.first, at), std::max(out.second, at)};
        }
        return out;
    }

    std::vector<Slit> parallels(double way, int pieces) const {
        const double square = way + full_turn / 4;
        const auto [low, high] = extent(square);
        std::vector<Slit> slits;
        for (int k = 1; k < pieces; ++k)
            slits.push_back(across(beyond(middle_, square, low + (high - low) * k / pieces), way));
        return slits;
    }

    void strips(int pieces) {
        for (const double turn : {0.0, full_turn / 4})
            add(Division::Kind::seam, parallels(long_way_ + turn, pieces));
    }

    void stars(int rays) {
        constexpr int turns = 4;
        for (const Point& from : middles_)
            for (int t = 0; t < turns; ++t) {
                std::vector<Slit> slits;
                for (int k = 0; k < rays; ++k)
                    slits.push_back({from, beyond(from,
                                                  long_way_ + full_turn * k / rays +
                                                      full_turn * t / (turns * rays),
                                                  3 * reach_)});
                add(Division::Kind::seam, std::move(slits));
            }
    }

    void gratings() {
        for (const auto& [along, over] : {std::pair{2, 3}, {3, 2}, {2, 4}, {4, 2}}) {
            std::vector<Slit> slits = parallels(long_way_, along);
            const std::vector<Slit> more = parallels(long_way_ + full_turn / 4, over);
            slits.insert(slits.end(), more.begin(), more.end());
            add(Division::Kind::seam, std::move(slits));
        }
    }

    /// From the middle to where the outline is last met.
    double rim(double way) const {
        const double c = std::cos(way);
        const double s = std::sin(way);
        double far = 0;
        for (std::size_t i = 0; i < place_.outline.size(); ++i) {
            const Point a = place_.outline[i];
            const Point b = place_.outline[(i + 1) % place_.outline.size()];
            const double off_a = (a.y - middle_.y) * c - (a.x - middle_.x) * s;
            const double off_b = (b.y - middle_.y) * c - (b.x - middle_.x) * s;
            if (off_a * off_b > 0 || off_a == off_b)
                continue;
            const double share = off_a / (off_a - off_b);
            const Point at{a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)};
            far = std::max(far, (at.x - middle_.x) * c + (at.y - middle_.y) * s);
        }
        return far;
    }

    void reliefs() {
        constexpr double over_the_rim = 1.05;
        const std::vector<std::vector<int>> sets{{0}, {1}, {2}, {3}, {0, 2}, {1, 3}, {0, 1, 2, 3}};
        for (const double depth : {1.0 / 3, .5, 2.0 / 3, .9})
            for (const double turn : {0.0, full_turn / 8})
                for (const std::vector<int>& set : sets) {
                    std::vector<Slit> slits;
                    for (const int k : set) {
                        const double way = long_way_ + turn + k * full_turn / 4;
                        const double far = rim(way);
                        slits.push_back({beyond(middle_, way, (1 - depth) * far),
                                         beyond(middle_, way, over_the_rim * far)});
                    }
                    add(Division::Kind::relief, std::move(slits));
                }
    }

    const PlaceToDivide& place_;
    Point middle_;
    double long_way_ = 0;
    double reach_ = 0;
    std::vector<Point> middles_; ///< to go through
    std::vector<WayToDivide> out_;
};

} // namespace

std::vector<WayToDivide> ways_to_divide(const PlaceToDivide& place) {
    return Ways(place).all();
}

} // namespace pelt::develop
