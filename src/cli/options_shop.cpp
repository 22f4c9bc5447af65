// SPDX-License-Identifier: MIT
#include "cli/option_table.hpp"

namespace pelt::cli {

std::vector<OptionRow> shop_options() {
    return {
        {.id = Opt::shop,
         .name = "shop",
         .kind = Kind::file,
         .value = "FILE",
         .commands = {Command::cut, Command::compare, Command::quote, Command::strip},
         .group = Group::film,
         .line = "the shop's rates, taxes and days",
         .text = "A shop file: what an hour costs, what is added to film, taxes, the crew and the "
                 "days on which it works, its log; see pelt-shop(5). With it the cut sheet tells "
                 "hours and the day when the job is ready; compare ranks by what the whole job "
                 "costs, labor included; strip has the prices of what is used up. The shop's "
                 "\"sure\" holds where --sure is not given. Without a shop file a quote has the "
                 "film's price and hours by common practice."},
        {.id = Opt::who,
         .name = "who",
         .kind = Kind::names,
         .value = "NAME,...",
         .commands = {Command::cut, Command::compare, Command::quote, Command::strip,
                      Command::check},
         .group = Group::film,
         .line = "only what these people wrote into the shop's log",
         .text = "Takes chances of redo and the pace from the rows of the shop's log that these "
                 "people wrote, in place of everybody's; see pelt-shop(5).",
         .repeats = true},
        {.id = Opt::start,
         .name = "start",
         .kind = Kind::date,
         .value = "DATE",
         .commands = {Command::cut, Command::compare, Command::quote},
         .group = Group::job,
         .line = "the day on which work begins",
         .text = "The day, such as 2026-12-01, on which a vehicle is taken in; in a file of jobs "
                 "for those that say no 'start' of their own. Without it working days are counted. "
                 "With cut and compare it needs --shop."},
    };
}

} // namespace pelt::cli
