// SPDX-License-Identifier: MIT
#include "order/selection.hpp"

#include "order/names.hpp"
#include "order/panel_word.hpp"
#include "piece/piece.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string_view>
#include <tuple>

namespace pelt::order {
namespace {

using Words = std::vector<std::string>;

std::vector<PanelWord> panel_words(const Words& words) {
    std::vector<PanelWord> out;
    for (const std::string& word : words)
        if (const auto made = panel_word(word))
            out.push_back(*made);
    return out;
}

/// A selection whose words were understood.
struct Choice {
    explicit Choice(const Selection& selection)
        : only(panel_words(selection.only)), without(panel_words(selection.without)),
          done(panel_words(selection.done)), spoiled(panel_words(selection.spoiled)),
          with(selection.with), all_wanted(selection.only.empty()),
          all_done(selection.done.empty() && !selection.spoiled.empty()) {}

    std::vector<PanelWord> only;
    std::vector<PanelWord> without;
    std::vector<PanelWord> done;
    std::vector<PanelWord> spoiled;
    Words with;
    bool all_wanted;
    bool all_done; ///< where nothing is named as done, all but what was spoilt is
};

template <class Words, class Test>
bool any_word(const Words& words, Test test) {
    return std::any_of(words.begin(), words.end(), test);
}

/// One piece of one side of a panel, or those that no word tells apart.
class Asked {
public:
    Asked(const Candidate& candidate, const WhichPiece& which, const Choice& choice)
        : c_(candidate), which_(which), choice_(choice) {}

    bool is_to_be_cut() const { return is_spoiled() || (is_wanted() && !is_done()); }

    /// A group does not bring in an extra that is not asked for.
    bool is_spoiled() const {
        return is_in_the_job() && any_word(choice_.spoiled, [&](const PanelWord& word) {
                   return names(word, c_, which_) ||
                          (is_asked_as_extra() && selects(word, c_, which_));
               });
    }

    /// What --only and --without leave of the vehicles, extras or not.
    bool is_in_the_job() const {
        return is_wanted() || ((choice_.all_wanted || any_selects(choice_.only)) &&
                               !any_selects(choice_.without));
    }

    bool is_done() const {
        if (choice_.all_done)
            return !is_spoiled();
        return !is_spoiled() && any_selects(choice_.done);
    }

    /// An extra comes in by `--with`, or when `--only` calls the panel itself by its name.
    bool is_wanted() const {
        const bool named = any_word(choice_.only, [&](const PanelWord& word) {
            return names(word, c_, which_);
        });
        const bool extra_asked = is_asked_as_extra() || named;
        const bool in_choice = choice_.all_wanted || any_selects(choice_.only) ||
                               (!c_.panel->extra.empty() && extra_asked);
        return extra_asked && in_choice && !any_selects(choice_.without);
    }

private:
    bool any_selects(const std::vector<PanelWord>& words) const {
        return any_word(words, [this](const PanelWord& word) { return selects(word, c_, which_); });
    }
    bool is_asked_as_extra() const {
        return c_.panel->extra.empty() ||
               any_word(choice_.with,
                        [&](const std::string& word) { return word == c_.panel->extra; });
    }

