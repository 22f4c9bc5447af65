// SPDX-License-Identifier: MIT
#include "order/spare.hpp"

#include "order/buying.hpp"
#include "order/names.hpp"
#include "order/recuts.hpp"
#include "order/redo.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <numeric>
#include <optional>
#include <set>
#include <string>
#include <tuple>
#include <utility>

namespace pelt::order {
namespace {

using PanelKey = std::pair<int, int>; ///< vehicle, panel
using ByPanel = std::map<PanelKey, std::vector<Remakes>>;

ByPanel remakes_by_panel(const Job& job, const Layout* layout) {
    ByPanel out;
    for (const KindOfPiece& kind : kinds_of(job, layout))
        out[kind.panel].push_back(kind.remakes);
    return out;
}

std::vector<Remakes> all_but(const ByPanel& by_panel, const PanelKey* without) {
    std::vector<Remakes> out;
    for (const auto& [key, remakes] : by_panel)
        if (without == nullptr || key != *without)
            out.insert(out.end(), remakes.begin(), remakes.end());
    return out;
}

/// Of a roll from stock behind what is taken off it, the lengths between its flaws; none of a
/// remnant that is narrower than the film, where a remake may not fit.
std::vector<Um> left_on(const Roll& roll, Um taken, Um width) {
    if (roll.width < width || !roll.available)
        return {};
    std::vector<Flaw> flaws = roll.flaws;
    std::sort(flaws.begin(), flaws.end(),
              [](const Flaw& a, const Flaw& b) { return a.from < b.from; });
    std::vector<Um> left;
    Um from = taken;
    for (const Flaw& flaw : flaws) {
        left.push_back(std::max<Um>(0, std::min(flaw.from, *roll.available) - from));
        from = std::max(from, flaw.to);
    }
    left.push_back(std::max<Um>(0, *roll.available - from));
    return left;
}

/// Of the batches that the layout uses, on the whole shelf, length by length.
std::vector<Um> stock_left(const Job& job, const Layout& layout) {
    std::map<std::size_t, Um> taken;
    std::set<std::string> batches;
    for (const UsedRoll& used : layout.rolls) {
        taken[used.roll] = used.length;
        batches.insert(job.rolls[used.roll].batch);
    }
    batches.erase(""); // a roll of no known batch is one of its own
    std::vector<Um> left;
    for (std::size_t i = 0; i < job.rolls.size(); ++i)
        if (!job.rolls[i].is_new && (taken.count(i) > 0 || batches.count(job.rolls[i].batch) > 0))
            for (const Um length : left_on(job.rolls[i], taken[i], job.film.width))
                left.push_back(length);
    return left;
}

/// What is there beyond what the layout takes, roll by roll.
std::vector<Um> film_left(const Job& job, const Layout& layout, const Order& order) {
    if (order.lines.empty())
        return stock_left(job, layout);
    std::vector<Um> left;
    for (const OrderLine& line : order.lines)
        left.push_back(line.length().floor_um());
    std::size_t line = 0;
    for (const UsedRoll& used : layout.rolls)
        if (job.rolls[used.roll].is_new)
            left[line++] -= used.length;
    return left;
}

/// How much film the remakes may take together so that they find room however they come up. A
/// remake that finds none takes more than is left on every roll: then on each roll all but less
/// than it is used.
Um surely_enough(const std::vector<Remakes>& remakes, const std::vector<Um>& left, Um step) {
    Um surely = std::accumulate(left.begin(), left.end(), Um{0});
    for (const Remakes& some : remakes) {
        if (some.chance <= 0)
            continue;
        const Um too_little = std::max<Um>(0, (some.cost + step - 1) / step * step - step);
        Um used = too_little;
        for (const Um on_roll : left)
            used += std::max<Um>(0, on_roll / step * step - too_little);
        surely = std::min(surely, used);
    }
    return surely;
}

} // namespace

SpoiltFilm::SpoiltFilm(const std::vector<Remakes>& remakes, Um step) : step_(step) {
    start(remakes);
    for (Kind& kind : kinds_)
        kind.before.front() = sum_;
}

void SpoiltFilm::start(const std::vector<Remakes>& remakes) {
    sum_ = 1;
    for (const Remakes& some : remakes) {
        if (some.count == 0 || some.chance <= 0)
            continue;
        const auto cost =
            static_cast<std::size_t>(std::max<Um>(1, (some.cost + step_ - 1) / step_));
        for (std::size_t i = 0; i < some.count; ++i) {
            int exponent = 0;
            sum_ = std::frexp(sum_ * (1 - some.chance), &exponent);
            exponent_ += exponent;
        }
        kinds_.push_back({cost, some.chance, static_cast<double>(some.count * cost), 0, 0,
                          std::vector<double>(cost, 0.0)});
    }
}

double SpoiltFilm::probability() const {
    return std::ldexp(sum_, exponent_);
}

void SpoiltFilm::go_on() {
    ++at_;
    double g = 0;
    for (Kind& kind : kinds_) {
        kind.place = kind.place + 1 == kind.cost ? 0 : kind.place + 1;
        kind.u = kind.chance * kind.before[kind.place];
        g += kind.weight * kind.u;
    }
    g /= static_cast<double>(at_);
    for (Kind& kind : kinds_)
        kind.before[kind.place] = g + kind.u;
    sum_ += g;
    keep_within_range();
}

void SpoiltFilm::keep_within_range() {
    constexpr double large = 0x1p500;
    constexpr int down = 500;
    if (sum_ > large)
        scale(down);
}

void SpoiltFilm::scale(int by) {
    sum_ = std::ldexp(sum_, -by);
    exponent_ += by;
    for (Kind& kind : kinds_)
        for (double& value : kind.before)
            value = std::ldexp(value, -by);
}

namespace {

std::vector<Remakes> those(const std::vector<Remakes>& remakes, bool with_offcuts) {
    std::vector<Remakes> out;
    std::copy_if(remakes.begin(), remakes.end(), std::back_inserter(out),
                 [&](const Remakes& some) { return (some.kept > 0) == with_offcuts; });
    return out;
}

/// The probability that exactly 0, 1, … steps of film are spoiled, so many of them; the first
/// remakes of each kind come from its offcuts.
std::vector<double> exactly_spoiled(const std::vector<Remakes>& remakes, Um step,
                                    std::size_t steps) {
    constexpr double next_to_nothing = 1e-18;
    std::vector<double> out;
    SpoiltFilm spoilt(those(remakes, false), step);
    double before = 0;
    for (std::size_t s = 0; s < steps; ++s) {
        out.push_back(spoilt.probability() - before);
        before = spoilt.probability();
        spoilt.go_on();
    }
    for (const Remakes& some : those(remakes, true)) {
        const auto cost = static_cast<std::size_t>(std::max<Um>(1, (some.cost + step - 1) / step));
        const std::vector<double> needed =
            remakes_needed(some.count, some.chance, some.kept + 1 + steps / cost);
        std::vector<double> sum(out.size(), 0.0);
        const double mean =
            static_cast<double>(some.count) * some.chance / (1 - some.chance);
        for (std::size_t k = 0; k < needed.size(); ++k) {
            if (static_cast<double>(k) > mean && needed[k] < next_to_nothing)
                break;
            const std::size_t film = k <= some.kept ? 0 : (k - some.kept) * cost;
            for (std::size_t s = film; s < sum.size(); ++s)
                sum[s] += needed[k] * out[s - film];
        }
        out = std::move(sum);
    }
    return out;
}

Um film_for_all(const std::vector<Remakes>& remakes, Um step, double enough) {
    SpoiltFilm spoilt(remakes, step);
    while (spoilt.probability() < enough)
        spoilt.go_on();
    return spoilt.film();
}

} // namespace

double enough_with(const std::vector<Remakes>& remakes, Um step, Um film) {
    if (those(remakes, true).empty()) {
        SpoiltFilm spoilt(remakes, step);
        while (spoilt.film() + step <= film)
            spoilt.go_on();
        return spoilt.probability();
    }
    const std::vector<double> exactly =
        exactly_spoiled(remakes, step, static_cast<std::size_t>(film / step) + 1);
    return std::accumulate(exactly.begin(), exactly.end(), 0.0);
}

Um film_for(const std::vector<Remakes>& remakes, Um step, double probability) {
    // A little under what is asked: the last digits of a sum of doubles must not cost a crosscut.
    const double enough = probability - 1e-12;
    const Um without_offcuts = film_for_all(remakes, step, enough);
    if (those(remakes, true).empty())
        return without_offcuts;
    const std::vector<double> exactly =
        exactly_spoiled(remakes, step, static_cast<std::size_t>(without_offcuts / step) + 1);
    double sum = 0;
    for (std::size_t s = 0; s < exactly.size(); ++s)
        if (sum += exactly[s]; sum >= enough)
            return static_cast<Um>(s) * step;
    return without_offcuts;
}

std::vector<Remakes> remakes_of(const Job& job, const Layout* layout) {
    return all_but(remakes_by_panel(job, layout), nullptr);
}

void find_costliest(Spare& spare, const Job& job, const Layout& layout) {
    const Um step = job.film.allowances.ruler;
    const ByPanel by_panel = remakes_by_panel(job, &layout);
    for (const auto& [key, remakes] : by_panel) {
        const Um saved =
            spare.needed - film_for(all_but(by_panel, &key), step, spare.sure_percent / 100);
        if (saved > spare.costliest_film)
            std::tie(spare.costliest_vehicle, spare.costliest_panel, spare.costliest_film) =
                std::tuple(key.first, key.second, saved);
    }
}

Spare spare_for(const Job& job, double sure_percent, const Layout* layout) {
    Spare spare;
    spare.sure_percent = sure_percent;
    spare.redo = redo_chances(job);
    const Um step = job.film.allowances.ruler;
    const double sure = sure_percent / 100;
    const ByPanel by_panel = remakes_by_panel(job, layout);
    for (const auto& [key, remakes] : by_panel)
        for (const Remakes& some : remakes)
            if (some.kept > 0)
                spare.kept.push_back({key.first, key.second, static_cast<int>(some.kept)});
    spare.needed = film_for(all_but(by_panel, nullptr), step, sure);
    for (const Remakes& some : all_but(by_panel, nullptr))
        if (some.chance > 0 && some.cost <= spare.needed)
            spare.longest_remake = std::max(spare.longest_remake, some.cost);
    return spare;
}

Spare with_what_is_there(Spare spare, const Job& job, const Layout& layout, const Order& order,
                         Faults& faults) {
    const std::vector<Um> left_on_rolls = film_left(job, layout, order);
    const Um left = std::accumulate(left_on_rolls.begin(), left_on_rolls.end(), Um{0});
    const Um step = job.film.allowances.ruler;
    const std::vector<Remakes> remakes = remakes_of(job, &layout);
    if (!order.lines.empty()) {
        const Order bare = buy(job.film, new_lengths(job, layout), SpareToBuy{});
        spare.bare_order = bare.length();
        spare.bare_percent =
            100 *
            enough_with(remakes, step, surely_enough(remakes, film_left(job, layout, bare), step));
    }
    spare.enough_percent = 100 * enough_with(remakes, step, left);
    spare.surely_percent =
        100 * enough_with(remakes, step, surely_enough(remakes, left_on_rolls, step));
    if (order.lines.empty())
        spare.bare_percent = spare.surely_percent;
    if (left < spare.needed)
        faults.push_back({Severity::warning,
                          {},
                          "",
                          "what is left of the stock is less spare than was asked for",
                          in_metres(spare.needed - left) + " more of the same batch would do"});
    return spare;
}

} // namespace pelt::order
