// SPDX-License-Identifier: MIT
// A checked plan in the words and layouts that people and programs read. Returns bytes; writing
// them anywhere is the caller's business.
#pragma once

#include "model/fault.hpp"
#include "model/order.hpp"
#include "model/plan.hpp"
#include "report/area.hpp"
#include "report/csv_dialect.hpp"
#include "report/document.hpp"
#include "report/estimate.hpp"
#include "report/measured.hpp"
#include "report/paper_size.hpp"
#include "report/quote.hpp"
#include "report/strip.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::report {

/// Everything that a cut sheet says.
struct Sheet {
    Plan plan;
    Order order;
    Faults warnings;
    Unit unit = Unit::mm;        ///< for people's formats
    std::string check_code = {}; ///< of all files read; empty: of the vehicles' and the film's text
    std::string date = {};       ///< as the user gave it; empty: a blank to write in
    Fillings filled = {};        ///< other blanks
    std::string stopped_by = {}; ///< what ended the search early ("time"), for programs; people are
                                 ///< told by a warning
    RulesCost rules_cost = {};   ///< not asked for: nothing is said
    Binding binding = {};        ///< what the length hangs on; not asked for: nothing is said
    SeamsWeighed seams_weighed = {}; ///< not asked for: nothing is said
    bool by_shop = false;            ///< a shop's figures were given
    std::optional<Quote> quote = std::nullopt; ///< by them; none: of work half done
};

/// The words of the blanks on a sheet, in small letters.
const std::vector<std::string>& names_of_blanks();

/// Which pieces the length hangs on, in words; empty: not asked for.
std::string what_binds(const Sheet& sheet);
/// What a sheet that was planned otherwise takes of new film, and how much less that is.
std::string what_it_saves(const Sheet& other, const Sheet& than);

/// "4.35 m", in the sheet's unit.
std::string length_of_new_film(const Sheet& sheet);

/// Exact areas over a plan, in doubled square micrometres.
struct Areas {
    DoubleArea film = 0;    ///< length times roll width, summed over the rolls
    DoubleArea cut = 0;     ///< the pieces as they leave the roll
    DoubleArea wrapped = 0; ///< the film that stays on
    DoubleArea bleed() const { return cut - wrapped; }
    DoubleArea offcut() const { return film - cut; }
};
Areas areas_of(const Plan& plan);

/// The interface of programs: schema pelt.cut/1, always in mm, exact to the grid.
std::string to_json(const Sheet& sheet);

/// For spreadsheets: a head and one row a piece, by number; always in mm, RFC 4180 quoting, LF.
/// Columns, in this order; what is not known or does not apply is empty:
///   number laid                    in the order in which pieces come free; in that of laying
///   vehicle panel side copy part parts kind name    `name` is an inlay's
///   direction                      how the piece may lie: one-way, two-way, any
///   roll batch
///   from_free_end_mm from_near_edge_mm    the near corner of its box; from the roll's own edges,
///                                  that edge not yet trimmed
///   along_mm across_mm             its box as cut, margins included
///   turn_deg                       counter-clockwise, from the piece's forward along the roll
///   finished_along_mm finished_across_mm  what stays on the vehicle, as it lies on the roll
///   cut_mm2 wrapped_mm2
///   stretch_percent stretch_is     exact, estimate, unknown
///   from_trimmed_edge_mm           as from_near_edge_mm, once the roll edge that is not used is
///                                  off; the sheet of straight cuts counts so
/// New columns may be added at the end.
std::string to_csv(const Sheet& sheet);

/// A head and one row a run: vehicle film by demonstration stopped roll_width_mm pieces rolls
/// length_mm bound_mm film_mm2 cut_mm2 wrapped_mm2 waste_percent order_mm total currency seams.
std::string to_summary_csv(const std::vector<Sheet>& sheets);

/// A drawing of every roll with one millimetre a user unit: one group a piece with title and
/// description, styles in one place, no script.
std::string to_svg(const Sheet& sheet);

