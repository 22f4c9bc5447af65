// SPDX-License-Identifier: MIT
// Where every item lies, and who is near whom.
#pragma once

#include "nest/contour/problem.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <vector>

namespace pelt::nest::contour {

struct Pose {
    Vec at; ///< of the piece's origin, in the search's frame
    std::uint32_t option = 0;
    std::uint32_t bay = 0;
};

/// The items' poses, kept sorted along the film. Obstacles follow the items in the numbering. A
/// scene with a period holds a pattern: every item lies again after each period, both ways along.
class Scene {
public:
    explicit Scene(const Problem& problem);

    const Problem& problem() const { return *problem_; }
    std::size_t items() const { return item_count_; }
    std::size_t all() const { return poses_.size(); }
    const Pose& pose(std::size_t i) const { return poses_[i]; }
    std::vector<Pose> poses() const;

    /// `period` 0: nothing repeats.
    void place_all(const std::vector<Pose>& poses, double period = 0);
    void place(std::size_t item, const Pose& pose);
    /// Takes an item off the film; it is then near nothing.
    void lift(std::size_t item);

    /// Far side of the last item; of a pattern, its period.
    double end() const;

    /// Calls `visit(item, pose)` for everything whose box comes nearer than `need` to the box, and
    /// perhaps for some that only nearly do. Stops when `visit` returns false. Of a pattern every
    /// repeat is visited that comes near, with the pose that it has there.
    template <class Visit>
    void near(const Span& box, double need, Visit visit) const {
        if (period_ <= 0) {
            near_once(box, need, visit);
            return;
        }
        const double first = std::floor((box.low.x - need - widest_) / period_);
        const double last = std::floor((box.high.x + need) / period_);
        for (double k = first; k <= last; ++k) {
            const Vec by{k * period_, 0};
            const auto visit_repeat = [&](std::uint32_t item, const Pose& pose) {
                return visit(item, Pose{pose.at + by, pose.option, pose.bay});
            };
            if (!near_once({box.low - by, box.high - by}, need, visit_repeat))
                return;
        }
    }

    Span box_at(std::uint32_t option, Vec at) const {
        const Span& box = problem_->options[option].box;
        return {at + box.low, at + box.high};
    }

private:
    static constexpr std::size_t block = 8;
    static constexpr std::size_t columns = 64;

    // False when `visit` wants no more.
    template <class Visit>
    bool near_once(const Span& box, double need, Visit visit) const {
        const auto low_x = static_cast<float>(box.low.x - need);
        const auto high_x = static_cast<float>(box.high.x + need);
        const auto low_y = static_cast<float>(box.low.y - need);
        const auto high_y = static_cast<float>(box.high.y + need);
        const std::size_t n = order_.size();
        for (std::size_t k = first_from(box.low.x - need - widest_); k < n; k += block) {
            if (low_x_[k] > high_x)
                return true;
            // One byte each, so that the compiler compares a block at a time.
            std::array<std::uint8_t, block> hit;
            for (std::size_t i = 0; i < block; ++i)
                hit[i] = static_cast<std::uint8_t>(
                    (low_x_[k + i] <= high_x) & (high_x_[k + i] >= low_x) &
                    (low_y_[k + i] <= high_y) & (high_y_[k + i] >= low_y));
            for (auto hits = std::bit_cast<std::uint64_t>(hit); hits != 0; hits &= hits - 1) {
                const auto item = order_[k + static_cast<std::size_t>(lowest_byte(hits))];
                if (!visit(item, poses_[item]))
                    return false;
            }
        }
        return true;
    }

    static int lowest_byte(std::uint64_t hits) {
        const int bit = std::countr_zero(hits) / 8;
        return std::endian::native == std::endian::little ? bit : 7 - bit;
    }

    std::size_t first_from(double x) const {
        const double column = (x - column_from_) * columns_per_um_;
        if (!(column >= 1))
            return 0;
        return first_[std::min(static_cast<std::size_t>(column), columns - 1)];
    }

    Pose within_period(Pose pose) const;
    void insert(std::size_t item);
    void index();

    const Problem* problem_;
    std::size_t item_count_;
    double widest_ = 0; // of all boxes, along
    double period_ = 0;
    std::vector<Pose> poses_;
    // Boxes sorted by their low side along the film, rounded outwards a little; padded by a block
    // of boxes that nothing meets.
    std::vector<float> low_x_;
    std::vector<float> high_x_;
    std::vector<float> low_y_;
    std::vector<float> high_y_;
    std::vector<std::uint32_t> order_;
    // For every column of film, the first box that begins in it or later.
    std::array<std::uint32_t, columns> first_{};
    double column_from_ = 0;
    double columns_per_um_ = 0;
};

} // namespace pelt::nest::contour
