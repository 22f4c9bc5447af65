// SPDX-License-Identifier: MIT
#include "piece/edge_work.hpp"

#include "develop/develop.hpp"

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
                 const std::vector<std::string>& left_on, bool& tuck_missing) {
    if (stays_on(asked.behind, left_on))
        return {allowed.flush, 0, true};
    if (asked.stop)
        return {0, *asked.stop};
    if (asked.wrap)
        return {*asked.wrap, 0};
    if (panel.edges_none)
        return {0, 0};
    tuck_missing = tuck_missing || !allowed.wrap;
    return {allowed.wrap.value_or(0), 0};
}

OpeningWork work_in(const Opening& opening, const Panel& panel, const Allowed& allowed,
                    const std::vector<std::string>& left_on, bool& tuck_missing) {
    const bool at_table = opening.cut == OpeningCut::at_table;
    if (stays_on(opening.behind, left_on))
        return {false, allowed.flush, at_table, true};
    if (!opening.behind.empty() && opening.keep_clear.empty())
        return {true, 0, false};
    if (opening.wrap)
        return {false, *opening.wrap, at_table};
    // What has to stay clear is no edge to turn film around.
    if (!opening.keep_clear.empty())
        return {false, 0, at_table};
    tuck_missing = tuck_missing || (!allowed.wrap && !panel.edges_none);
    return {false, allowed.wrap.value_or(0), at_table};
}

} // namespace

Work work_on(const Panel& panel, const Blank& blank, const Allowed& allowed,
             const std::vector<std::string>& left_on) {
    Work work;
    for (const Asked& asked : asked_of(panel, blank))
        work.edges.push_back(work_at(asked, panel, allowed, left_on, work.tuck_missing));
    for (const Opening& opening : panel.openings)
        work.openings.push_back(work_in(opening, panel, allowed, left_on, work.tuck_missing));
    return work;
}

} // namespace pelt::piece
