// SPDX-License-Identifier: MIT
#include "piece/tuck_check.hpp"

#include "model/marked_length.hpp"
#include "piece/bends.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace pelt::piece {
namespace {

std::string in_percent(double percent) {
    const long long tenths = std::llround(10 * percent);
    return std::to_string(tenths / 10) +
           (tenths % 10 != 0 ? "." + std::to_string(tenths % 10) : "") + " %";
}

/// A tuck that asks more than the film gives.
struct TooMuch {
    bool hollow = false;
    double width = 0;
    double asked = 0; ///< infinite where no stretch is enough
    double longest = 0;
};

/// Stretching counts before gathering: gathered film opens again.
std::optional<TooMuch> too_much(double width, const Bend& bend, double limit) {
    const double stretched = bend.hollow > width ? width / (bend.hollow - width)
                                                 : std::numeric_limits<double>::infinity();
    if (width > 0 && stretched > limit)
        return TooMuch{true, width, stretched, bend.hollow * limit / (1 + limit)};
    const double gathered = width / (bend.bulging + width);
    if (width > 0 && gathered > limit)
        return TooMuch{false, width, gathered, bend.bulging * limit / (1 - limit)};
    return std::nullopt;
}

/// One edge or opening, or neighbouring edges without a name that ask for the same tuck.
struct Stretch {
    std::string first;
    std::string last;                     ///< empty: one alone
    std::optional<std::size_t> edge = {}; ///< the last one, when it has no name
    TooMuch worst;
    bool even = true; ///< all of them ask the same
};

std::string asked_by(const TooMuch& tuck) {
    return std::isfinite(tuck.asked) ? in_percent(100 * tuck.asked) : "more than it can";
}

std::string place_of(const Stretch& stretch) {
    return stretch.first + (stretch.last.empty() ? "" : " to " + stretch.last);
}

/// "20 mm asks 10.7 %, 7 mm holds"
std::string figures_of(const Stretch& stretch) {
    const TooMuch& tuck = stretch.worst;
    return marked_mm(tuck.width, Told::nearest) + " asks " + (stretch.even ? "" : "up to ") +
           asked_by(tuck) + ", " +
           (tuck.longest >= 1 ? marked_mm(tuck.longest, Told::down) + " holds" : "none holds");
}

/// "1-2, 'arch' (20 mm asks 10.7 %, 7 mm holds)": one after the other with the same figures share
/// them.
std::string in_words(const std::vector<Stretch>& all) {
    std::string text;
    for (std::size_t i = 0; i < all.size(); ++i) {
        text += (i > 0 ? ", " : "") + place_of(all[i]);
        const std::string figures = figures_of(all[i]);
        if (i + 1 == all.size() || figures_of(all[i + 1]) != figures)
            text += " (" + figures + ")";
    }
    return text;
}

/// The tucks of one panel that ask too much.
class Found {
public:
    /// `edge`: its number among the panel's, when it has no name.
    void add(const std::string& where, std::optional<std::size_t> edge, const TooMuch& tuck) {
        std::vector<Stretch>& all = tuck.hollow ? hollow_ : bulging_;
        if (!all.empty() && edge && all.back().edge && *all.back().edge + 1 == *edge &&
            all.back().worst.width == tuck.width) {
            Stretch& last = all.back();
            last.last = where;
            last.edge = edge;
            last.even = last.even && asked_by(last.worst) == asked_by(tuck);
            if (tuck.asked > last.worst.asked)
                last.worst = tuck;
            return;
        }
        all.push_back({where, "", edge, tuck});
    }

    void tell(const Panel& panel, double limit, Faults& faults) const {
        const std::string film = " beyond the film's " + in_percent(100 * limit) + " on an edge";
        mark(panel, hollow_, (1 + marked_above) * limit, "hollow edge, tuck too wide",
             "tuck less, or cut the film in", faults);
        if (panel.is != PanelKind::door_handle)
            mark(panel, bulging_, gathers_too_much, "bulging edge, tuck too wide",
                 "tuck less, or fold it", faults);
        remark(panel, hollow_, in_words(hollow_), "stretched round hollow edges" + film, faults);
        remark(panel, bulging_, names_of(bulging_, 0),
               "gathered round bulging edges, to be worked in with heat", faults);
    }

private:
    /// A hollow edge is marked where its tuck asks so much more than the film gives, a bulging one
    /// where film gathers by so much (common practice, no source).
    static constexpr double marked_above = .25;
    static constexpr double gathers_too_much = .20;

