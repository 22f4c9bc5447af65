// SPDX-License-Identifier: MIT
#include "nest/straight/ease.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

/// Members of a kind are given out in the order in which they come free, so where a block belongs
/// depends on what came before it.
class Order {
public:
    explicit Order(const Problem& problem) : problem_(problem), given_(problem.kinds.size(), 0) {}

    /// Takes the block that belongs next, one after the other.
    void sort(std::vector<Block>& blocks) {
        for (auto next = blocks.begin(); next != blocks.end(); ++next) {
            auto best = next;
            double least = mean_place(*next);
            for (auto other = next + 1; other != blocks.end(); ++other)
                if (const double place = mean_place(*other); place < least) {
                    best = other;
                    least = place;
                }
            std::rotate(next, best, best + 1);
            sort(next->children);
            if (next->is_piece())
                ++given_[static_cast<std::size_t>(next->kind)];
        }
    }

private:
    struct Sum {
        double places = 0;
        double pieces = 0;
    };

    double mean_place(const Block& block) {
        Sum sum;
        const std::vector<std::size_t> before = given_;
        add(block, sum);
        given_ = before;
        return sum.places / sum.pieces;
    }

    void add(const Block& block, Sum& sum) {
        for (const Block& child : block.children)
            add(child, sum);
        if (!block.is_piece())
            return;
        const auto kind = static_cast<std::size_t>(block.kind);
        sum.places += static_cast<double>(problem_.kinds[kind].members[given_[kind]++].place);
        sum.pieces += 1;
    }

    const Problem& problem_;
    std::vector<std::size_t> given_; ///< by kind: members that have their place
};

/// Film beside the pieces of a section, over its whole length.
Steps film_beside(const Block& section, Steps width) {
    if (section.is_piece() || section.divided == along)
        return section.size[along] * (width - section.size[across]);
    return section.size[along] * (width - section.size[across] + section.slack());
}

void put_largest_offcut_last(const Problem& problem, Filled& filled) {
    const Steps width = problem.stretches[filled.stretch].across;
    const auto last = std::max_element(filled.sections.begin(), filled.sections.end(),
                                       [&](const Block& a, const Block& b) {
                                           return film_beside(a, width) < film_beside(b, width);
                                       });
    std::rotate(last, last + 1, filled.sections.end());
}

} // namespace

void put_in_order(const Problem& problem, Sheet& sheet) {
    Order order(problem);
    for (Filled& filled : sheet) {
        put_largest_offcut_last(problem, filled);
        Block last = std::move(filled.sections.back());
        filled.sections.pop_back();
        order.sort(filled.sections);
        std::vector<Block> end{std::move(last)};
        order.sort(end);
        filled.sections.push_back(std::move(end.front()));
    }
}

} // namespace pelt::nest::straight