    const Candidate& c_;
    WhichPiece which_;
    const Choice& choice_;
};

/// Every piece that words tell apart, and one that no word tells from others.
std::vector<WhichPiece> pieces_told_apart(const Choice& choice) {
    std::set<int> nos{WhichPiece::other};
    std::set<int> pieces{WhichPiece::other};
    for (const auto* words : {&choice.only, &choice.without, &choice.done, &choice.spoiled})
        for (const PanelWord& word : *words) {
            if (word.no != LeftOut::all)
                nos.insert(word.no);
            if (word.piece != LeftOut::all)
                pieces.insert(word.piece);
        }
    std::vector<WhichPiece> out;
    for (const int no : nos)
        for (const int piece : pieces)
            out.push_back({no, piece});
    return out;
}

bool may_be(const PanelWord& word, const Candidate& c) {
    const int no = word.no == LeftOut::all ? WhichPiece::other : word.no;
    const int piece = word.piece == LeftOut::all ? WhichPiece::other : word.piece;
    return selects(word, c, {no, piece});
}

void must_select(const std::string& option, const Words& words,
                 const std::vector<Candidate>& candidates, Faults& faults) {
    for (const std::string& text : words) {
        const std::optional<PanelWord> word = panel_word(text);
        if (word && std::any_of(candidates.begin(), candidates.end(),
                                [&](const Candidate& c) { return may_be(*word, c); }))
            continue;
        std::set<std::string> known;
        for (const Candidate& c : candidates)
            known.insert(c.panel->name);
        faults.push_back({Severity::usage,
                          {},
                          "",
                          option + " '" + text + "' names no panel and no group",
                          "the panels are: " + listed(known)});
    }
}

/// A panel and a group of the same name: the group must not be ticked off in silence.
void warn_of_groups_called_as_panels(const std::string& option, const Words& words,
                                     const std::vector<Candidate>& candidates, Faults& faults) {
    for (const std::string& word : words) {
        std::set<std::string> others;
        bool is_panel = false;
        for (const Candidate& c : candidates) {
            is_panel = is_panel || c.panel->name == word;
            if (c.panel->group == word && c.panel->name != word)
                others.insert(c.panel->name);
        }
        if (is_panel && !others.empty())
            faults.push_back({Severity::warning,
                              {},
                              "",
                              option + " '" + word + "' is the panel alone, not the group '" +
                                  word + "'",
                              "name the others too if they are meant: " + listed(others)});
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

Fault nothing_left(const Selection& selection) {
    return {Severity::usage,
            {},
            "",
            "nothing is left to cut",
            selection.done.empty() ? "--only, --without and --with leave out every panel"
                                   : "with --done every panel is done or left out"};
}

/// By what words may call it: which of those that are alike, which piece.
using NoAndPiece = std::pair<int, int>;

NoAndPiece called(const std::vector<Vehicle>& vehicles, const PieceId& id) {
    const Panel& panel = vehicles[static_cast<std::size_t>(id.vehicle)]
                             .panels[static_cast<std::size_t>(id.panel)];
    return {no_of(id, panel.faces), id.kind == PieceKind::inlay ? LeftOut::inlays : id.part};
}

/// An inlay lies under the pieces of its panel, and no word calls it: where this holds for all of
/// them, it holds for the inlay too.
void inlays_follow(std::map<NoAndPiece, bool>& pieces) {
    for (auto& [inlay, is] : pieces)
        if (inlay.second == LeftOut::inlays)
            is =
                is || std::all_of(pieces.begin(), pieces.end(), [&](const auto& entry) {
                    return entry.first == inlay || entry.first.first != inlay.first || entry.second;
                });
}

/// As few entries as tell it: a whole side, all of one that is alike, or single pieces.
void add_told_shortly(const LeftOut& side, const std::map<NoAndPiece, bool>& pieces,
                      std::vector<LeftOut>& out) {
    const auto all_of = [&](int no) {
        return std::all_of(pieces.begin(), pieces.end(), [&](const auto& entry) {
            return entry.second || (no != LeftOut::all && entry.first.first != no);
        });
    };
    if (all_of(LeftOut::all)) {
        out.push_back(side);
        return;
    }
    const bool one = pieces.begin()->first.first == pieces.rbegin()->first.first;
    for (const auto& [which, is] : pieces) {
        LeftOut entry = side;
        entry.no = one ? LeftOut::all : which.first;
        entry.piece = all_of(which.first) ? LeftOut::all : which.second;
        if (is && (out.empty() || out.back() != entry))
            out.push_back(entry);
    }
}

using SideKey = std::tuple<int, int, Side>;

std::map<SideKey, std::set<NoAndPiece>> by_side(const std::vector<Vehicle>& vehicles,
                                                const std::vector<PieceId>& ids) {
    std::map<SideKey, std::set<NoAndPiece>> out;
    for (const PieceId& id : ids)
        out[{id.vehicle, id.panel, id.side}].insert(called(vehicles, id));
    return out;
}

std::vector<PieceId> ids_of(const std::vector<Piece>& pieces) {
    std::vector<PieceId> out;
    for (const Piece& piece : pieces)
        out.insert(out.end(), piece.ids.begin(), piece.ids.end());
    return out;
}

bool leaves_out(const Job& job, const PieceId& id) {
    const int faces = job.vehicles[static_cast<std::size_t>(id.vehicle)]
                          .panels[static_cast<std::size_t>(id.panel)]
                          .faces;
    return std::any_of(job.left_out.begin(), job.left_out.end(),
                       [&](const LeftOut& left) { return left.holds(id, faces); });
}

/// Words that name a piece or one of several that is not there, of panels that are known.
void must_be_there(const std::string& option, const Words& words, const Job& job,
                   const std::map<SideKey, std::set<NoAndPiece>>& sides, Faults& faults) {
    const std::vector<Candidate> candidates = candidates_in(job.vehicles);
    for (const PanelWord& word : panel_words(words)) {
        bool is_there = word.no == LeftOut::all && word.piece == LeftOut::all;
        std::set<NoAndPiece> known;
        for (const Candidate& c : candidates) {
            const auto side = sides.find({c.place.vehicle, c.place.panel, c.place.side});
            if (side == sides.end() || c.panel->name != word.name)
                continue;
            known.insert(side->second.begin(), side->second.end());
            for (const auto& [no, piece] : side->second)
                is_there = is_there || names(word, c, {no, piece});
        }
        if (is_there || known.empty())
            continue;
        const int pieces = std::max_element(known.begin(), known.end(), [](auto a, auto b) {
                               return a.second < b.second;
                           })->second;
        std::string what = "it is cut in " +
                           (pieces > 1 ? std::to_string(pieces) + " pieces" : "one piece");
        if (known.rbegin()->first > 1)
            what += ", and there are " + std::to_string(known.rbegin()->first) + " of it";
        faults.push_back({Severity::usage,
                          {},
                          "",
                          option + " '" + written(word) + "' names no piece",
                          what});
    }
}

/// What was spoiled was cut, so it is not left out.
void spoiled_must_be_in_the_job(const Selection& selection,
                                const std::vector<Candidate>& candidates, Faults& faults) {
    const Choice choice(selection);
    const std::vector<WhichPiece> pieces = pieces_told_apart(choice);
    for (const std::string& text : selection.spoiled) {
        const std::optional<PanelWord> word = panel_word(text);
        bool is_known = false;
        bool is_in_the_job = false;
        for (const Candidate& c : candidates)
            for (const WhichPiece& which : pieces)
                if (word && selects(*word, c, which)) {
                    is_known = true;
                    is_in_the_job = is_in_the_job || Asked(c, which, choice).is_in_the_job();
                }
        if (is_known && !is_in_the_job)
            faults.push_back({Severity::usage,
                              {},
                              "",
                              "--spoiled '" + text + "' names nothing of this job",
                              "what --only does not choose or --without leaves out was not cut: "
                              "change one of them"});
    }
}

} // namespace

HalfDone half_done_by(const Selection& selection, const std::vector<Vehicle>& vehicles,
                      const std::vector<PieceId>& ids) {
    HalfDone out;
    const Choice choice(selection);
    const auto sides = by_side(vehicles, ids);
    for (const Candidate& c : candidates_in(vehicles)) {
        std::map<NoAndPiece, bool> done;
        std::map<NoAndPiece, bool> again;
        const auto known = sides.find({c.place.vehicle, c.place.panel, c.place.side});
        const std::set<NoAndPiece> which = known == sides.end()
                                               ? std::set{NoAndPiece{WhichPiece::other,
                                                                     WhichPiece::other}}
                                               : known->second;
        for (const NoAndPiece& one : which) {
            const Asked asked(c, {one.first, one.second}, choice);
            again[one] = asked.is_spoiled();
            done[one] = !asked.is_spoiled() && asked.is_wanted() && asked.is_done();
        }
        inlays_follow(done);
        add_told_shortly(c.place, done, out.done);
        add_told_shortly(c.place, again, out.cut_again);
    }
    std::sort(out.done.begin(), out.done.end());
    std::sort(out.cut_again.begin(), out.cut_again.end());
    return out;
}

std::vector<LeftOut> left_out_by(const Selection& selection, const std::vector<Vehicle>& vehicles,
                                 Faults& faults) {
    const std::vector<Candidate> candidates = candidates_in(vehicles);
    for (const auto& [option, words] : {std::pair("--only", &selection.only),
                                        {"--without", &selection.without},
                                        {"--done", &selection.done},
                                        {"--spoiled", &selection.spoiled}}) {
        must_select(option, *words, candidates, faults);
        warn_of_groups_called_as_panels(option, *words, candidates, faults);
    }
    spoiled_must_be_in_the_job(selection, candidates, faults);
    must_be_extras(selection.with, candidates, faults);
    const Choice choice(selection);
    const std::vector<WhichPiece> pieces = pieces_told_apart(choice);
    std::vector<LeftOut> out;
    for (const Candidate& c : candidates)
        if (std::none_of(pieces.begin(), pieces.end(), [&](const WhichPiece& which) {
                return Asked(c, which, choice).is_to_be_cut();
            }))
            out.push_back(c.place);
    if (out.size() == candidates.size() && !stops(faults))
        faults.push_back(nothing_left(selection));
    std::sort(out.begin(), out.end());
    return out;
}

void leave_out_pieces(const Selection& selection, Job& job, Faults& faults) {
    const std::vector<PieceId> ids = ids_of(job.pieces);
    const auto sides = by_side(job.vehicles, ids);
    for (const auto& [option, words] : {std::pair("--only", &selection.only),
                                        {"--without", &selection.without},
                                        {"--done", &selection.done},
                                        {"--spoiled", &selection.spoiled}})
        must_be_there(option, *words, job, sides, faults);
    job.half_done = half_done_by(selection, job.vehicles, ids);
    const Choice choice(selection);
    std::erase_if(job.left_out, [&](const LeftOut& left) {
        return sides.count({left.vehicle, left.panel, left.side}) > 0;
    });
    for (const Candidate& c : candidates_in(job.vehicles)) {
        const auto side = sides.find({c.place.vehicle, c.place.panel, c.place.side});
        if (side == sides.end())
            continue;
        std::map<NoAndPiece, bool> left;
        for (const NoAndPiece& one : side->second)
            left[one] = !Asked(c, {one.first, one.second}, choice).is_to_be_cut();
        inlays_follow(left);
        add_told_shortly(c.place, left, job.left_out);
    }
    std::sort(job.left_out.begin(), job.left_out.end());
    std::set<std::tuple<int, int, Side, int>> partly;
    for (const PieceId& id : ids)
        if (id.kind == PieceKind::main && !leaves_out(job, id))
            partly.insert({id.vehicle, id.panel, id.side, id.copy});
    for (Piece& piece : job.pieces) {
        Piece rest = piece;
        std::erase_if(piece.ids, [&](const PieceId& id) { return leaves_out(job, id); });
        std::erase_if(rest.ids, [&](const PieceId& id) {
            return id.kind == PieceKind::inlay || !leaves_out(job, id) ||
                   partly.count({id.vehicle, id.panel, id.side, id.copy}) == 0;
        });
        if (!rest.ids.empty())
            job.not_cut.push_back(std::move(rest));
    }
    std::erase_if(job.pieces, [](const Piece& piece) { return piece.ids.empty(); });
    std::erase_if(job.seams, [&](const Seam& seam) {
        return std::none_of(partly.begin(), partly.end(), [&](const auto& of) {
            return std::get<0>(of) == seam.vehicle && std::get<1>(of) == seam.panel &&
                   std::get<2>(of) == seam.side;
        });
    });
    if (job.pieces.empty() && !stops(faults))
        faults.push_back(nothing_left(selection));
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
