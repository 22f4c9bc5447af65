// SPDX-License-Identifier: MIT
#include "order/order.hpp"
#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/numbers.hpp"
#include "report/quote.hpp"
#include "report/words.hpp"
#include "report/work_told.hpp"
#include "trade/names.hpp"
#include "trade/redo.hpp"

#include <cmath>

namespace pelt::report {
namespace {

/// "hood, hybrid: 4.1 % (3 of 41)"; where curved and flat panels differ both.
std::string chance_told(PanelKind is, FilmKind film, const Tried& tried) {
    const auto told = [&](bool curved) {
        return rounded_percent(order::updated_percent(
                   trade::redo_percent(is) * trade::redo_factor(film, curved), tried)) +
               " %";
    };
    std::string text = std::string(trade::word_of(is)) + ", " + std::string(name_of(film)) + ": ";
    text +=
        told(true) == told(false) ? told(true) : told(false) + " flat, " + told(true) + " curved";
    return text + " (by your log: " + tried_text(tried) + ")";
}

} // namespace

std::vector<std::string> what_was_learnt(const Learnt& learnt) {
    std::vector<std::string> out{counted(learnt.rows, "row", "rows") + " of " + learnt.log->name +
                                 (learnt.who.empty() ? "" : " by " + learnt.who)};
    if (learnt.pace.panels > 0)
        out.push_back("pace " + decimal(std::llround(learnt.pace.pace * 100), 2, 2) + " from " +
                      counted(learnt.pace.panels, "panel", "panels"));
    for (const auto& [what, tried] : learnt.redo)
        if (tried.laid() > 0)
            out.push_back("spoiled and cut again: " + chance_told(what.first, what.second, tried));
    if (learnt.guesses.all > 0)
        out.push_back(guesses_told(learnt.guesses));
    std::vector<std::string> names;
    for (const auto& [name, rows] : learnt.not_known)
        names.push_back(name + " (" + counted(rows, "row", "rows") + ")");
    if (!names.empty())
        out.push_back("panels that are not known by name, passed over: " + listed(names));
    return out;
}

} // namespace pelt::report
