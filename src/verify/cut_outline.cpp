// SPDX-License-Identifier: MIT
#include "verify/covering.hpp"
#include "verify/figures.hpp"
#include "verify/words.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::verify {
namespace {

/// What a stretch of a part's rim is.
enum class Ends {
    film,   ///< the film as cut ends here too, but for its bleed
    seam,   ///< the same without bleed
    not_cut ///< cut on the vehicle only: the film as cut goes on
};

/// `around`: the part's film without its holes. What tucks enclose between them is no film of the
/// panel, and is cut on the vehicle nevertheless: at the table there are only the cuts asked for.
Ends end_of(const Covering& covering, const Stretch& stretch, const Rim& around) {
    const GridPoint beyond = stretch.outside();
    if (covering.wanted.cut_at_table(beyond))
        return Ends::film;
    if (covering.wanted.stays_on(beyond))
        return Ends::seam;
    const bool goes_on = covering.wanted.in_sheet(beyond) || around.winding(beyond) > 0;
    return goes_on ? Ends::not_cut : Ends::film;
}

class CutOutline {
public:
    CutOutline(const Covering& covering, std::size_t part, const Polygon& outline,
               Sentences& faults)
        : covering_(covering), film_(covering.parts[part]), part_(part), outline_(outline),
          cut_(outline), around_(std::vector<Ring>{film_.film.outer}), faults_(faults),
          bleed_(covering.panel.allowances.bleed.value_or(covering.job.film.allowances.bleed)) {
        for (const Ring* ring : rings_of(film_.film))
            add_sharp_corners(*ring);
        for (const Stretch& stretch : covering_.stretches)
            if (stretch.part == static_cast<int>(part_) &&
                !covering_.near_a_rim(stretch.outside()) &&
                end_of(covering_, stretch, around_) == Ends::seam)
                seams_.push_back(&stretch);
    }

    void check() {
        if (!within(Rim(std::vector<Ring>{film_.film.outer}),
                    Rim(std::vector<Ring>{outline_.outer}), 0))
            tell("is cut smaller than what stays on the vehicle");
        check_holes();
        for (const Stretch& stretch : covering_.stretches)
            if (stretch.part == static_cast<int>(part_))
                check_stretch(stretch);
    }

private:
    static std::vector<const Ring*> rings_of(const Polygon& polygon) {
        std::vector<const Ring*> out{&polygon.outer};
        for (const Ring& hole : polygon.holes)
            out.push_back(&hole);
        return out;
    }

    void tell(const std::string& what) {
        faults_.push_back(covering_.who + ": piece " + std::to_string(part_ + 1) + " " + what);
    }

    /// Corners whose bleed reaches visibly farther than the bleed: more than about ten degrees.
    void add_sharp_corners(const Ring& ring) {
        constexpr double sine = 0.17;
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const GridPoint a = ring[(i + ring.size() - 1) % ring.size()];
            const GridPoint b = ring[i];
            const GridPoint c = ring[(i + 1) % ring.size()];
            const auto turn = static_cast<double>(cross(b - a, c - b));
            const double lengths = std::sqrt(static_cast<double>(dot(b - a, b - a)) *
                                             static_cast<double>(dot(c - b, c - b)));
            if (std::abs(turn) > sine * lengths || dot(b - a, c - b) < 0)
                sharp_corners_.push_back(b);
        }
    }

    /// A corner is cut square at twice the bleed; the corners of that cut lie at most √5 times the
    /// bleed from it.
    bool in_reach_of_a_sharp_corner(GridPoint p) const {
        const Um distance = bleed_ * 9 / 4 + 2 * beside;
        return std::any_of(sharp_corners_.begin(), sharp_corners_.end(), [&](GridPoint corner) {
            return dot(p - corner, p - corner) <= static_cast<Int128>(distance) * distance;
        });
    }

    /// In the bleed of a side, even through film and out again.
    bool beside_another_side(GridPoint p) const {
        const Um reach = bleed_ + hair;
        return !film_.rim.each_near(grown({p, p}, reach), [&](const Edge& edge) {
            return side(edge.from, edge.to, p) > 0 || dot(p - edge.from, edge.to - edge.from) < 0 ||
                   dot(p - edge.to, edge.to - edge.from) > 0 ||
                   point_apart(p, edge.from, edge.to, reach);
        });
    }

    bool is_cut_from(GridPoint p) const { return cut_.winding(p) > 0; }

