// SPDX-License-Identifier: MIT
#include "order/ways.hpp"

#include "model/parallel.hpp"
#include "order/canonical.hpp"
#include "order/fill.hpp"

#include <algorithm>
#include <atomic>
#include <optional>
#include <span>

namespace pelt::order {
namespace {

using MaybeScore = std::optional<Score>;

class Trials {
public:
    Trials(const Job& job, const std::vector<Ways>& panels, const Request& request)
        : job_(job), panels_(panels), effort_(request.effort),
          watch_(heeded(while_doing("looking where to split", request.watch))) {
        effort_.amount = 1;
        effort_.trial = request.by == CutBy::contour || request.effort.amount == 1;
    }

    /// A score for each choice, fewer when the watch said stop; none where no layout was found.
    std::vector<MaybeScore> of(const std::vector<Choice>& choices) const {
        const auto at_once = static_cast<std::size_t>(std::max(1, effort_.threads));
        std::vector<MaybeScore> scores;
        for (std::size_t i = 0; i < choices.size() && (i == 0 || !stopped_); i += at_once)
            run(std::span(choices).subspan(i, std::min(at_once, choices.size() - i)), scores);
        return scores;
    }

private:
    // The watch is asked by this thread only; the others end when it has said so.
    nest::Watch heeded(const nest::Watch& watch) {
        return [watch, this](const nest::Progress& progress) {
            if (watch && !watch(progress))
                stopped_ = true;
            return !stopped_;
        };
    }

    void run(std::span<const Choice> choices, std::vector<MaybeScore>& scores) const {
        nest::Effort effort = effort_;
        effort.threads = std::max(1, effort_.threads / static_cast<int>(choices.size()));
        const std::size_t before = scores.size();
        scores.resize(before + choices.size());
        run_all(choices.size(), effort_.threads, [&](std::size_t i) {
            scores[before + i] = score_of(choices[i], effort, i == 0 ? watch_ : heed_others_);
        });
    }

    MaybeScore score_of(const Choice& choice, const nest::Effort& effort,
                        const nest::Watch& watch) const {
        Job job = job_;
        choose(job, panels_, choice);
        const nest::Result result = fill(job, effort, watch);
        return result.layout ? MaybeScore(judged(job, {}, {}, *result.layout)) : std::nullopt;
    }

    const Job& job_;
    const std::vector<Ways>& panels_;
    nest::Effort effort_;
    std::atomic<bool> stopped_ = false;
    nest::Watch watch_;
    nest::Watch heed_others_ = heeded({});
};

} // namespace

void choose(Job& job, const std::vector<Ways>& panels, const Choice& choice) {
    job.pieces.clear();
    job.seams.clear();
    for (std::size_t i = 0; i < panels.size(); ++i) {
        const piece::Way& way = panels[i][choice[i]];
        job.pieces.insert(job.pieces.end(), way.pieces.begin(), way.pieces.end());
        job.seams.insert(job.seams.end(), way.seams.begin(), way.seams.end());
    }
    sort_canonically(job.pieces);
    job.laying = places_in_laying(job);
    job.rolls = new_rolls(job.film, job.pieces);
}

Choice best_choice(const Job& job, const std::vector<Ways>& panels, const Request& request) {
    const Trials trials(job, panels, request);
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

} // namespace pelt::order
