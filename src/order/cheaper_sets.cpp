// SPDX-License-Identifier: MIT
#include "order/cheaper_sets.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

namespace pelt::order {
namespace {

constexpr std::size_t most_rolls = 5;
constexpr std::int64_t most_lines = 100;
constexpr std::size_t most_looks = 200'000;

Money cost_of(const OrderLine& line) {
    return line.count * *line.price;
}

class Combining {
public:
    Combining(std::vector<OrderLine> lines, Um least, Money below)
        : lines_(std::move(lines)), below_(below), least_(least) {
        for (const OrderLine& line : lines_) {
            if (!least_line_ || cost_of(line) < *least_line_)
                least_line_ = cost_of(line);
            if (!best_value_ ||
                micros_of(line) * um_of(*best_value_) < micros_of(*best_value_) * um_of(line))
                best_value_ = line;
        }
    }

    CheaperSets run() {
        add({}, 0);
        std::stable_sort(out_.sets.begin(), out_.sets.end(), [](const Set& a, const Set& b) {
            return std::tuple(a.cost, a.lengths.size(), -a.total) <
                   std::tuple(b.cost, b.lengths.size(), -b.total);
        });
        return std::move(out_);
    }

private:
    static Int128 micros_of(const OrderLine& line) { return cost_of(line).micros(); }
    static Int128 um_of(const OrderLine& line) { return line.length().floor_um(); }

    /// What is still missing costs no less than at the best price a length.
    bool may_stay_cheaper(const Set& set) const {
        const Int128 missing = std::max<Um>(0, least_ - set.total);
        return (below_ - set.cost).micros() * um_of(*best_value_) >
               missing * micros_of(*best_value_);
    }

    /// What is still to come is no longer than the line at hand.
    bool may_become_long_enough(const Set& set, Um longest) const {
        const auto more = static_cast<Um>(most_rolls - set.lengths.size());
        return set.total + more * longest >= least_;
    }

    void add(const Set& before, std::size_t from) {
        for (std::size_t i = from; i < lines_.size(); ++i) {
            if (++looks_ > most_looks) {
                out_.all = false;
                return;
            }
            Set set = before;
            set.cost = set.cost + cost_of(lines_[i]);
            if (set.cost >= below_)
                continue;
            const Um length = lines_[i].length().floor_um();
            set.lengths.push_back(length);
            set.total += length;
            if (!may_stay_cheaper(set))
                continue;
            if (set.total >= least_)
                out_.sets.push_back(set);
            if (set.cost + *least_line_ >= below_)
                continue;
            if (set.lengths.size() < most_rolls && may_become_long_enough(set, length))
                add(set, i);
            else
                out_.all = false;
        }
    }

    std::vector<OrderLine> lines_; ///< the longest first
    Money below_;
    Um least_;
    std::optional<Money> least_line_;
    std::optional<OrderLine> best_value_; ///< the cheapest for its length
    CheaperSets out_;
    std::size_t looks_ = 0;
};

} // namespace

CheaperSets cheaper_sets(const Film& film, Um least, Um most, Money below) {
    // Where film is sold in very small steps one length is as cheap as can be but for a step.
    for (const Offer& offer : film.sold)
        if (Length::from_um(most).pm() / offer.by.pm() > most_lines)
            return {{}, false};
    std::vector<OrderLine> lines = lines_for(film, 1, most);
    std::reverse(lines.begin(), lines.end());
    return Combining(std::move(lines), least, below).run();
}

} // namespace pelt::order
