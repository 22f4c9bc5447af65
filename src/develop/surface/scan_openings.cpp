// SPDX-License-Identifier: MIT
#include "develop/surface/scan_openings.hpp"

#include "geometry/mesh/mesh.hpp"
#include "geometry/space.hpp"
#include "model/marked_length.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>

namespace pelt::develop {
namespace {

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

/// Which loop of the surface each opening of the panel is.
class Openings {
public:
    Openings(const Panel& panel, const Surface& scan, Faults& faults)
        : panel_(panel), scan_(scan), faults_(faults) {}

    std::vector<std::size_t> find() {
        std::vector<std::size_t> loops;
        for (const Opening& opening : panel_.openings) {
            const std::size_t loop = opening.hole ? index(*opening.hole) : nearest(*opening.near);
            if (loop == 0 || loop >= scan_.loops.size())
                wrong(opening, "is not in the scan, which has " + holes());
            else if (std::find(loops.begin(), loops.end(), loop) != loops.end())
                wrong(opening, "is the same hole of the scan as another one");
            loops.push_back(loop);
        }
        if (!stops(faults_))
            tell_covered(loops);
        return loops;
    }

private:
    void wrong(const Opening& opening, const std::string& what) {
        faults_.push_back({Severity::file, opening.place, panel_.name,
                           "opening '" + opening.name + "' " + what,
                           "holes count from 1, the one with the longest rim first"});
    }

    std::string holes() const {
        const std::size_t n = scan_.loops.size() - 1;
        return n == 0 ? "no hole" : n == 1 ? "one hole" : std::to_string(n) + " holes";
    }

    std::size_t nearest(Point3 p) const {
        std::size_t best = 0;
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t i = 1; i < scan_.loops.size(); ++i)
            for (const int at : scan_.loops[i]) {
                const double d = geometry::distance(p, scan_.points[index(at)]);
                if (d < least) {
                    least = d;
                    best = i;
                }
            }
        return best;
    }

    void tell_covered(const std::vector<std::size_t>& named) {
        constexpr double worth_a_word = 60; // mm of rim
        std::size_t covered = 0;
        double longest = 0;
        for (std::size_t i = 1; i < scan_.loops.size(); ++i)
            if (std::find(named.begin(), named.end(), i) == named.end()) {
                ++covered;
                longest = std::max(longest, geometry::length_of(scan_.points, scan_.loops[i]));
            }
        if (covered > 0)
            faults_.push_back({longest > worth_a_word ? Severity::warning : Severity::note,
                               panel_.place, panel_.name,
                               "its scan has " + std::to_string(covered) +
                                   (covered == 1 ? " hole that is" : " holes that are") +
                                   " covered, the longest rim " + marked_mm(longest, Told::nearest),
                               "name a hole under 'openings' to have it cut out"});
    }

    const Panel& panel_;
    const Surface& scan_;
    Faults& faults_;
};

} // namespace

std::vector<std::size_t> loops_of_openings(const Panel& panel, const Surface& scan,
                                           Faults& faults) {
    return Openings(panel, scan, faults).find();
}

} // namespace pelt::develop
