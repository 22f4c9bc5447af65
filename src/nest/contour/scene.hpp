// SPDX-License-Identifier: MIT
// Where every item lies, and who is near whom.
#pragma once

#include "nest/contour/problem.hpp"

#include <algorithm>
#include <cstdint>
#include <vector>

namespace pelt::nest::contour {

struct Pose {
    Vec at; ///< of the piece's origin, in the search's frame
    std::uint32_t option = 0;
    std::uint32_t bay = 0;
};

/// The items' poses, kept sorted along the film. Obstacles follow the items in the numbering.
class Scene {
public:
    explicit Scene(const Problem& problem);

    const Problem& problem() const { return *problem_; }
    std::size_t items() const { return item_count_; }
    std::size_t all() const { return poses_.size(); }
    const Pose& pose(std::size_t i) const { return poses_[i]; }
    std::vector<Pose> poses() const;

    void place_all(const std::vector<Pose>& poses);
    void place(std::size_t item, const Pose& pose);
    /// Takes an item off the film; it is then near nothing.
    void lift(std::size_t item);

    /// Far side of the last item.
    double end() const;

    /// Calls `visit(item, pose)` for everything whose box comes nearer than `need` to the box.
    /// Stops when `visit` returns false.
    template <class Visit>
    void near(const Span& box, double need, Visit visit) const {
        const double low_x = box.low.x - need;
        const double high_x = box.high.x + need;
        const double low_y = box.low.y - need;
        const double high_y = box.high.y + need;
        const std::size_t n = order_.size();
        auto k = static_cast<std::size_t>(
            std::lower_bound(low_x_.begin(), low_x_.end(), low_x - widest_) - low_x_.begin());
        for (; k < n && low_x_[k] < high_x; ++k) {
            const Reach& reach = reach_[k];
            if (reach.high_x > low_x && reach.low_y < high_y && reach.high_y > low_y)
                if (!visit(order_[k], poses_[order_[k]]))
                    return;
        }
    }

    Span box_at(std::uint32_t option, Vec at) const {
        const Span& box = problem_->options[option].box;
        return {at + box.low, at + box.high};
    }

private:
    struct Reach {
        double high_x = 0;
        double low_y = 0;
        double high_y = 0;
    };
    void insert(std::size_t item);

    const Problem* problem_;
    std::size_t item_count_;
    double widest_ = 0; // of all boxes, along
    std::vector<Pose> poses_;
    std::vector<double> low_x_; // sorted
    std::vector<Reach> reach_;
    std::vector<std::uint32_t> order_;
};

} // namespace pelt::nest::contour
