// SPDX-License-Identifier: MIT
#include "order/short_stock.hpp"

#include "order/names.hpp"

#include <iterator>
#include <set>

namespace pelt::order {
namespace {

struct OnNewRolls {
    std::set<std::string> pieces;
    Um length = 0;
};

OnNewRolls on_new_rolls(const Job& job, const Layout& layout) {
    OnNewRolls out;
    for (const UsedRoll& used : layout.rolls) {
        if (!job.rolls[used.roll].is_new)
            continue;
        out.length += used.length;
        for (const Placement& placement : used.placements)
            out.pieces.insert(name_of(job, job.pieces[placement.piece].ids[placement.copy]));
    }
    return out;
}

/// The first few names, and how many more.
std::string shortened(std::set<std::string> names) {
    constexpr std::size_t most_named = 6;
    const std::size_t count = names.size();
    while (names.size() > most_named)
        names.erase(std::prev(names.end()));
    return listed(names) +
           (count > most_named ? " and " + std::to_string(count - most_named) + " more" : "");
}

std::string name_of(const Job& job, const Batch& batch) {
    return batch.rolls.size() == 1 ? job.rolls[batch.rolls.front()].name
                                   : "the stock of batch " + batch.name;
}

std::string why_new_film(const Job& job, std::optional<Money> cost, Money planned) {
    if (!cost)
        return "the film file has no price for new film, so the two could not be compared";
    const auto money = [&](Money amount) {
        return to_string(amount, job.film.money_digits) +
               (job.film.currency.empty() ? "" : " " + job.film.currency);
    };
    return "the whole job would then cost " + money(*cost) + ", with new film it costs " +
           money(planned);
}

} // namespace

ShortStock how_short(const Job& job, const Batch& batch, const Layout& layout) {
    return {name_of(job, batch), on_new_rolls(job, layout).length};
}

Fault what_is_missing(const Job& job, const Layout& layout, const std::string& batch) {
    const auto [pieces, more] = on_new_rolls(job, layout);
    return {Severity::job,
            {},
            "",
            "what is left is too short: " + shortened(pieces) +
                (pieces.size() == 1 ? " finds" : " find") + " no place on it",
            in_metres(more) + " more " +
                (batch.empty() ? "would do, of any batch"
                               : "of the same batch (" + batch + ") would do")};
}

Faults what_forces_new_film(const Job& job, const Batch& batch, const Layout& layout,
                           std::optional<Money> cost, Money planned) {
    const auto [pieces, more] = on_new_rolls(job, layout);
    const std::string which = name_of(job, batch);
    if (pieces.empty())
        return {{Severity::note,
                 {},
                 "",
                 which + " would hold what must be of one batch; " +
                     why_new_film(job, cost, planned),
                 ""}};
    const std::string wanted =
        batch.name.empty() ? "its batch" : "batch " + batch.name;
    return {{Severity::warning,
             {},
             "",
             which + " is too short for one batch",
             "find " + in_metres(more) + " more of " + wanted + ", or take new film"},
            {Severity::remark, {}, "", "pieces that force new film: " + shortened(pieces), ""}};
}

} // namespace pelt::order
