// SPDX-License-Identifier: MIT
#include "report/paper/strip_lists.hpp"

#include "report/edges_text.hpp"
#include "report/words.hpp"

#include <algorithm>
#include <cctype>

namespace pelt::report::paper {
namespace {

std::string in_capitals(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return text;
}

std::string for_the_backing(const Job& job, const PlacedPiece& p) {
    std::string text = std::to_string(p.number) + " · " + label_of(job, p.id);
    if (p.id.side != Side::centre)
        text += " · " + in_capitals(std::string(name_of(p.id.side)));
    text += " · arrow " + arrow_of(p.turn);
    const std::string upper = upper_edge_of(job, p);
    return upper.empty() ? text : text + " · top " + upper;
}

bool is_on(const PlacedPiece& p, const Strip& strip) {
    const Box box = p.cut_box();
    return p.roll == strip.roll && box.low.x < strip.to && box.high.x > strip.from;
}

std::string seam_words(const Seam& seam, const PlacedPiece& p, const Measures& measures) {
    const bool upper = p.id.part == seam.upper_part;
    const int other = upper ? seam.under_part : seam.upper_part;
    return std::string(upper ? "laps over piece " : "lies under piece ") + std::to_string(other) +
           ", lap " + measures.size_with_unit(seam.overlap) +
           (upper ? ", laid after it" : ", laid before it") +
           "; the seam: " + place_text(seam.place, measures);
}

/// Inlays are laid before all else of their panel.
std::string inlay_words(const Job& job, const PlacedPiece& p, const Measures& measures) {
    Um overlap = p.panel.allowances.overlap.value_or(job.film.allowances.overlap);
    for (const Inlay& inlay : p.panel.inlays)
        if (inlay.name == p.id.inlay)
            overlap = inlay.overlap.value_or(overlap);
    return "laid first; " + panel_label(job, p.id.vehicle, p.id.panel) + " lies over it, lap " +
           measures.size_with_unit(overlap) + " all round";
}

/// Seams, inlays and openings, piece by piece.
std::vector<std::string> notes_on(const Job& job, const std::vector<const PlacedPiece*>& pieces,
                                  const Measures& measures) {
    std::vector<std::string> texts;
    for (const PlacedPiece* p : pieces) {
        const std::string openings = openings_text(job, *p, measures);
        if (!openings.empty())
            texts.push_back(std::to_string(p->number) + ", " + label_of(job, p->id) + ": " +
                            openings + ".");
        if (p->id.kind == PieceKind::inlay)
            texts.push_back(std::to_string(p->number) + ", " + label_of(job, p->id) + ": " +
                            inlay_words(job, *p, measures) + ".");
        for (const Seam& seam : job.seams)
            if (seam.vehicle == p->id.vehicle && seam.panel == p->id.panel &&
                seam.side == p->id.side && p->id.kind == PieceKind::main &&
                (seam.upper_part == p->id.part || seam.under_part == p->id.part))
                texts.push_back(std::to_string(p->number) + ", " + label_of(job, p->id) + ": " +
                                seam_words(seam, *p, measures) + ".");
    }
    return texts;
}

} // namespace

std::string what_to_write_on_the_backing() {
    return "Write the arrow and the top edge on the backing as the piece lies on the table: \"top ↑\" "
           "is the far edge of the film, \"top ←\" the one toward the free end. Top is the upper "
           "edge of the panel's drawing.";
}

Document lists_of_strip(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                        const Strip& strip, const Measures& measures) {
    const Job& job = sheet.plan.job();
    const std::string of_the_roll = job.by == CutBy::straight ? "strip" : "section";
    std::vector<const PlacedPiece*> own;
    Table table;
    table.columns = {{"write on the backing", Align::left, true}, {"edges", Align::left, true}};
    for (const PlacedPiece& p : pieces) {
        if (!is_on(p, strip))
            continue;
        own.push_back(&p);
        const Box cut = p.cut_box();
        const bool begun = cut.low.x < strip.from;
        table.rows.push_back(
            {for_the_backing(job, p) + (begun ? " (from the " + of_the_roll + " before)"
                                        : cut.high.x > strip.to
                                            ? " (goes on on the next " + of_the_roll + ")"
                                            : ""),
             edges_text(job, p, measures)});
    }
    Document document{table};
    const std::vector<std::string> notes = notes_on(job, own, measures);
    if (own.empty())
        return {Line{"No piece comes off this stretch of the roll."}};
    if (!notes.empty())
        document.push_back(Items{"-", notes});
    return document;
}

} // namespace pelt::report::paper
