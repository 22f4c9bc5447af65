// SPDX-License-Identifier: MIT
// A checked plan in the words and layouts that people and programs read. Returns bytes; writing
// them anywhere is the caller's business.
#pragma once

#include "model/fault.hpp"
#include "model/order.hpp"
#include "model/plan.hpp"
#include "report/document.hpp"

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
    std::string stopped_by =
        {}; ///< what ended the search early ("time"); shown if the layout says so
};

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

/// The cut sheet for people, top down as it is used: job, order, what it assumes, what needs a
/// decision, how the film lies, the list in the order of laying, cuts, pieces, figures, cautions.
Document cut_sheet(const Sheet& sheet);
std::string to_table(const Sheet& sheet, const TextStyle& style = {});
std::string to_markdown(const Sheet& sheet);

} // namespace pelt::report
