// SPDX-License-Identifier: MIT
#include "nest/straight/bounds/weights.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

/// Rounding widths down only lets more rectangles fit side by side, so bounds stay valid.
constexpr Steps most_grains = 4096;

struct Slice {
    std::size_t demand = 0;
    std::size_t orientation = 0;
    std::size_t grains = 0;
    double weight = 0;
};

/// The knapsack of one place along the film. Copies of a rectangle come one by one; where the
/// choice is to be read back, the table before each copy is kept, one after the other.
class Knapsack {
public:
    Knapsack(const std::vector<Demand>& demands, Steps width, Steps grain,
             const std::vector<double>& each, bool keeps)
        : size_(static_cast<std::size_t>(width / grain) + 1) {
        for (std::size_t d = 0; d < demands.size(); ++d)
            added_.insert(added_.end(), copies(demands[d], width), d);
        rows_.resize(keeps ? size_ * (added_.size() + 1) : size_);
        for (std::size_t i = 0; i < added_.size(); ++i) {
            double* now = rows_.data() + (keeps ? i * size_ : 0);
            double* next = keeps ? now + size_ : now;
            if (keeps)
                std::copy(now, now + size_, next);
            add(demands[added_[i]], added_[i], grain, each[added_[i]], now, next);
        }
    }

    std::vector<double> most() && {
        rows_.erase(rows_.begin(), rows_.end() - static_cast<std::ptrdiff_t>(size_));
        return std::move(rows_);
    }

    std::vector<SideBySide> choice(const std::vector<Demand>& demands, Steps grain,
                                   const std::vector<double>& each) const {
        std::vector<SideBySide> out;
        std::size_t x = size_ - 1;
        for (std::size_t row = added_.size(); row > 0; --row) {
            const double* before = rows_.data() + (row - 1) * size_;
            const double* now = before + size_;
            const std::size_t d = added_[row - 1];
            for (std::size_t orientation = 0; orientation < demands[d].orientations.size();
                 ++orientation) {
                const Slice s = slice(demands[d], d, orientation, grain, each[d]);
                if (now[x] > before[x] && s.grains <= x &&
                    now[x] == before[x - s.grains] + s.weight) {
                    count(out, s);
                    x -= s.grains;
                    break;
                }
            }
        }
        return out;
    }

private:
    static std::size_t copies(const Demand& demand, Steps width) {
        Steps least = width + 1;
        for (const Orientation& orientation : demand.orientations)
            least = std::min(least, orientation.across);
        return std::min(demand.count, static_cast<std::size_t>(width / least));
    }

    static Slice slice(const Demand& demand, std::size_t d, std::size_t orientation, Steps grain,
                       double weight) {
        return {d, orientation,
                static_cast<std::size_t>(demand.orientations[orientation].across / grain),
                weight / static_cast<double>(demand.orientations[orientation].along)};
    }

    /// From the widest down, so that both may be the same table.
    void add(const Demand& demand, std::size_t d, Steps grain, double weight, const double* before,
             double* after) const {
        if (demand.orientations.size() == 1) {
            const Slice s = slice(demand, d, 0, grain, weight);
            for (std::size_t x = size_; x-- > s.grains;)
                after[x] = std::max(before[x], before[x - s.grains] + s.weight);
            return;
        }
        std::vector<Slice> slices;
        for (std::size_t orientation = 0; orientation < demand.orientations.size(); ++orientation)
            slices.push_back(slice(demand, d, orientation, grain, weight));
        for (std::size_t x = size_; x-- > 0;) {
            double best = before[x];
            for (const Slice& s : slices)
                if (s.grains <= x)
                    best = std::max(best, before[x - s.grains] + s.weight);
            after[x] = best;
        }
    }

    static void count(std::vector<SideBySide>& out, const Slice& s) {
        for (SideBySide& have : out)
            if (have.demand == s.demand && have.orientation == s.orientation) {
                ++have.count;
                return;
            }
        out.push_back({s.demand, s.orientation, 1});
    }

    std::size_t size_;
    std::vector<double> rows_;
    std::vector<std::size_t> added_; ///< by copy: the rectangle
};

} // namespace

Weights weigh(const std::vector<Demand>& demands, Steps width, std::vector<double> each,
              std::vector<SideBySide>* best) {
    Weights out;
    out.grain = width / most_grains + 1;
    Knapsack knapsack(demands, width, out.grain, each, best != nullptr);
    if (best != nullptr)
        *best = knapsack.choice(demands, out.grain, each);
    out.most = std::move(knapsack).most();
    for (std::size_t d = 0; d < demands.size(); ++d)
        out.total += each[d] * static_cast<double>(demands[d].count);
    out.each = std::move(each);
    return out;
}

std::vector<double> area_weights(const std::vector<Demand>& demands) {
    std::vector<double> each;
    for (const Demand& demand : demands)
        each.push_back(static_cast<double>(least_area(demand)));
    return each;
}

} // namespace pelt::nest::straight
