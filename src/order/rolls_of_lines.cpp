// SPDX-License-Identifier: MIT
#include "order/rolls_of_lines.hpp"

#include <algorithm>
#include <cstddef>
#include <map>
#include <utility>

namespace pelt::order {
namespace {

Money cost_of(const OrderLine& line) {
    return line.count * *line.price;
}

/// Some rolls; their lines hang together from the last one back.
struct Part {
    std::size_t last = 0; ///< index into the chain; 0: none
    std::size_t rolls = 0;
    Length length;
    Money cost;
};

class CheapestOfLines {
public:
    CheapestOfLines(const std::vector<std::vector<OrderLine>>& choices,
                    const std::vector<OrderLine>& extra, Length least)
        : choices_(choices), extra_(extra), least_(least), chain_(1) {}

    std::optional<Purchase> run() {
        std::vector<Part> parts{{}};
        for (const std::vector<OrderLine>& lines : choices_)
            parts = with_one_more(parts, lines);
        for (const Part& part : parts)
            consider(part);
        const std::vector<Part> without_extra = parts;
        while (!extra_.empty() && !parts.empty() && looks_ < most_looks) {
            parts = worth_going_on(with_one_more(unfinished(parts), extra_));
            for (const Part& part : parts)
                consider(part);
        }
        if (looks_ >= most_looks)
            for (const Part& part : without_extra)
                consider(filled_up(part));
        if (!best_)
            return std::nullopt;
        return Purchase{lines_of(*best_), best_->cost, looks_ < most_looks};
    }

private:
    /// A look takes some nanoseconds. So many come up only where hundreds of metres are spare.
    static constexpr std::size_t most_looks = 4'000'000;

    struct Link {
        std::size_t before = 0;
        const OrderLine* line = nullptr;
    };

    struct More {
        const Part* part;
        const OrderLine* line;
        Length length;
        Money cost;
    };

    std::vector<Part> with_one_more(const std::vector<Part>& parts,
                                    const std::vector<OrderLine>& lines) {
        std::vector<More> all;
        for (const Part& part : parts)
            for (const OrderLine& line : lines)
                all.push_back(
                    {&part, &line, part.length + line.length(), part.cost + cost_of(line)});
        looks_ += all.size();
        std::stable_sort(all.begin(), all.end(), [](const More& a, const More& b) {
            return a.cost != b.cost ? a.cost < b.cost : a.length > b.length;
        });
        std::vector<Part> kept;
        for (const More& more : all) {
            // Dearer ones only where they are longer, and only as long as is wanted.
            if (!kept.empty() &&
                (more.length <= kept.back().length || kept.back().length >= least_))
                continue;
            chain_.push_back({more.part->last, more.line});
            kept.push_back({chain_.size() - 1, more.part->rolls + 1, more.length, more.cost});
        }
        return kept;
    }

    /// What more spare may be added to.
    std::vector<Part> unfinished(std::vector<Part> parts) const {
        std::erase_if(parts, [&](const Part& part) {
            return part.length >= least_ || (best_ && part.cost >= best_->cost);
        });
        return parts;
    }

    /// Less what ways with fewer rolls for spare have come to for as little money.
    std::vector<Part> worth_going_on(std::vector<Part> parts) {
        std::erase_if(parts, [&](const Part& part) {
            const auto dearer = longest_.upper_bound(part.cost);
            return dearer != longest_.begin() && std::prev(dearer)->second >= part.length;
        });
        for (const Part& part : parts) {
            auto here = longest_.insert_or_assign(part.cost, part.length).first;
            for (++here; here != longest_.end() && here->second <= part.length;)
                here = longest_.erase(here);
        }
        return parts;
    }

    void consider(const Part& part) {
        if (part.length < least_)
            return;
        if (!best_ || part.cost < best_->cost ||
            (part.cost == best_->cost && part.rolls <= best_->rolls && part.length > best_->length))
            best_ = part;
    }

    /// With the line that is cheapest for its length, again and again.
    Part filled_up(Part part) {
        const auto by_length = [](const OrderLine& a, const OrderLine& b) {
            return Int128{cost_of(a).micros()} * b.length().pm() <
                   Int128{cost_of(b).micros()} * a.length().pm();
        };
        const OrderLine& line = *std::min_element(extra_.begin(), extra_.end(), by_length);
        while (part.length < least_) {
            chain_.push_back({part.last, &line});
            part = {chain_.size() - 1, part.rolls + 1, part.length + line.length(),
                    part.cost + cost_of(line)};
        }
        return part;
    }

    std::vector<OrderLine> lines_of(const Part& part) const {
        std::vector<OrderLine> lines;
        for (std::size_t at = part.last; at != 0; at = chain_[at].before)
            lines.push_back(*chain_[at].line);
        std::reverse(lines.begin(), lines.end());
        std::stable_sort(
            lines.begin() + static_cast<std::ptrdiff_t>(choices_.size()), lines.end(),
            [](const OrderLine& a, const OrderLine& b) { return a.length() > b.length(); });
        return lines;
    }

    const std::vector<std::vector<OrderLine>>& choices_;
    const std::vector<OrderLine>& extra_;
    Length least_;
    std::vector<Link> chain_; ///< the first stands for none
    std::map<Money, Length> longest_;
    std::optional<Part> best_;
    std::size_t looks_ = 0;
};

} // namespace

std::optional<Purchase> cheapest_of(const std::vector<std::vector<OrderLine>>& choices,
                                    const std::vector<OrderLine>& extra, Length least) {
    return CheapestOfLines(choices, extra, least).run();
}

} // namespace pelt::order
