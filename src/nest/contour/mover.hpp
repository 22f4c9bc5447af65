// SPDX-License-Identifier: MIT
// Finds a better place for one item while all others lie still.
#pragma once

#include "nest/contour/alike.hpp"
#include "nest/contour/descent.hpp"
#include "nest/contour/scene.hpp"
#include "nest/contour/tuning.hpp"
#include "nest/contour/weights.hpp"
#include "nest/random.hpp"

#include <limits>
#include <optional>

namespace pelt::nest::contour {

/// A violation below this many micrometres is none to the search; rounding to the grid moves pieces
/// farther, and `onto_grid` mends both.
inline constexpr double tolerance_um = 0.02;

/// Where an option may lie in a bay when nothing may reach beyond `end`.
std::optional<Span> room_before(const Problem& problem, std::uint32_t option, std::uint32_t bay,
                                double end);

struct Candidate {
    Pose pose;
    double cost = std::numeric_limits<double>::infinity();
};

/// How many places are tried for each item.
struct Sampling {
    int anywhere = tuning::samples_anywhere;
    int nearby = tuning::samples_nearby;
    int alike = tuning::samples_alike; ///< of `anywhere`, for kinds of several items
    int refined = tuning::refined;
};

class Mover {
public:
    Mover(const Problem& problem, Random& random);

    /// Weighted violation of an item at a pose, or something above `bound` once it is above.
    double cost(const Scene& scene, std::size_t item, std::uint32_t option, Vec at, double bound);

    /// The best place found, the present one included; weights apply.
    Candidate best_place(const Scene& scene, const Weights& weights, std::size_t item, double end,
                         const Sampling& sampling);

    /// Slides a candidate to a local optimum within its bay.
    void descend(const Scene& scene, std::size_t item, double end, Candidate& candidate);

    /// What an item at a pose has around it, up to `ahead` beyond the gap; valid until next asked.
    const std::vector<Border>& borders(const Scene& scene, std::size_t item, const Pose& pose,
                                       double ahead) {
        gather(scene, item, {pose, 0}, ahead);
        return borders_;
    }

    /// A place drawn evenly over options and film; none when nothing fits before `end`.
    std::optional<Pose> anywhere(std::size_t item, double end);

    /// Asks for this much more than the gap.
    void keep_margin(double um) { margin_ = um; }

    std::uint64_t work() const { return work_; }

private:
    void load(const Weights& weights, std::size_t item);
    void unload(const Weights& weights, std::size_t item);
    std::optional<Pose> nearby(const Scene& scene, std::size_t item, double end);
    void gather(const Scene& scene, std::size_t item, const Candidate& from, double ahead);
    void keep(std::size_t count, const Candidate& candidate);

    const Problem* problem_;
    Random* random_;
    Alike alike_;
    std::vector<float> size_weight_; // large pieces matter more
    std::vector<float> weight_;      // towards the item at hand
    struct Look {
        const Field* field = nullptr;
        const Field::Cell* cell = nullptr;
        Vec p;
        double need = 0;
        std::uint32_t item = 0;
    };
    std::vector<Look> looks_;
    std::vector<Border> borders_;
    std::vector<Candidate> kept_;
    double margin_ = 0;
    std::uint64_t work_ = 0; // field look-ups
};

} // namespace pelt::nest::contour
