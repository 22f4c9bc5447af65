// SPDX-License-Identifier: MIT
#include "order/selection.hpp"

#include "piece/piece.hpp"

#include <algorithm>
#include <set>
#include <string_view>

namespace pelt::order {
namespace {

using Words = std::vector<std::string>;

/// One side of one panel of one vehicle, and the words that select it.
struct Candidate {
    LeftOut place;
    const Panel* panel;

    bool named_by(std::string_view word) const {
        return word == panel->name || word == panel->name + "/" + std::string(name_of(place.side));
    }
    bool selected_by(std::string_view word) const {
        return named_by(word) || (!panel->group.empty() && word == panel->group);
    }
};

std::vector<Candidate> candidates_in(const std::vector<Vehicle>& vehicles) {
    std::vector<Candidate> out;
    for (std::size_t v = 0; v < vehicles.size(); ++v)
        for (std::size_t p = 0; p < vehicles[v].panels.size(); ++p)
            for (const Side side : sides_of(vehicles[v].panels[p].sides))
                out.push_back(
                    {{static_cast<int>(v), static_cast<int>(p), side}, &vehicles[v].panels[p]});
    return out;
}

std::string listed(const std::set<std::string>& names) {
    std::string text;
    for (const std::string& name : names)
        text += (text.empty() ? "" : ", ") + name;
    return text;
}

void must_select(std::string_view option, const Words& words,
                 const std::vector<Candidate>& candidates, Faults& faults) {
    for (const std::string& word : words) {
        if (std::any_of(candidates.begin(), candidates.end(),
                        [&](const Candidate& c) { return c.selected_by(word); }))
            continue;
        std::set<std::string> known;
        for (const Candidate& c : candidates)
            known.insert(c.panel->name);
        faults.push_back({Severity::usage,
                          {},
                          "",
                          std::string(option) + " '" + word + "' names no panel and no group",
                          "the panels are: " + listed(known)});
    }
}

void must_be_extras(const Words& with, const std::vector<Candidate>& candidates, Faults& faults) {
    std::set<std::string> extras;
    for (const Candidate& c : candidates)
        if (!c.panel->extra.empty())
            extras.insert(c.panel->extra);
    for (const std::string& word : with)
        if (extras.count(word) == 0)
            faults.push_back(
                {Severity::usage,
                 {},
                 "",
                 "--with '" + word + "' names no extra",
                 extras.empty() ? "the vehicle has none" : "the extras are: " + listed(extras)});
}

template <class Test>
bool any_word(const Words& words, Test test) {
    return std::any_of(words.begin(), words.end(), test);
}

/// An extra comes in by `--with`, or when `--only` calls the panel itself by its name.
bool wanted(const Candidate& c, const Selection& selection) {
    const auto selects = [&](const std::string& word) { return c.selected_by(word); };
    const auto names = [&](const std::string& word) { return c.named_by(word); };
    const bool extra_asked =
        c.panel->extra.empty() || any_word(selection.only, names) ||
        any_word(selection.with, [&](const std::string& word) { return word == c.panel->extra; });
    const bool in_choice = selection.only.empty() || any_word(selection.only, selects) ||
                           (!c.panel->extra.empty() && extra_asked);
    return extra_asked && in_choice && !any_word(selection.without, selects);
}

/// What --only and --without leave of the vehicles, extras or not.
bool is_in_the_job(const Candidate& c, const Selection& selection) {
    const auto selects = [&](const std::string& word) { return c.selected_by(word); };
    return wanted(c, selection) || ((selection.only.empty() || any_word(selection.only, selects)) &&
                                    !any_word(selection.without, selects));
}

/// A group does not bring in an extra that is not asked for.
bool is_spoiled(const Candidate& c, const Selection& selection) {
    const bool extra_asked =
        c.panel->extra.empty() ||
        any_word(selection.with, [&](const std::string& word) { return word == c.panel->extra; });
    return is_in_the_job(c, selection) && any_word(selection.spoiled, [&](const std::string& word) {
               return c.named_by(word) || (extra_asked && c.selected_by(word));
           });
}

/// Where nothing is named as done, all but what was spoilt is.
bool is_done(const Candidate& c, const Selection& selection) {
    if (selection.done.empty())
        return !selection.spoiled.empty() && !is_spoiled(c, selection);
    return !is_spoiled(c, selection) &&
           any_word(selection.done, [&](const std::string& word) { return c.selected_by(word); });
}

bool is_to_be_cut(const Candidate& c, const Selection& selection) {
    return is_spoiled(c, selection) || (wanted(c, selection) && !is_done(c, selection));
}

/// What was spoilt was cut, so it is not left out.
void spoiled_must_be_in_the_job(const Selection& selection,
                                const std::vector<Candidate>& candidates, Faults& faults) {
    for (const std::string& word : selection.spoiled) {
        const auto selects = [&](const Candidate& c) { return c.selected_by(word); };
        if (std::none_of(candidates.begin(), candidates.end(), selects) ||
            std::any_of(candidates.begin(), candidates.end(), [&](const Candidate& c) {
                return selects(c) && is_in_the_job(c, selection);
            }))
            continue;
        faults.push_back({Severity::usage,
                          {},
                          "",
                          "--spoiled '" + word + "' names nothing of this job",
                          "what --only does not choose or --without leaves out was not cut: change "
                          "one of them"});
    }
}

} // namespace

HalfDone half_done_by(const Selection& selection, const std::vector<Vehicle>& vehicles) {
    HalfDone out;
    for (const Candidate& c : candidates_in(vehicles)) {
        if (is_spoiled(c, selection))
            out.cut_again.push_back(c.place);
        else if (wanted(c, selection) && is_done(c, selection))
            out.done.push_back(c.place);
    }
    std::sort(out.done.begin(), out.done.end());
    std::sort(out.cut_again.begin(), out.cut_again.end());
    return out;
}

std::vector<LeftOut> left_out_by(const Selection& selection, const std::vector<Vehicle>& vehicles,
                                 Faults& faults) {
    const std::vector<Candidate> candidates = candidates_in(vehicles);
    must_select("--only", selection.only, candidates, faults);
    must_select("--without", selection.without, candidates, faults);
    must_select("--done", selection.done, candidates, faults);
    must_select("--spoiled", selection.spoiled, candidates, faults);
    spoiled_must_be_in_the_job(selection, candidates, faults);
    must_be_extras(selection.with, candidates, faults);
    std::vector<LeftOut> out;
    for (const Candidate& c : candidates)
        if (!is_to_be_cut(c, selection))
            out.push_back(c.place);
    if (out.size() == candidates.size() && !stops(faults))
        faults.push_back({Severity::usage,
                          {},
                          "",
                          "nothing is left to cut",
                          selection.done.empty()
                              ? "--only, --without and --with leave out every panel"
                              : "with --done every panel is done or left out"});
    std::sort(out.begin(), out.end());
    return out;
}

bool is_left_out(const std::vector<LeftOut>& left_out, int vehicle, int panel, Sides sides) {
    const std::vector<Side> all = sides_of(sides);
    return std::all_of(all.begin(), all.end(), [&](Side side) {
        return std::binary_search(left_out.begin(), left_out.end(), LeftOut{vehicle, panel, side});
    });
}

std::vector<std::string> left_on_by(const std::vector<std::string>& leave,
                                    const std::vector<Vehicle>& vehicles, Faults& faults) {
    std::set<std::string> known;
    for (const Vehicle& vehicle : vehicles)
        for (const Hardware& part : vehicle.hardware)
            known.insert(part.name);
    for (const std::string& word : leave)
        if (known.count(word) == 0)
            faults.push_back({Severity::usage,
                              {},
                              "",
                              "--leave '" + word + "' names no part that comes off",
                              known.empty() ? "the vehicle lists no hardware"
                                            : "the parts are: " + listed(known)});
    // What can only come off after a part that stays on stays on as well.
    std::vector<std::string> out;
    for (const Vehicle& vehicle : vehicles)
        for (const std::string& name : piece::staying_on(vehicle.hardware, leave))
            if (std::find(out.begin(), out.end(), name) == out.end())
                out.push_back(name);
    return out;
}

} // namespace pelt::order
