// SPDX-License-Identifier: MIT
#include "nest/contour/contour.hpp"

#include "nest/contour/bounds.hpp"
#include "nest/contour/finish.hpp"
#include "nest/contour/problem.hpp"
#include "nest/contour/strand.hpp"
#include "nest/strands.hpp"

#include <algorithm>
#include <memory>

namespace pelt::nest::contour {
namespace {

// The search from start to end: epochs of all strands, joined after each.
class Search {
public:
    Search(const Problem& problem, const Finisher& finisher, const Effort& effort, Um bound,
           const Watch& watch)
        : problem_(problem), finisher_(finisher), effort_(effort), bound_(bound), watch_(watch) {
        Random seeds(effort.seed);
        const std::size_t count = effort.trial ? 1 : tuning::strands;
        for (std::size_t i = 0; i < count; ++i)
            strands_.push_back(std::make_unique<Strand>(problem, seeds.bits(), i));
    }

    std::optional<Layout> run() {
        const bool endless = effort_.amount <= 0;
        const auto units = static_cast<std::uint64_t>(std::max(effort_.amount, 1));
        const std::uint64_t epochs = tuning::joins_a_unit * units;
        const std::uint64_t quota =
            effort_.trial ? 1 : tuning::work_a_unit / tuning::joins_a_unit / tuning::strands;
        bool stopped = false;
        for (std::uint64_t epoch = 0; (endless || epoch < epochs) && !stopped; ++epoch) {
            run_all(strands_.size(), effort_.threads,
                    [&](std::size_t i) { strands_[i]->run(quota); });
            join();
            const double share =
                endless ? 0 : static_cast<double>(epoch + 1) / static_cast<double>(epochs);
            if (watch_ && !watch_({layout_ ? length_of(*layout_) : 0, bound_, share}))
                stopped = epoch + 1 < epochs || endless;
            if ((layout_ && (effort_.trial || length_of(*layout_) <= bound_)) ||
                (!layout_ && !enough_film()))
                break;
        }
        if (layout_)
            layout_->stopped = stopped;
        return std::move(layout_);
    }

    /// The pieces for which no film was left, when there is no layout.
    std::vector<std::size_t> misfits() const {
        std::vector<std::size_t> pieces;
        for (const std::uint32_t item : strands_.front()->left_over())
            pieces.push_back(problem_.kind_of(item).piece);
        std::sort(pieces.begin(), pieces.end());
        pieces.erase(std::unique(pieces.begin(), pieces.end()), pieces.end());
        return pieces;
    }

private:
    // The shortest layout that holds on the grid goes to every strand.
    void join() {
        while (true) {
            const Found* shortest = nullptr;
            std::size_t owner = 0;
            for (std::size_t i = 0; i < strands_.size(); ++i)
                if (const std::optional<Found>& best = strands_[i]->best())
                    if (shortest == nullptr || best->end < shortest->end) {
                        shortest = &*best;
                        owner = i;
                    }
            if (shortest == nullptr || (best_ && shortest->end >= best_->end))
                return;
            if (std::optional<Layout> layout = finisher_.layout(shortest->poses)) {
                layout_ = std::move(layout);
                best_ = *shortest;
                for (const auto& strand : strands_)
                    strand->adopt(*best_);
                return;
            }
            strands_[owner]->reject();
        }
    }

    bool enough_film() const {
        double film = 0;
        for (const Bay& bay : problem_.bays)
            film += (bay.film.high.x - bay.film.low.x) * (bay.film.high.y - bay.film.low.y);
        return film >= problem_.area;
    }

    const Problem& problem_;
    const Finisher& finisher_;
    const Effort& effort_;
    Um bound_;
    const Watch& watch_;
    std::vector<std::unique_ptr<Strand>> strands_;
    std::optional<Found> best_;
    std::optional<Layout> layout_;
};

// The bound is for the pieces on new film; what lies on stock does not count.
class NewFilm {
public:
    NewFilm(std::span<const Piece> pieces, std::span<const Roll> rolls, Um gap)
        : pieces_(pieces), rolls_(rolls) {
        count_ = static_cast<std::size_t>(std::count_if(
            rolls.begin(), rolls.end(), [](const Roll& roll) { return roll.is_new; }));
        const auto first =
            std::find_if(rolls.begin(), rolls.end(), [](const Roll& roll) { return roll.is_new; });
        if (first != rolls.end())
            bounds_.emplace(pieces, first->width - 2 * first->trim, gap);
    }

    /// 0 when some of the pieces may lie on stock.
    Um least_for_all() const {
        if (count_ < rolls_.size())
            return 0;
        std::vector<std::size_t> demand;
        for (const Piece& piece : pieces_)
            demand.push_back(piece.ids.size());
        return bounds_->best(demand, count_).length;
    }

    Bound bound_of(const Layout& layout) const {
        std::vector<std::size_t> demand(pieces_.size());
        for (const UsedRoll& used : layout.rolls)
            if (rolls_[used.roll].is_new)
                for (const Placement& placement : used.placements)
                    ++demand[placement.piece];
        return bounds_ ? bounds_->best(demand, count_) : Bound{};
    }

private:
    std::span<const Piece> pieces_;
    std::span<const Roll> rolls_;
    std::size_t count_ = 0;
    std::optional<Bounds> bounds_;
};

} // namespace

Result nest(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal,
            const Effort& effort, const Watch& watch) {
    Result result;
    const Problem problem = prepare(pieces, rolls, goal.gap, result.misfits);
    if (!result.misfits.empty())
        return result;
    Layout empty;
    if (problem.items.empty()) {
        result.layout = empty;
        return result;
    }
    const NewFilm film(pieces, rolls, goal.gap);
    const Finisher finisher(problem, pieces, rolls, goal.gap);
    Search search(problem, finisher, effort, film.least_for_all(), watch);
    result.layout = search.run();
    if (result.layout)
        result.layout->bound = film.bound_of(*result.layout);
    else
        result.misfits = search.misfits();
    return result;
}

} // namespace pelt::nest::contour
