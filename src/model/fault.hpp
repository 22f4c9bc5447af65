// SPDX-License-Identifier: MIT
// What is wrong with the user's files or wishes, as data. A mistake of the program itself is not
// a fault: it is a ProgramError (error.hpp).
#pragma once

#include <cstddef>
#include <memory>
#include <string>
#include <vector>

namespace pelt {

/// A text file as it was read. `name` is what messages call it ("-" was standard input).
struct Source {
    std::string name;
    std::string text;
};

/// A place in a file. Lines and columns count from 1, columns in characters; line 0: no place.
struct Place {
    std::shared_ptr<const Source> source;
    int line = 0;
    int column = 0;
};

/// What a fault stops, from the mildest. Decides the exit status (cli/).
enum class Severity {
    note,    ///< shown at -v only
    warning, ///< top of the sheet and standard error; the job goes on
    usage,   ///< the command line is wrong: exit 2
    file,    ///< an input file is wrong: exit 3
    access,  ///< a file could not be opened, read or written: exit 4
    job,     ///< the job cannot be met: exit 1
};

/// One sentence for one mistake: "what; remedy", the place and the panel in front.
struct Fault {
    Severity severity = Severity::file;
    Place place;
    std::string panel; ///< empty: not about one panel
    std::string what;
    std::string remedy; ///< empty: none to give
};

using Faults = std::vector<Fault>;

/// True when something in the list stops the job (worse than a warning).
bool stops(const Faults& faults);

/// `file:line:column: panel 'NAME': what; remedy`, then the source line and a caret when
/// `with_source`. Without a place the text begins at the panel.
std::string to_string(const Fault& fault, bool with_source = true);

} // namespace pelt
