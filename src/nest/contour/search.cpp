// SPDX-License-Identifier: MIT
#include "nest/contour/search.hpp"

#include "model/error.hpp"
#include "model/parallel.hpp"

#include <algorithm>
#include <atomic>

namespace pelt::nest::contour {
namespace {

std::optional<std::uint32_t> option_of(const Problem& problem, const Kind& kind,
                                       const Placement& placement) {
    for (std::uint32_t o = kind.first_option; o < kind.first_option + kind.options; ++o)
        if (problem.options[o].shape == placement.shape &&
            problem.options[o].turn == placement.turn)
            return o;
    return std::nullopt;
}

std::optional<Pose> pose_of(const Problem& problem, const Kind& kind, std::size_t roll,
                            const Placement& placement) {
    const std::optional<std::uint32_t> option = option_of(problem, kind, placement);
    if (!option)
        return std::nullopt;
    for (std::uint32_t b = 0; b < problem.bays.size(); ++b) {
        const Bay& bay = problem.bays[b];
        const Vec at = vec_of(placement.at) + Vec{bay.shift, 0};
        const Span& box = problem.options[*option].box;
        // Search forms are a little larger than the pieces: their middle tells the bay.
        const double middle = at.x + (box.low.x + box.high.x) / 2;
        if (bay.roll == roll && middle > bay.film.low.x && middle < bay.film.high.x)
            return Pose{at, *option, b};
    }
    return std::nullopt;
}

std::optional<std::vector<Pose>> poses_of(const Problem& problem, const Layout& layout) {
    std::vector<std::vector<Pose>> by_kind(problem.kinds.size());
    for (const UsedRoll& used : layout.rolls)
        for (const Placement& placement : used.placements)
            for (std::size_t k = 0; k < problem.kinds.size(); ++k)
                if (problem.kinds[k].piece == placement.piece) {
                    const auto pose = pose_of(problem, problem.kinds[k], used.roll, placement);
                    if (!pose)
                        return std::nullopt;
                    by_kind[k].push_back(*pose);
                }
    std::vector<Pose> poses;
    for (const std::vector<Pose>& of_kind : by_kind) // items come kind by kind
        poses.insert(poses.end(), of_kind.begin(), of_kind.end());
    return poses;
}

// Small items meet large ones last: from the back, so as not to stand in the way.
void make_fields_ahead(const Problem& problem, const std::atomic<bool>& enough) {
    const std::vector<Option>& options = problem.options;
    const auto bare = [&](const Option& option) {
        return problem.fields->form(option.form).obstacle;
    };
    for (std::size_t a = options.size(); a-- > 0;)
        for (std::size_t b = 0; b < options.size() && !enough; ++b)
            if (!bare(options[a]) && !bare(options[b]))
                problem.fields->between(options[a].form, options[a].quarters, options[b].form,
                                        options[b].quarters);
}

} // namespace

std::uint64_t work_between_joins(std::size_t items, std::size_t options) {
    const std::uint64_t unit =
        std::min<std::uint64_t>(tuning::work_a_unit, tuning::work_an_item * items);
    const std::size_t slow = std::clamp(options, tuning::cheap_options, 2 * tuning::cheap_options);
    return std::max<std::uint64_t>(unit / tuning::joins_a_unit * tuning::cheap_options / slow, 1);
}

std::uint64_t epochs_of(const Effort& effort) {
    if (effort.amount <= 0)
        return 0;
    const std::uint64_t all = tuning::joins_a_unit * static_cast<std::uint64_t>(effort.amount);
    return std::max<std::uint64_t>(all / static_cast<std::uint64_t>(effort.part), 1);
}

Search::Search(const Problem& problem, const Finisher& finisher, const Effort& effort, Um bound,
               const Watch& watch)
    : problem_(&problem), finisher_(&finisher), effort_(effort), bound_(bound), watch_(&watch) {
    make_strands();
}

Search::Search(const Problem& pattern, const Effort& effort, const Watch& watch)
    : problem_(&pattern), finisher_(nullptr), effort_(effort), bound_(0), watch_(&watch) {
    make_strands();
}

void Search::make_strands() {
    Random seeds(effort_.seed);
    const std::size_t count = effort_.trial ? 1 : tuning::strands;
    for (std::size_t i = 0; i < count; ++i)
        strands_.push_back(std::make_unique<Strand>(*problem_, seeds.bits(), i));
}

bool Search::start_from(const Layout& layout) {
    const std::optional<std::vector<Pose>> poses = poses_of(*problem_, layout);
    if (!poses)
        return false;
    Scene scene(*problem_);
    scene.place_all(*poses);
    layout_ = layout;
    start_from(Found{*poses, scene.end()});
    return true;
}

void Search::start_from(const Found& found) {
    best_ = found;
    for (const auto& strand : strands_)
        strand->start_from(found);
}

bool Search::done() const {
    if (!best_)
        return !enough_film();
    return layout_ && (effort_.trial || length_of(*layout_) <= bound_);
}

// A trial is one strand's work, most of it waiting for fields: a second thread makes them ahead.
void Search::advance_alone(std::uint64_t quota) {
    std::atomic<bool> done = false;
    run_all(2, effort_.threads, [&](std::size_t task) {
        if (task == 1) {
            try {
                make_fields_ahead(*problem_, done);
            } catch (const ProgramError&) {
                // Perhaps of a pair that is never asked for; else the strand meets it too.
            }
            return;
        }
        try {
            strands_.front()->run(quota);
        } catch (...) {
            done = true;
            throw;
        }
        done = true;
    });
    join();
}

void Search::advance(std::size_t strands, std::uint64_t quota) {
    if (strands == 1) {
        advance_alone(quota);
        return;
    }
    run_all(strands, effort_.threads, [&](std::size_t i) { strands_[i]->run(quota); });
    join();
}

// At first the film gets shorter fast, and what the others find is soon passed by: few strands then
// come farther than all of them in the same work.
void Search::next_epoch() {
    const std::size_t active = epochs_++ < tuning::narrow_epochs
                                   ? std::min(tuning::narrow_strands, strands_.size())
                                   : strands_.size();
    const std::uint64_t between_joins =
        work_between_joins(problem_->items.size(), problem_->options.size());
    advance(active, effort_.trial ? 1 : between_joins / active);
}

// A first layout of many items takes long.
std::size_t Search::constructing() const {
    return problem_->items.size() > tuning::many_items
               ? std::min(tuning::narrow_strands, strands_.size())
               : strands_.size();
}

void Search::run(const Stint& stint) {
    if (!best_) // each makes a layout in an order of its own; all strands go on from the shortest
        advance(constructing(), 1);
    const double shares = stint.share_to - stint.share_from;
    for (std::uint64_t epoch = 0; stint.epochs == 0 || epoch < stint.epochs; ++epoch) {
        if (!effort_.trial || !layout_)
            next_epoch();
        double share = 0;
        if (stint.epochs > 0)
            share = stint.share_from +
                    shares * static_cast<double>(epoch + 1) / static_cast<double>(stint.epochs);
        if (*watch_ && !(*watch_)({layout_ ? length_of(*layout_) : 0, bound_, share}))
            stopped_ = stint.epochs == 0 || share < 1;
        if (stopped_ || done())
            return;
    }
}

std::vector<std::size_t> Search::misfits() const {
    std::vector<std::size_t> pieces;
    for (const std::uint32_t item : strands_.front()->left_over())
        pieces.push_back(problem_->kind_of(item).piece);
    std::sort(pieces.begin(), pieces.end());
    pieces.erase(std::unique(pieces.begin(), pieces.end()), pieces.end());
    return pieces;
}

// The shortest layout that holds on the grid goes to every strand.
void Search::join() {
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
        if (holds(*shortest)) {
            best_ = *shortest;
            for (const auto& strand : strands_)
                strand->adopt(*best_);
            return;
        }
        strands_[owner]->reject();
    }
}

// Makes it the layout, where there is to be one.
bool Search::holds(const Found& found) {
    if (finisher_ == nullptr)
        return true;
    std::optional<Layout> layout = finisher_->layout(found.poses);
    if (layout)
        layout_ = std::move(layout);
    return layout.has_value();
}

bool Search::enough_film() const {
    double film = 0;
    for (const Bay& bay : problem_->bays)
        film += (bay.film.high.x - bay.film.low.x) * (bay.film.high.y - bay.film.low.y);
    return film >= problem_->area;
}

} // namespace pelt::nest::contour
