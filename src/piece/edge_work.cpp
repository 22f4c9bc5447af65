// SPDX-License-Identifier: MIT
#include "piece/edge_work.hpp"

#include "develop/develop.hpp"
#include "trade/cautions.hpp"

#include <algorithm>
#include <optional>

namespace pelt::piece {
namespace {

/// What the entries say of one edge, so far.
struct Asked {
    std::optional<Um> wrap;
    std::optional<Um> stop;
    std::string behind;
};

void take_over(Asked& asked, const EdgeRule& rule) {
    if (rule.wrap) {
        asked.wrap = rule.wrap;
        asked.stop.reset();
    }
    if (rule.stop) {
        asked.stop = rule.stop;
        asked.wrap.reset();
    }
    if (!rule.behind.empty())
        asked.behind = rule.behind;
}

std::vector<Asked> asked_of(const Panel& panel, const Blank& blank) {
    std::vector<Asked> asked(blank.edges.size());
    for (const EdgeRule& rule : panel.edges)
        for (const int edge : develop::edges_selected(blank, rule.word))
            take_over(asked[static_cast<std::size_t>(edge)], rule);
    return asked;
}

bool stays_on(const std::string& part, const std::vector<std::string>& left_on) {
    return !part.empty() && std::find(left_on.begin(), left_on.end(), part) != left_on.end();
}

EdgeWork work_at(const Asked& asked, const Panel& panel, const Allowed& allowed,
                 const std::vector<std::string>& left_on, Work& work) {
    if (stays_on(asked.behind, left_on))
        return {allowed.flush, 0, true};
    if (asked.stop)
        return {0, *asked.stop};
    if (asked.wrap)
        return {*asked.wrap, 0};
    if (panel.edges_none)
        return {0, 0};
    work.tuck_missing = work.tuck_missing || !allowed.wrap;
    work.tuck_of_film = work.tuck_of_film || (allowed.wrap_of_film && *allowed.wrap > 0);
    return {allowed.wrap.value_or(0), 0};
}

OpeningWork work_in(const Opening& opening, const Panel& panel, const Allowed& allowed,
                    const std::vector<std::string>& left_on, Work& work) {
    const bool at_table = opening.cut == OpeningCut::at_table;
    if (stays_on(opening.behind, left_on))
        return {false, allowed.flush, at_table, true};
    const bool through_film = trade::works_through_film(opening.keep_clear);
    if (!opening.behind.empty() &&
        (opening.keep_clear.empty() || (through_film && allowed.holds_no_metal)))
        return {true, 0, false};
    if (!opening.behind.empty() && through_film)
        work.bare_openings.push_back(opening.name);
    if (opening.wrap)
        return {false, *opening.wrap, at_table};
    // What has to stay clear is no edge to turn film around.
    if (!opening.keep_clear.empty())
        return {false, 0, at_table};
    if (!allowed.wrap && !panel.edges_none)
        work.openings_without_tuck.push_back(opening.name);
    return {false, allowed.wrap.value_or(0), at_table};
}

} // namespace

Work work_on(const Panel& panel, const Blank& blank, const Allowed& allowed,
             const std::vector<std::string>& left_on) {
    Work work;
    for (const Asked& asked : asked_of(panel, blank))
        work.edges.push_back(work_at(asked, panel, allowed, left_on, work));
    for (const Opening& opening : panel.openings)
        work.openings.push_back(work_in(opening, panel, allowed, left_on, work));
    return work;
}

} // namespace pelt::piece
