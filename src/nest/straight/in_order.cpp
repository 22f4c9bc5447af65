// SPDX-License-Identifier: MIT
#include "nest/straight/in_order.hpp"

#include "nest/straight/exact/every_way.hpp"
#include "nest/strands.hpp"

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
        like_.along = impossible;
        like_.from = 0;
        like_.is_new = true;
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
        const Problem part = part_of(first, count);
        const EveryWay every = strip_within(part, length(first, count));
        Block block = every.sheet->front().sections.front();
        rename(block, part);
        return block;
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
        const Problem part = part_of(first, count);
        if (part.kinds.size() == 0)
            return;
        const EveryWay every = strip_within(part, limit);
        if (every.sheet)
            strip_[first][count] = every.length;
        stack_[first][count] = std::min(strip_[first][count], count == 1 ? impossible : limit + 1);
    }

    Steps longest_side(std::size_t at) const {
        Steps most = 0;
        for (const Lie& lie : problem_->kinds[(*sequence_)[at]].lies)
            most = std::max(most, lie.along);
        return std::min(most, problem_->table.value_or(most));
    }

    EveryWay strip_within(const Problem& part, Steps limit) const {
        if (!can_try_every_way(part, limit))
            return {};
        return try_every_strip(part, limit);
    }

    /// No kinds when one of the pieces may not lie here.
    Problem part_of(std::size_t first, std::size_t count) const {
        Problem part;
        part.step = problem_->step;
        part.stages = problem_->stages;
        part.table = problem_->table;
        part.stretches = {like_};
        std::vector<std::size_t> kinds(sequence_->begin() + static_cast<std::ptrdiff_t>(first),
                                       sequence_->begin() +
                                           static_cast<std::ptrdiff_t>(first + count));
        std::sort(kinds.begin(), kinds.end());
        for (std::size_t i = 0; i < kinds.size(); ++i) {
            if (i == 0 || kinds[i] != kinds[i - 1]) {
                const Kind& kind = problem_->kinds[kinds[i]];
                part.kinds.push_back({{}, kind.directed, {}});
                for (const Lie& lie : kind.lies)
                    if (problem_->suits(kind, lie, like_))
                        part.kinds.back().lies.push_back(lie);
                if (part.kinds.back().lies.empty())
                    return {};
            }
            // The number of the kind in the whole problem is kept in its members.
            part.kinds.back().members.push_back({{}, kinds[i], 0, 0});
        }
        return part;
    }

    /// From the kinds and lies of a part to those of the whole problem.
    void rename(Block& block, const Problem& part) const {
        for (Block& child : block.children)
            rename(child, part);
        if (!block.is_piece())
            return;
        const Kind& kind = part.kinds[static_cast<std::size_t>(block.kind)];
        const std::size_t whole = kind.members.front().piece;
        const std::vector<Lie>& lies = problem_->kinds[whole].lies;
        const auto lie = std::find(lies.begin(), lies.end(), kind.lies[block.lie]);
        block.kind = static_cast<std::int32_t>(whole);
        block.lie = static_cast<std::uint8_t>(lie - lies.begin());
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
