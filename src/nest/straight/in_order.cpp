// SPDX-License-Identifier: MIT
#include "nest/straight/in_order.hpp"

#include "model/parallel.hpp"
#include "nest/straight/exact/every_way.hpp"
#include "nest/straight/exact/part.hpp"

#include <algorithm>
#include <limits>

namespace pelt::nest::straight {
namespace {

constexpr Steps impossible = std::numeric_limits<Steps>::max() / 4;

/// Pieces in one strip at most: the work grows threefold with each.
std::size_t most_together(std::size_t pieces) {
    return pieces <= 100 ? 8 : pieces <= 400 ? 6 : 4;
}

/// The kinds in the order in which their pieces are laid.
std::vector<std::size_t> sequence_of(const Problem& problem) {
    std::vector<std::pair<std::size_t, std::size_t>> placed;
    for (std::size_t k = 0; k < problem.kinds.size(); ++k)
        for (const Member& member : problem.kinds[k].members)
            placed.emplace_back(member.place, k);
    std::sort(placed.begin(), placed.end());
    std::vector<std::size_t> out;
    for (const auto& [place, k] : placed)
        out.push_back(k);
    return out;
}

/// Strips on film like that of one stretch.
class Strips {
public:
    Strips(const Problem& problem, const std::vector<std::size_t>& sequence, const Stretch& like,
           int threads)
        : problem_(&problem), sequence_(&sequence), like_(like),
          most_(most_together(sequence.size())) {
        const std::size_t n = sequence.size();
        strip_.assign(n, std::vector<Steps>(most_ + 1, impossible));
        stack_ = strip_;
        for (std::size_t count = 1; count <= most_; ++count)
            run_all(n, threads, [&](std::size_t first) {
                if (first + count <= n)
                    measure(first, count);
            });
    }

    std::size_t most() const { return most_; }
    /// The shortest strip of so many pieces from that place on; `impossible` also where several
    /// strips are not longer.
    Steps length(std::size_t first, std::size_t count) const { return strip_[first][count]; }

    Block strip(std::size_t first, std::size_t count) const {
        const Part part = part_of(first, count);
        const EveryWay every = strip_within(part.problem(), length(first, count));
        return part.in_whole(every.sheet->front().sections.front());
    }

    bool is_for(const Stretch& stretch) const {
        return stretch.across_um == like_.across_um && stretch.arrow_known == like_.arrow_known;
    }

private:
    void measure(std::size_t first, std::size_t count) {
        Steps limit = count == 1 ? longest_side(first) : impossible;
        for (std::size_t near = 1; near < count; ++near)
            limit = std::min(limit, stack_[first][near] + stack_[first + near][count - near] - 1);
        if (limit >= impossible / 2)
            return;
        const Part part = part_of(first, count);
        if (!part.possible())
            return;
        const EveryWay every = strip_within(part.problem(), limit);
        if (every.sheet)
            strip_[first][count] = every.length;
        stack_[first][count] = std::min(strip_[first][count], count == 1 ? impossible : limit + 1);
    }

    Steps longest_side(std::size_t at) const {
        Steps most = 0;
        for (const Orientation& orientation : problem_->kinds[(*sequence_)[at]].orientations)
            most = std::max(most, orientation.along);
        return std::min(most, problem_->table.value_or(most));
    }

    Part part_of(std::size_t first, std::size_t count) const {
        const auto begin = sequence_->begin() + static_cast<std::ptrdiff_t>(first);
        return Part(*problem_, like_, {begin, begin + static_cast<std::ptrdiff_t>(count)});
    }

    static EveryWay strip_within(const Problem& part, Steps limit) {
        return can_try_every_way(part, limit) ? try_every_strip(part, limit) : EveryWay{};
    }

    const Problem* problem_;
    const std::vector<std::size_t>* sequence_;
    Stretch like_;
    std::size_t most_;
    std::vector<std::vector<Steps>> strip_; ///< by first piece and count
    std::vector<std::vector<Steps>> stack_; ///< the same, as one strip or several
};

/// How far the pieces up to some place reach, and the strip that ends there.
struct Reach {
    std::size_t stretch = 0;
    Steps used = 0;
    std::size_t count = 0; ///< pieces of the last strip
    bool possible = false;
};

class Division {
public:
    Division(const Problem& problem, int threads)
        : problem_(problem), sequence_(sequence_of(problem)) {
        for (const Stretch& stretch : problem.stretches)
            if (find(stretch) == nullptr)
                strips_.emplace_back(problem, sequence_, stretch, threads);
    }

    std::optional<Sheet> best() {
        const std::size_t n = sequence_.size();
        reach_.assign(n + 1, {});
        reach_[0].possible = true;
        for (std::size_t end = 1; end <= n; ++end)
            for (std::size_t count = 1; count <= std::min(end, strips_.front().most()); ++count)
                extend(end, count);
        return reach_[n].possible ? std::optional(sheet()) : std::nullopt;
    }

private:
    const Strips* find(const Stretch& stretch) const {
        for (const Strips& strips : strips_)
            if (strips.is_for(stretch))
                return &strips;
        return nullptr;
    }

    /// The strip goes on the first stretch that takes it. To have reached less far is never worse,
    /// as film can be passed over.
    void extend(std::size_t end, std::size_t count) {
        const Reach& before = reach_[end - count];
        if (!before.possible)
            return;
        for (std::size_t s = before.stretch; s < problem_.stretches.size(); ++s) {
            const Stretch& stretch = problem_.stretches[s];
            const Steps from = s == before.stretch ? before.used : 0;
            const Steps used = from + find(stretch)->length(end - count, count);
            if (used > stretch.along)
                continue;
            Reach& best = reach_[end];
            if (!best.possible || std::tie(s, used) < std::tie(best.stretch, best.used))
                best = {s, used, count, true};
            return;
        }
    }

    Sheet sheet() const {
        Sheet out;
        for (std::size_t end = sequence_.size(); end > 0; end -= reach_[end].count) {
            const Reach& reach = reach_[end];
            if (out.empty() || out.back().stretch != reach.stretch)
                out.push_back({reach.stretch, {}});
            const Stretch& stretch = problem_.stretches[reach.stretch];
            out.back().sections.push_back(find(stretch)->strip(end - reach.count, reach.count));
        }
        for (Filled& filled : out)
            std::reverse(filled.sections.begin(), filled.sections.end());
        std::reverse(out.begin(), out.end());
        return out;
    }

    const Problem& problem_;
    std::vector<std::size_t> sequence_;
    std::vector<Strips> strips_;
    std::vector<Reach> reach_;
};

} // namespace

std::optional<Sheet> in_order(const Problem& problem, int threads) {
    return Division(problem, threads).best();
}

} // namespace pelt::nest::straight
