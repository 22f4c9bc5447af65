// SPDX-License-Identifier: MIT
#include "order/ways.hpp"

#include "model/parallel.hpp"
#include "order/canonical.hpp"
#include "order/fill.hpp"

#include <algorithm>
#include <optional>
#include <span>

namespace pelt::order {
namespace {

using MaybeScore = std::optional<Score>;

class Trials {
public:
    Trials(const Job& job, const std::vector<Ways>& panels, const Request& request, bool quick)
        : job_(job), panels_(panels), effort_(request.effort), watch_(request.watch) {
        effort_.amount = 1;
        effort_.seed = 1;
        effort_.trial = quick;
    }

    /// A score for each choice; none where no layout was found.
    std::vector<MaybeScore> of(const std::vector<Choice>& choices) const {
        const auto at_once = static_cast<std::size_t>(std::max(1, effort_.threads));
        std::vector<MaybeScore> scores;
        for (std::size_t i = 0; i < choices.size(); i += at_once)
            run(std::span(choices).subspan(i, std::min(at_once, choices.size() - i)), scores);
        return scores;
    }

private:
    /// Where panels are divided hangs on no clock: the watch is told, and not heeded.
    nest::Watch telling() const {
        if (!watch_)
            return {};
        return while_doing("looking where to split", [this](const nest::Progress& progress) {
            watch_(progress);
            return true;
        });
    }

    void run(std::span<const Choice> choices, std::vector<MaybeScore>& scores) const {
        nest::Effort effort = effort_;
        effort.threads = std::max(1, effort_.threads / static_cast<int>(choices.size()));
        const std::size_t before = scores.size();
        scores.resize(before + choices.size());
        run_all(choices.size(), effort_.threads, [&](std::size_t i) {
            scores[before + i] =
                score_of(choices[i], effort, i == 0 ? telling() : nest::Watch{});
        });
    }

    MaybeScore score_of(const Choice& choice, const nest::Effort& effort,
                        const nest::Watch& watch) const {
        Job job = job_;
        std::vector<piece::Way> ways;
        for (std::size_t i = 0; i < panels_.size(); ++i)
            ways.push_back(panels_[i][choice[i]]);
        set_pieces(job, ways);
        set_rolls(job);
        const nest::Result result = fill(job, effort, watch);
        return result.layout ? MaybeScore(judged(job, {}, {}, *result.layout)) : std::nullopt;
    }

    const Job& job_;
    const std::vector<Ways>& panels_;
    nest::Effort effort_;
    const nest::Watch& watch_;
};

} // namespace

void set_pieces(Job& job, const std::vector<piece::Way>& ways) {
    job.pieces.clear();
    job.seams.clear();
    for (const piece::Way& way : ways) {
        job.pieces.insert(job.pieces.end(), way.pieces.begin(), way.pieces.end());
        job.seams.insert(job.seams.end(), way.seams.begin(), way.seams.end());
    }
}

void set_rolls(Job& job) {
    sort_canonically(job.pieces);
    job.laying = places_in_laying(job);
    job.rolls = new_rolls(job.film, job.pieces);
}

Choice best_choice(const Job& job, const std::vector<Ways>& panels, const Request& request) {
    const Trials trials(job, panels, request, true);
    Choice choice(panels.size(), 0);
    MaybeScore best;
    for (std::size_t i = 0; i < panels.size(); ++i) {
        std::vector<Choice> choices;
        for (std::size_t way = best ? 1 : 0; panels[i].size() > 1 && way < panels[i].size();
             ++way) {
            choices.push_back(choice);
            choices.back()[i] = way;
        }
        const std::vector<MaybeScore> scores = trials.of(choices);
        for (std::size_t k = 0; k < scores.size(); ++k)
            if (scores[k] && (!best || *scores[k] < *best)) {
                best = scores[k];
                choice = choices[k];
            }
    }
    return choice;
}

bool is_shorter(const Job& job, const std::vector<Ways>& panels, const Choice& choice,
                const Choice& than, const Request& request) {
    if (choice == than)
        return false;
    const std::vector<MaybeScore> scores =
        Trials(job, panels, request, request.by == CutBy::contour).of({choice, than});
    return scores[0] && (!scores[1] || *scores[0] < *scores[1]);
}

} // namespace pelt::order