    /// Table cuts take nothing that stays on, keep the bleed from it, and are asked for.
    void check_holes() {
        for (Ring hole : outline_.holes) {
            const bool asked = std::all_of(hole.begin(), hole.end(), [&](GridPoint p) {
                return covering_.wanted.cut_at_table(p) || !covering_.wanted.stays_on(p) ||
                       film_.rim.near_rim(p, hair);
            });
            const GridPoint middle = middle_of(hole);
            std::reverse(hole.begin(), hole.end());
            if (!asked || !covering_.wanted.cut_at_table(middle))
                tell("has a hole cut at the table that is not asked for");
            else if (!apart(Rim(std::vector<Ring>{hole}), film_.rim,
                            std::max<Um>(bleed_ - hair, 0)))
                tell("has a hole cut at the table too near what stays on the vehicle");
        }
    }

    /// A place in the hole, beside the middle of its longest side.
    static GridPoint middle_of(const Ring& hole) {
        Stretch best;
        double longest = 0;
        for (std::size_t i = 0; i < hole.size(); ++i) {
            const GridPoint from = hole[i];
            const GridPoint to = hole[i + 1 == hole.size() ? 0 : i + 1];
            const GridPoint way = to - from;
            const double length =
                std::hypot(static_cast<double>(way.x), static_cast<double>(way.y));
            if (length <= longest)
                continue;
            longest = length;
            best.middle = {(from.x + to.x) / 2, (from.y + to.y) / 2};
            best.out = {static_cast<double>(way.y) / length, static_cast<double>(-way.x) / length};
        }
        return best.outside();
    }

    /// Where an opening's side lies on the line of a seam, the part ends at the seam there as well.
    bool goes_on_as_a_seam(const Stretch& stretch) const {
        return std::any_of(seams_.begin(), seams_.end(), [&](const Stretch* seam) {
            const auto off = [&](GridPoint p) {
                return std::abs(static_cast<double>(p.x - seam->middle.x) * seam->out.x +
                                static_cast<double>(p.y - seam->middle.y) * seam->out.y);
            };
            return off(stretch.from) <= hair && off(stretch.to) <= hair &&
                   stretch.out.x * seam->out.x + stretch.out.y * seam->out.y > 0;
        });
    }

    void check_stretch(const Stretch& stretch) {
        // Across a slit too narrow to look into lies the part's own film.
        if (covering_.near_a_rim(stretch.outside()) || covering_.holds(part_, stretch.outside()))
            return;
        switch (goes_on_as_a_seam(stretch) ? Ends::seam : end_of(covering_, stretch, around_)) {
        case Ends::not_cut:
            if (!is_cut_from(stretch.outside()))
                tell("is cut at the table where it is to be cut on the vehicle");
            return;
        case Ends::seam:
            if (is_cut_from(stretch.outside()) && !in_reach_of_a_sharp_corner(stretch.middle))
                tell("is cut with bleed at a seam");
            return;
        case Ends::film:
            check_bleed(stretch);
            return;
        }
    }

    void check_bleed(const Stretch& stretch) {
        const std::string at = " to grip at " + in_mm(stretch.middle) + " of its drawing";
        if (!is_cut_from(stretch.off(bleed_ - beside)) && !narrow_there(stretch))
            tell("leaves too little" + at);
        // Corners that are nearly flat reach a little farther than their sides.
        const Um far = bleed_ + bleed_ / 100 + beside;
        const GridPoint beyond = stretch.off(far);
        if (is_cut_from(beyond) && !film_.rim.near_rim(beyond, far - hair) &&
            !in_reach_of_a_sharp_corner(beyond) && !beside_another_side(beyond))
            tell("leaves too much" + at);
    }

    /// Film is on the vehicle across the stretch, so near that the bleed of both has no place.
    bool narrow_there(const Stretch& stretch) const {
        return bleed_ <= beside || covering_.near_a_rim(stretch.off(bleed_ - beside));
    }

    const Covering& covering_;
    const PartFilm& film_;
    std::size_t part_;
    const Polygon& outline_;
    Rim cut_;
    Rim around_; ///< the film that stays on, its holes filled
    Sentences& faults_;
    Um bleed_;
    std::vector<GridPoint> sharp_corners_;
    std::vector<const Stretch*> seams_; ///< where the part ends at a seam
};

} // namespace

void check_cut_outline(const Covering& covering, std::size_t part, const Polygon& outline,
                       Sentences& faults) {
    CutOutline(covering, part, outline, faults).check();
}

} // namespace pelt::verify