/// The cut sheet to print: page one, every strip of film on a page of its own, the lists, the
/// cautions. The same sheet gives the same bytes; they hold no date but the sheet's own.
std::string to_pdf(const Sheet& sheet, Paper paper);
/// The cut outlines alone in true millimetres, as they lie on the rolls, for a plotter's software:
/// a group a roll, in it a group a piece.
std::string to_pattern_svg(const Sheet& sheet);
/// Every piece in full size, tiled over pages: how they go together, then every tile that a line
/// runs through, with marks to join it by and a line of 100 mm. Pieces that are cut alike once.
std::string to_pattern_pdf(const Sheet& sheet, Paper paper);
/// How many pages that takes.
std::size_t pages_of_patterns(const Sheet& sheet, Paper paper);

/// A blank form to measure by, as PDF: how, a list of panels, and a page to sketch a panel on; with
/// a vehicle its panels are listed and each has its page.
std::string measuring_form(const Vehicle* vehicle, Paper paper);

/// What paper needs and this machine does not have, in a sentence; empty: nothing.
std::string what_paper_lacks();

/// The cut sheet for people, top down as it is used: job, order, what it assumes, what needs a
/// decision, how the film lies, the list in the order of laying, cuts, pieces, figures, cautions.
Document cut_sheet(const Sheet& sheet);
std::string to_table(const Sheet& sheet, const TextStyle& style = {});
std::string to_markdown(const Sheet& sheet);

/// A whole run in one row of a table, for people.
Document summary(const Sheet& sheet);

/// The same job with one film and roll width. Without a sheet `problem` says in a sentence why
/// there is none.
struct ComparisonRow {
    std::string film;
    Um width = 0; ///< of the roll
    std::optional<Sheet> sheet;
    std::string problem;
    /// Of the roll that the film's prices are for; none: of this one. Else the row has no price.
    std::optional<Um> priced_width = std::nullopt;
    std::optional<Estimate> estimate = std::nullopt; ///< in place of a sheet: not all was measured
    std::optional<Quote> quote = std::nullopt;       ///< of the whole job; none: no shop's figures

    /// Of the sheet or the estimate; none where there is neither.
    const Job* job() const;
    const Order* order() const;
};

struct Comparison {
    std::string vehicles;
    bool demonstration = false; ///< a vehicle or a film of it is invented
    Unit unit = Unit::mm;       ///< for people's formats
    std::vector<ComparisonRow> rows;
    bool by_shop = false; ///< ranked by what the whole job costs in that shop
};

std::string to_table(const Comparison& comparison, const TextStyle& style = {});
std::string to_markdown(const Comparison& comparison);

/// Schema pelt.compare/1: one object a row, null for what is not known; a row without a layout has
/// its "problem" and nulls. With a shop's figures "job" is what pelt.quote/1 says of it.
std::string to_json(const Comparison& comparison);

/// A head and one row a film and width: vehicle film roll_width_mm length_mm bound_mm
/// waste_percent order_mm total currency seams pieces problem rank more guessed_panels low_mm
/// high_mm; rank and more by what is bought, 1 for the cheapest of its currency; the last two only
/// of vehicles that were not measured. With a shop's figures rank and more are by the whole job,
/// and there are also film_cost hours_taken labor whole_job ready_on working_days. New columns may
/// be added at the end.
std::string to_csv(const Comparison& comparison);

/// The film that stays on one vehicle, against what is usual for its body.
struct AreaOpinion {
    std::string text; ///< "11.9 m² …; usual for hatchback: …", no full stop
    bool unusual = false;
};
/// `areas` may hold extras, which do not count. None where the body is not known. Half to two
/// thirds of the film that a change of colour takes ends on the vehicle (common practice, no
/// source), so this is blunter than a length.
std::optional<AreaOpinion> opinion_on_area(const Vehicle& vehicle,
                                           const std::vector<PanelArea>& areas);

} // namespace pelt::report
