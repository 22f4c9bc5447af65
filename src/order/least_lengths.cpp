// SPDX-License-Identifier: MIT
#include "order/least_lengths.hpp"

#include "order/batches.hpp"

#include <algorithm>

namespace pelt::order {
namespace {

bool same(const Flaw& a, const Flaw& b) {
    return a.from == b.from && a.to == b.to && a.low == b.low && a.high == b.high;
}

/// But for their lengths.
bool alike(const Roll& a, const Roll& b) {
    return a.width == b.width && a.trim == b.trim && a.arrow_known == b.arrow_known &&
           std::equal(a.flaws.begin(), a.flaws.end(), b.flaws.begin(), b.flaws.end(), same);
}

std::size_t first_alike(const Job& job, std::size_t roll) {
    std::size_t first = 0;
    while (!alike(job.rolls[first], job.rolls[roll]))
        ++first;
    return first;
}

} // namespace

std::size_t kinds_of_film(const Job& job) {
    std::size_t kinds = 0;
    for (std::size_t i = 0; i < job.rolls.size(); ++i)
        kinds += first_alike(job, i) == i ? 1 : 0;
    return kinds;
}

Um least_strip(const Job& job, const Copies& copies, const Roll& film, const Layout& layout) {
    if (layout.shortest && layout.rolls.size() == 1)
        return layout.rolls.front().length;
    const DoubleArea across = DoubleArea{2} * (film.width - 2 * film.trim);
    const auto by_area = static_cast<Um>((least_area(job, copies) + across - 1) / across);
    bool one_shape_each = true;
    for (std::size_t i = 0; i < copies.size(); ++i)
        one_shape_each = one_shape_each && (copies[i].empty() || job.pieces[i].shapes.size() == 1);
    return one_shape_each ? std::max(by_area, layout.bound.length) : by_area;
}

std::optional<std::size_t> PieceSets::count(const Job& job, std::size_t most) {
    std::size_t sets = 1;
    for (const Piece& piece : job.pieces) {
        sets *= piece.ids.size() + 1;
        if (sets > most)
            return std::nullopt;
    }
    return sets;
}

PieceSets::PieceSets(const Job& job) : counts_{std::vector<std::size_t>(job.pieces.size(), 0)} {
    for (std::size_t i = 0; i < job.pieces.size(); ++i) {
        const std::size_t before = counts_.size();
        for (std::size_t some = 1; some <= job.pieces[i].ids.size(); ++some)
            for (std::size_t set = 0; set < before; ++set) {
                counts_.push_back(counts_[set]);
                counts_.back()[i] = some;
            }
    }
    const std::vector<std::size_t> none(job.pieces.size(), 0);
    for (std::size_t set = 0; set < counts_.size(); ++set) {
        bool free = true;
        for (std::size_t i = 0; i < job.pieces.size(); ++i)
            free = free && (counts_[set][i] == 0 || job.pieces[i].batch_free);
        batch_free_.push_back(free);
        areas_.push_back(order::least_area(job, copies(set, none)));
    }
}

bool PieceSets::is_part(std::size_t part, std::size_t set) const {
    return std::equal(counts_[part].begin(), counts_[part].end(), counts_[set].begin(),
                      [](std::size_t a, std::size_t b) { return a <= b; });
}

Copies PieceSets::copies(std::size_t set, const std::vector<std::size_t>& taken) const {
    Copies out(taken.size());
    for (std::size_t i = 0; i < taken.size(); ++i)
        for (std::size_t copy = 0; copy < counts_[set][i]; ++copy)
            out[i].push_back(taken[i] + copy);
    return out;
}

LeastLengths::LeastLengths(const Job& job, const PieceSets& sets, const nest::Effort& effort,
                           const nest::Watch& watch)
    : job_(job), sets_(sets), effort_(effort), watch_(watch),
      one_shape_each_(std::all_of(job.pieces.begin(), job.pieces.end(),
                                  [](const Piece& piece) { return piece.shapes.size() == 1; })) {
    effort_.trial = true;
    effort_.amount = 1;
    for (std::size_t i = 0; i < job.rolls.size(); ++i)
        like_.push_back(first_alike(job, i));
}

const Taken& LeastLengths::of(std::size_t roll, std::size_t set) {
    const auto key = std::pair(roll, set);
    const auto known = known_.find(key);
    return known != known_.end() ? known->second
                                 : known_.emplace(key, look(roll, set)).first->second;
}

std::optional<Layout> LeastLengths::fill(std::size_t roll, std::size_t set,
                                         std::optional<Um> available, bool& fits) {
    const std::vector<std::size_t> none(job_.pieces.size(), 0);
    nest::Result result = fill_one(job_, sets_.copies(set, none), roll, available, effort_, watch_);
    fits = result.misfits.empty();
    stopped_ = stopped_ || (result.layout && result.layout->stopped);
    return std::move(result.layout);
}

Taken LeastLengths::look_on_endless(std::size_t roll, std::size_t set) {
    bool fits = true;
    const std::optional<Layout> layout = fill(roll, set, std::nullopt, fits);
    if (!fits)
        return {};
    const std::vector<std::size_t> none(job_.pieces.size(), 0);
    const Copies copies = sets_.copies(set, none);
    if (!layout)
        return {Taken::never, least_strip(job_, copies, job_.rolls[roll], {})};
    return {layout->rolls.front().length, least_strip(job_, copies, job_.rolls[roll], *layout),
            std::make_shared<const Layout>(*layout)};
}

const Taken& LeastLengths::on_endless(std::size_t roll, std::size_t set) {
    const auto key = std::pair(like_[roll], set);
    const auto known = endless_.find(key);
    return known != endless_.end()
               ? known->second
               : endless_.emplace(key, look_on_endless(roll, set)).first->second;
}

Taken LeastLengths::look(std::size_t roll, std::size_t set) {
    const Roll& on = job_.rolls[roll];
    const Um there = on.available.value_or(Taken::never - 1);
    if (sets_.least_area(set) > DoubleArea{2} * there * (on.width - 2 * on.trim) || stopped_)
        return stopped_ ? Taken{Taken::never, 0} : Taken{};
    Taken taken = on_endless(roll, set);
    if (taken.length <= there)
        return taken;
    if (taken.at_least > there)
        return {};
    // Within an end the search tries harder to get there.
    bool fits = true;
    const std::optional<Layout> layout = fill(roll, set, there, fits);
    if (!fits)
        return {};
    taken.length = layout ? layout->rolls.front().length : Taken::never;
    taken.layout = layout ? std::make_shared<const Layout>(*layout) : nullptr;
    return taken;
}

} // namespace pelt::order
