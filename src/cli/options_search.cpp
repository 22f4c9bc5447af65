// SPDX-License-Identifier: MIT
// The options that say how hard to look.
#include "cli/option_table.hpp"

namespace pelt::cli {

std::vector<OptionRow> search_options() {
    return {
        {.id = Opt::effort,
         .name = "effort",
         .kind = Kind::count,
         .value = "N",
         .initial = "1",
         .least = 1,
         .most = 100,
         .commands = planning_commands(),
         .group = Group::search,
         .line = "look N times as hard for a shorter layout",
         .text =
             "Work to spend on the layout, 1 to 100. It is counted in steps and not in seconds, "
             "so that the same files give the same sheet on every machine."},
        {.id = Opt::time,
         .name = "time",
         .kind = Kind::seconds,
         .value = "SECONDS",
         .commands = planning_commands(),
         .group = Group::search,
         .line = "look for a shorter layout for so many seconds",
         .text = "Looks for so many seconds, unless the layout is proved to be the shortest before, and "
                 "prints the best one so far, which says that it was stopped. With --effort it "
                 "stops at whichever comes first. The seconds are the whole run's: compare shares "
                 "them among its films and widths. Another run may then give another sheet."},
        {.id = Opt::threads,
         .name = "threads",
         .kind = Kind::count,
         .value = "N",
         .initial = "all there are",
         .least = 1,
         .most = 256,
         .commands = {Command::cut, Command::compare, Command::quote},
         .group = Group::search,
         .line = "processors to use; never changes the sheet",
         .text = "Processors to use, 1 to 256. Their number never changes the sheet."},
        {.id = Opt::seed,
         .name = "seed",
         .kind = Kind::count,
         .value = "N",
         .initial = "1",
         .least = 0,
         .most = 1'000'000'000,
         .commands = planning_commands(),
         .group = Group::search,
         .line = "another start for the search",
         .text = "Starts the search elsewhere, which may find a shorter or a longer layout."},
    };
}

} // namespace pelt::cli
