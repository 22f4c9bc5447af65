// SPDX-License-Identifier: MIT
// The options that every command has.
#include "cli/option_table.hpp"

namespace pelt::cli {

std::vector<OptionRow> everywhere_options() {
    return {
        {.id = Opt::help,
         .name = "help",
         .letter = 'h',
         .group = Group::everywhere,
         .line = "this help",
         .text = "Prints help; after a command, the help of that command.",
         .repeats = true},
        {.id = Opt::version,
         .name = "version",
         .letter = 'V',
         .group = Group::everywhere,
         .line = "the version",
         .text = "Prints the version.",
         .repeats = true},
        {.id = Opt::quiet,
         .name = "quiet",
         .letter = 'q',
         .group = Group::everywhere,
         .line = "nothing on standard error but errors",
         .text = "Nothing on standard error but errors. The sheet keeps its warnings.",
         .repeats = true},
        {.id = Opt::verbose,
         .name = "verbose",
         .letter = 'v',
         .group = Group::everywhere,
         .line = "also what was decided; -vv: for developers",
         .text = "Also says what was decided and why. With \"pelt cut\" that is which pieces the "
                 "length hangs on, and what a wider roll, a freer direction, a seam, narrower "
                 "margins or fewer rules "
                 "would save: the job is planned again for each, along outlines quickly. Twice: "
                 "also a log for developers. "
                 "All of it goes to standard error.",
         .repeats = true},
        {.id = Opt::color,
         .name = "color",
         .kind = Kind::choice,
         .choices = {{"auto"}, {"always"}, {"never"}},
         .initial = "auto",
         .group = Group::everywhere,
         .line = "color in messages and tables",
         .text = "Whether text is colored. \"auto\" colors what goes to a terminal, unless "
                 "NO_COLOR is set or TERM is \"dumb\"."},
    };
}

} // namespace pelt::cli
