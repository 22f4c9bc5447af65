// SPDX-License-Identifier: MIT
// What is wrong with the user's files or wishes, as data. A mistake of the program itself is not
// a fault: it is a ProgramError (error.hpp).
#pragma once

#include "model/length.hpp"

#include <cstddef>
#include <memory>
#include <string>
#include <vector>

namespace pelt {

/// A text file as it was read. `name` is what messages call it ("-" was standard input).
struct Source {
    std::string name;
    std::string text;
    bool is_table = false; ///< a spreadsheet's: places in it are cells
};

/// A place in a file. Lines and columns count from 1, columns in characters; line 0: no place. In a
/// table they are the row and the column of a cell.
struct Place {
    std::shared_ptr<const Source> source;
    int line = 0;
    int column = 0;
};

/// What a fault stops, from the mildest. Decides the exit status (cli/).
enum class Severity {
    note,    ///< shown at -v only
    remark,  ///< among what the sheet assumes; elsewhere as a note
    warning, ///< a mark on the sheet, and standard error; the job goes on
    usage,   ///< the command line is wrong: exit 2
    file,    ///< an input file is wrong: exit 3
    access,  ///< a file could not be opened, read or written: exit 4
    job,     ///< the job cannot be met: exit 1
};

/// One sentence for one mistake: "what; remedy", the place and the panel in front. Lengths in it
/// may be marked (marked_length.hpp); they are to be told in the user's unit.
struct Fault {
    Severity severity = Severity::file;
    Place place;
    std::string panel; ///< empty: not about one panel
    std::string what;
    std::string remedy; ///< empty: none to give
    /// What several panels may have in common: `what` then is this alone, or this, ": " and what is
    /// the panel's own. Empty: nothing.
    std::string common = {};
};

using Faults = std::vector<Fault>;

/// What is the panel's own where several may have something in common; empty: nothing.
std::string own_of(const Fault& fault);

/// True when something in the list stops the job (worse than a warning).
bool stops(const Faults& faults);

/// Faults of several panels that have their severity, file, `common` and remedy in common as one,
/// where the first of them stood: "COMMON: PANEL OWN; PANEL OWN; REMEDY". Others stay as they are.
Faults told_together(const Faults& faults);

/// The sentence alone: "what; remedy", lengths in the unit.
std::string sentence_of(const Fault& fault, Unit unit = Unit::mm);

/// "C5": the cell of a table, as spreadsheets call it.
std::string cell_name(int row, int column);

/// `file:line:column: panel 'NAME': what; remedy`, then the source line and a caret when
/// `with_source`. Without a place the text begins at the panel; in a table the place is `file:C5:`.
std::string to_string(const Fault& fault, bool with_source = true, Unit unit = Unit::mm);

} // namespace pelt