    static std::string names_of(const std::vector<Stretch>& all, double above) {
        std::string names;
        for (const Stretch& stretch : all)
            if (stretch.worst.asked > above)
                names += (names.empty() ? "" : ", ") + place_of(stretch);
        return names;
    }

    static void mark(const Panel& panel, const std::vector<Stretch>& all, double above,
                     const std::string& common, const std::string& remedy, Faults& faults) {
        const std::string names = names_of(all, above);
        if (!names.empty())
            faults.push_back({Severity::warning, panel.place, panel.name, common + ": " + names,
                              remedy, common});
    }

    static void remark(const Panel& panel, const std::vector<Stretch>& all,
                       const std::string& own, const std::string& common, Faults& faults) {
        if (!all.empty())
            faults.push_back({Severity::remark, panel.place, panel.name, common + ": " + own, "",
                              common});
    }

    std::vector<Stretch> hollow_;
    std::vector<Stretch> bulging_;
};

std::string in_quotes(const std::string& name) {
    return "'" + name + "'";
}

/// Of the blank's edges; seams are none.
std::vector<std::optional<TooMuch>> tucks_of(const Blank& blank, const Work& work, double limit) {
    std::vector<double> widths;
    for (const EdgeWork& edge : work.edges)
        widths.push_back(static_cast<double>(edge.move) / um_per_mm);
    const std::vector<Bend> bends = bends_of(blank.outline, widths);
    std::vector<std::optional<TooMuch>> out(bends.size());
    for (std::size_t i = 0; i < bends.size(); ++i)
        if (!blank.edges[i].seam)
            out[i] = too_much(widths[i], bends[i], limit);
    return out;
}

void look_at_edges(const Blank& blank, const Work& work, double limit, Found& found) {
    const auto tucks = tucks_of(blank, work, limit);
    for (std::size_t i = 0; i < tucks.size(); ++i) {
        const BlankEdge& edge = blank.edges[i];
        if (tucks[i])
            found.add(edge.name.empty() ? edge.number : in_quotes(edge.name),
                      edge.name.empty() ? std::optional(i) : std::nullopt, *tucks[i]);
    }
}

void look_at_openings(const Blank& blank, const Work& work, double limit, Found& found) {
    for (std::size_t i = 0; i < blank.openings.size() && i < work.openings.size(); ++i) {
        if (work.openings[i].covered)
            continue;
        const double width = static_cast<double>(work.openings[i].move) / um_per_mm;
        const Bend bend = bends_of(blank.openings[i].ring, {width}).front();
        if (const auto tuck = too_much(width, bend, limit))
            found.add("opening " + in_quotes(blank.openings[i].name), std::nullopt, *tuck);
    }
}

} // namespace

void check_tucks(const Panel& panel, const Blank& blank, const Work& work, const Film& film,
                 Faults& faults) {
    if (!film.stretch_edge_percent || !(*film.stretch_edge_percent > 0))
        return;
    const double limit = *film.stretch_edge_percent / 100;
    Found found;
    look_at_edges(blank, work, limit, found);
    look_at_openings(blank, work, limit, found);
    found.tell(panel, limit, faults);
}

std::vector<bool> edges_over_the_limit(const Blank& blank, const Work& work, const Film& film) {
    std::vector<bool> out(blank.edges.size(), false);
    if (!film.stretch_edge_percent || !(*film.stretch_edge_percent > 0))
        return out;
    const auto tucks = tucks_of(blank, work, *film.stretch_edge_percent / 100);
    for (std::size_t i = 0; i < tucks.size(); ++i)
        out[i] = tucks[i].has_value();
    return out;
}

void check_recesses(const Panel& panel, const Film& film, Faults& faults) {
    if (!film.stretch_panel_percent)
        return;
    for (const Recess& recess : panel.recesses) {
        const double asked = 200 * recess.depth_mm / std::min(recess.wide_mm, recess.high_mm);
        if (asked > *film.stretch_panel_percent)
            faults.push_back({Severity::warning, recess.place, panel.name,
                              "recess '" + recess.name + "' asks " + in_percent(asked) +
                                  " stretch (film: " + in_percent(*film.stretch_panel_percent) +
                                  ")",
                              "give it an inlay"});
    }
}

} // namespace pelt::piece
