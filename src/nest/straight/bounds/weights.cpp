// SPDX-License-Identifier: MIT
#include "nest/straight/bounds/weights.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

/// Rounding widths down only lets more rectangles fit side by side, so bounds stay valid.
constexpr Steps most_grains = 4096;

struct Slice {
    std::size_t demand = 0;
    std::size_t lie = 0;
    std::size_t grains = 0;
    double weight = 0;
};

/// The knapsack of one place along the film. Copies of a rectangle come one by one; a layer of the
/// table is kept for each so that the choice can be read back.
class Knapsack {
public:
    Knapsack(const std::vector<Demand>& demands, Steps width, Steps grain,
             const std::vector<double>& each, bool keep_layers)
        : size_(static_cast<std::size_t>(width / grain) + 1), keep_(keep_layers) {
        rows_.emplace_back(size_, 0.0);
        for (std::size_t d = 0; d < demands.size(); ++d)
            for (std::size_t copy = 0; copy < copies(demands[d], width); ++copy)
                add(demands[d], d, grain, each[d]);
    }

    std::vector<double> most() && { return std::move(rows_.back()); }

    std::vector<SideBySide> choice(const std::vector<Demand>& demands, Steps grain,
                                   const std::vector<double>& each) const {
        std::vector<SideBySide> out;
        std::size_t x = size_ - 1;
        for (std::size_t row = rows_.size() - 1; row > 0; --row) {
            const std::size_t d = added_[row - 1];
            for (std::size_t lie = 0; lie < demands[d].lies.size(); ++lie) {
                const Slice s = slice(demands[d], d, lie, grain, each[d]);
                if (rows_[row][x] > rows_[row - 1][x] && s.grains <= x &&
                    rows_[row][x] == rows_[row - 1][x - s.grains] + s.weight) {
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
        for (const Lie& lie : demand.lies)
            least = std::min(least, lie.across);
        return std::min(demand.count, static_cast<std::size_t>(width / least));
    }

    static Slice slice(const Demand& demand, std::size_t d, std::size_t lie, Steps grain,
                       double weight) {
        return {d, lie, static_cast<std::size_t>(demand.lies[lie].across / grain),
                weight / static_cast<double>(demand.lies[lie].along)};
    }

    void add(const Demand& demand, std::size_t d, Steps grain, double weight) {
        std::vector<double> row = rows_.back();
        const std::vector<double>& before = rows_.back();
        for (std::size_t lie = 0; lie < demand.lies.size(); ++lie) {
            const Slice s = slice(demand, d, lie, grain, weight);
            for (std::size_t x = s.grains; x < size_; ++x)
                row[x] = std::max(row[x], before[x - s.grains] + s.weight);
        }
        if (keep_)
            rows_.push_back(std::move(row));
        else
            rows_.back() = std::move(row);
        added_.push_back(d);
    }

    static void count(std::vector<SideBySide>& out, const Slice& s) {
        for (SideBySide& have : out)
            if (have.demand == s.demand && have.lie == s.lie) {
                ++have.count;
                return;
            }
        out.push_back({s.demand, s.lie, 1});
    }

    std::size_t size_;
    bool keep_;
    std::vector<std::vector<double>> rows_;
    std::vector<std::size_t> added_;
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
    for (const Demand& demand : demands) {
        Steps least = demand.lies.front().area();
        for (const Lie& lie : demand.lies)
            least = std::min(least, lie.area());
        each.push_back(static_cast<double>(least));
    }
    return each;
}

} // namespace pelt::nest::straight
