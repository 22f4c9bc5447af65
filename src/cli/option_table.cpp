// SPDX-License-Identifier: MIT
#include "cli/option_table.hpp"

namespace pelt::cli {
namespace {

using Commands = std::vector<Command>;

Commands selecting() {
    return {Command::cut, Command::area, Command::compare, Command::strip};
}

/// A row that is only a name so far: what it will be is written when it works.
OptionRow later(Opt id, std::string_view name, Kind kind, std::string_view value, Group group) {
    return {.id = id,
            .name = name,
            .kind = kind,
            .value = value,
            .commands = {Command::cut},
            .group = group,
            .line = {},
            .text = {},
            .works = false,
            .repeats = true};
}

} // namespace

std::vector<Command> planning_commands() {
    return {Command::cut, Command::compare};
}

std::vector<OptionRow> job_options() {
    return {
        {.id = Opt::by,
         .name = "by",
         .kind = Kind::choice,
         .choices = {{"straight"}, {"contour", true}},
         .initial = "straight",
         .commands = planning_commands(),
         .group = Group::job,
         .line = "cut rectangles by hand, or along every outline",
         .text =
             "How the film is cut. \"straight\" is by hand: the roll is only ever divided from "
             "edge to edge, and every piece is a rectangle with a margin to grip. \"contour\" is "
             "by plotter or template: every piece is cut along its own outline."},
        {.id = Opt::only,
         .name = "only",
         .kind = Kind::names,
         .value = "A,B",
         .commands = selecting(),
         .group = Group::job,
         .line = "only these panels",
         .text = "Only these panels: by name, by name and side (\"front door/left\"), or by group; "
                 "also one piece of a divided panel (\"front bumper/1\", \"side wall/left/2\"), or "
                 "one of several that are alike (\"door handle/left/no 2\"). A name that is a "
                 "panel's and a group's means the panel. An extra comes in when it is named here.",
         .repeats = true,
         .named = {"panel", "group"}},
        {.id = Opt::without,
         .name = "without",
         .kind = Kind::names,
         .value = "A,B",
         .commands = selecting(),
         .group = Group::job,
         .line = "all but these panels",
         .text = "Leaves these panels out; they are named as for --only.",
         .repeats = true,
         .named = {"panel", "group"}},
        {.id = Opt::with,
         .name = "with",
         .kind = Kind::names,
         .value = "EXTRA",
         .commands = selecting(),
         .group = Group::job,
         .line = "with this extra, such as the door jambs",
         .text = "Adds the panels of an extra, which are left out otherwise.",
         .repeats = true,
         .named = {"extra"}},
        {.id = Opt::leave,
         .name = "leave",
         .kind = Kind::names,
         .value = "PART,...",
         .commands = selecting(),
         .group = Group::job,
         .line = "parts that stay on the vehicle",
         .text = "Parts of the vehicle's hardware that stay on while it is wrapped. The film then "
                 "ends flush at them; with the part off it is tucked behind or covers the hole.",
         .repeats = true,
         .named = {"part"}},
        {.id = Opt::like_size,
         .name = "like-size",
         .kind = Kind::sizes,
         .value = "L,W,H",
         .commands = selecting(),
         .group = Group::job,
         .line = "guess: the vehicle scaled to this length, width, height",
         .text = "For a vehicle that was not measured but is like this one: scales every panel to "
                 "these sizes over all, in the file's unit, the width without mirrors, the height "
                 "without rails and aerial. The panels are guessed then, and what comes out is an "
                 "estimate: a range of lengths, what to price by, and which panels to measure "
                 "first, but no cuts. Needs 'overall' in the vehicle file, and one vehicle."},
        {.id = Opt::times,
         .name = "times",
         .kind = Kind::count,
         .value = "N",
         .initial = "1",
         .least = 1,
         .most = 10'000,
         .commands = planning_commands(),
         .group = Group::job,
         .line = "so many of every vehicle",
         .text = "Plans the job for N of every vehicle at once, 1 to 10000."},
        {.id = Opt::seams,
         .name = "seams",
         .kind = Kind::choice,
         .choices = {{"fitter"}, {"thrifty"}, {"never"}, {"auto"}},
         .initial = "fitter",
         .commands = planning_commands(),
         .group = Group::job,
         .line = "where panels that are too wide are divided",
         .text = "Where a panel that fits the roll in no way is divided, unless its file has lines "
                 "for it. \"fitter\" (also called \"auto\"): where a fitter would: the fewest "
                 "pieces, none narrow, 50 mm clear of what must stay clear; along the vehicle "
                 "before upright; the upper or forward piece on top. \"thrifty\": where the "
                 "film is shortest. \"never\" stops the job instead. One vehicle is always divided "
                 "alike, whichever panels are chosen, however many there are, and whatever lies in "
                 "stock; the sheet lists the seams, to be copied into the vehicle file."},
        later(Opt::split, "split", Kind::choice, "warn|auto", Group::job),
        {.id = Opt::done,
         .name = "done",
         .kind = Kind::names,
         .value = "A,B",
         .commands = {Command::cut},
         .group = Group::job,
         .line = "panels that are on the vehicle already",
         .text = "In the middle of a job: panels that are on the vehicle already, named as for "
                 "--only. Only the others are laid out, on what is left of the film: give that "
                 "with --on-hand or --stock. Where it is too short the sheet says which pieces "
                 "find no place and how much more of the same batch is needed, and the exit "
                 "status is 1.",
         .repeats = true,
         .named = {"panel", "group"}},
        {.id = Opt::spoiled,
         .name = "spoiled",
         .kind = Kind::names,
         .value = "A,B",
         .commands = {Command::cut},
         .group = Group::job,
         .line = "panels that were spoiled and are cut again",
         .text =
             "In the middle of a job: panels that were spoiled and are cut again, whether --done "
             "names them or not. Without --done everything else is taken as done. What --only "
             "does not choose or --without leaves out was never cut: of a panel whose one side is "
             "left out the other side is cut again.",
         .repeats = true,
         .named = {"panel", "group"}},
    };
}

std::vector<OptionRow> film_options() {
    return {
        {.id = Opt::width,
         .name = "width",
         .kind = Kind::length,
         .value = "LENGTH",
         .least = 50,
         .most = 6'000,
         .commands = planning_commands(),
         .group = Group::film,
         .line = "a roll of this width instead of the film's own",
         .text =
             "Plans on rolls of this width, 50 mm to 6 m, instead of the film's own: 1220, "
             "1.22 m, 48 in. A bare number is in millimeters. With compare it may be given several "
             "times: every film is planned on every width.",
         .repeats_with = {Command::compare}},
        {.id = Opt::margin,
         .name = "margin",
         .kind = Kind::margin,
         .value = "WANT[,LEAST]",
         .least = 0,
         .most = 1'000,
         .commands = planning_commands(),
         .group = Group::film,
         .line = "film to grip around a piece in straight cutting",
         .text =
             "The margin to grip around every piece in straight cutting, instead of the film "
             "file's; a panel's own stands. LEAST is what it may shrink to across the roll "
             "before a panel is divided; left out, it is the film's, or WANT where that is "
             "less. Flat panels do with 25 mm; small curved pieces want 60 to 75. A bare number "
             "is in millimeters."},
        {.id = Opt::turns,
         .name = "turns",
         .kind = Kind::choice,
         .choices = {{"quarter"}, {"any"}},
         .initial = "quarter",
         .commands = planning_commands(),
         .group = Group::film,
         .line = "whether pieces may lie askew in contour cutting",
         .text = "In contour cutting pieces of film that may lie in any direction are turned by "
                 "quarter turns; with \"any\" they may also lie askew, at any thousandth of a "
                 "degree. That takes several times as long and never more film. Film that lies one "
                 "way or either way is not turned further, and straight cutting lays every piece "
                 "upright."},
        {.id = Opt::stages,
         .name = "stages",
         .kind = Kind::choice,
         .choices = {{"2"}, {"3"}, {"any"}},
         .initial = "3",
         .commands = planning_commands(),
         .group = Group::film,
         .line = "in how many stages a strip is cut",
         .text =
             "In how many stages one strip of film is cut in straight cutting: how often the cuts "
             "change between across and along. With 3 a strip is cut across the roll, slit along, "
             "and what is slit off is cut across; 2 leaves out the last; \"any\" sets no end. One "
             "more cut "
             "may always trim a single piece. The sheet says what \"any\" would save."},
        {.id = Opt::table,
         .name = "table",
         .kind = Kind::length,
         .value = "LENGTH",
         .least = 100,
         .most = 30'000,
         .commands = planning_commands(),
         .group = Group::film,
         .line = "longest film that the table takes",
         .text = "The longest piece of film that the table takes, 100 mm to 30 m: in straight "
                 "cutting nothing longer is cut off the roll. A bare number is in millimeters."},
        {.id = Opt::in_order,
         .name = "in-order",
         .commands = planning_commands(),
         .group = Group::film,
         .line = "cut off first what is laid first",
         .text = "Makes the order of laying a rule in straight cutting: every strip that is cut "
                 "off the roll holds the pieces that are laid next. It takes more film, and the "
                 "sheet says how much. Without it pieces lie in that order where it costs nothing.",
         .repeats = true},
        {.id = Opt::stock,
         .name = "stock",
         .kind = Kind::file,
         .value = "FILE",
         .commands = {Command::cut},
         .group = Group::film,
         .line = "rolls and remnants on the shelf",
         .text = "A file of the rolls and remnants on the shelf; those of the film are used where "
                 "they make the order cheaper. The whole job comes from one batch, but for panels "
                 "that are batch free; all new film is one batch, and a roll whose batch is not "
                 "known is one of its own. The sheet lists the offcuts worth keeping, ready to be "
                 "copied into the file.",
         .repeats = true},
        {.id = Opt::on_hand,
         .name = "on-hand",
         .kind = Kind::length,
         .value = "LENGTH",
         .least = 1,
         .most = 10'000'000,
         .commands = {Command::cut},
         .group = Group::film,
         .line = "so much of the film is there, on one roll",
         .text = "So much of the film is there already, on one roll as wide as the film: 6.4 m, "
                 "21 ft. The same as a stock file with one roll. A bare number is in millimeters."},
        {.id = Opt::flaw,
         .name = "flaw",
         .kind = Kind::span,
         .value = "FROM..TO",
         .least = 0,
         .most = 10'000'000,
         .commands = {Command::cut},
         .group = Group::film,
         .line = "a stretch of it that must not be used",
         .text =
             "A stretch of the roll on hand that must not be used, counted from its free end: "
             "3.2m..3.4m. No piece is laid over it. May be given several times, with --on-hand.",
         .repeats = true},
        {.id = Opt::sure,
         .name = "sure",
         .kind = Kind::percent,
         .value = "PERCENT",
         .commands = planning_commands(),
         .group = Group::film,
         .line = "spare film, to suffice in so many jobs of 100",
         .text =
             "Buys spare film for pieces that are spoiled and cut again, so that what is bought "
             "suffices in so many jobs of 100: \"95 %\". How often a panel is spoiled is its "
             "\"redo\" in the vehicle file; without it a figure is assumed, which the sheet "
             "tells. A spoiled piece takes a cut across the whole roll, by its shorter side if "
             "its direction allows, and may be spoiled again. Without this option there is no "
             "spare."},
        {.id = Opt::tolerance,
         .name = "tolerance",
         .kind = Kind::length,
         .value = "LENGTH",
         .least = 0,
         .most = 1'000,
         .commands = planning_commands(),
         .group = Group::film,
         .line = "how far every tape reading may be off",
         .text = "Makes the pieces so much larger that the order holds when every tape reading is "
                 "off by this much; a panel may have a \"tolerance\" of its own. The sheet says "
                 "which panel's measurement moves the length most: measure that one twice. A bare "
                 "number is in millimeters."},
    };
}

std::vector<OptionRow> output_options() {
    return {
        {.id = Opt::format,
         .name = "format",
         .kind = Kind::choice,
         .choices = {{"table"},
                     {"csv"},
                     {"json"},
                     {"markdown"},
                     {"svg", true, {Command::cut, Command::area}},
                     {"pdf", true, {Command::cut, Command::quote}}},
         .initial = "table",
         .commands = {Command::cut, Command::area, Command::compare, Command::quote,
                      Command::strip},
         .group = Group::output,
         .line = "what to print",
         .text =
             "The format of what goes to standard output. JSON and CSV are for programs: always "
             "in millimeters, and their keys and columns keep their meaning. The others are for "
             "people and may change: table is the cut sheet in 80 columns, markdown the same for "
             "a page of text, svg a drawing of every roll, or of where scanned panels stretch, and "
             "pdf "
             "the cut sheet on paper: page one, every strip of film on a page of its own with "
             "boxes to tick, the lists, the cautions. A PDF is not written to a terminal."},
        {.id = Opt::out,
         .name = "out",
         .letter = 'o',
         .kind = Kind::file,
         .value = "FILE",
         .commands = {Command::cut, Command::area, Command::compare, Command::quote, Command::strip,
                      Command::list, Command::check},
         .group = Group::output,
         .line = "write to FILE; its ending says the format",
         .text =
             "Writes to FILE instead of standard output, in the format that the name's ending "
             "says. May be given several times; \"-\" is standard output. A file appears whole "
             "or not at all. A file that is read, under whatever name, is not written over: then "
             "nothing is done. With \"pelt check\" it is a drawing, in SVG, of the panels as they "
             "were measured; with \"pelt list\" a vehicle as a table, in CSV.",
         .repeats = true},
        {.id = Opt::units,
         .name = "units",
         .kind = Kind::choice,
         .choices = {{"mm"}, {"cm"}, {"m"}, {"in"}, {"ft"}, {"yd"}},
         .commands = {Command::cut, Command::area, Command::compare, Command::quote, Command::strip,
                      Command::check},
         .group = Group::output,
         .line = "unit of lengths for people",
         .text =
             "The unit of lengths in formats for people. Without it: that in which the film file "
             "gives the width of the roll (the first film's; millimeters for meters; beside "
             "inches, feet or yards where its length is given so), and millimeters where there "
             "is no film. CSV and JSON are always in millimeters."},
        {.id = Opt::csv,
         .name = "csv",
         .kind = Kind::choice,
         .choices = {{"comma"}, {"semicolon"}, {"rfc4180"}},
         .initial = "comma",
         .commands = {Command::cut, Command::area, Command::compare, Command::quote, Command::strip,
                      Command::list},
         .group = Group::output,
         .line = "how CSV is written: semicolons for some spreadsheets",
         .text = "How CSV is written. \"comma\": commas, decimal points, lines that end in LF. "
                 "\"semicolon\": semicolons and decimal commas, for spreadsheets of countries that "
                 "write 1,5 for one and a half. \"rfc4180\": as \"comma\", with the CR LF at the "
                 "end of a line that RFC 4180 asks for. Cells and columns are the same."},
        {.id = Opt::summary,
         .name = "summary",
         .commands = {Command::cut},
         .group = Group::output,
         .line = "one row for the whole run",
         .text =
             "A heading and one row for the whole run, in place of the sheet, or in CSV in place "
             "of a row a piece; for tables of many runs. As table, CSV and Markdown.",
         .repeats = true},
        {.id = Opt::inside,
         .name = "inside",
         .commands = {Command::quote},
         .group = Group::output,
         .line = "the shop's own page of each job",
         .text = "In place of the customer's page, or of the table: the shop's own page of each "
                 "job, with cost, hours by stage and panel, the days and what to have ready. Not "
                 "for the customer.",
         .repeats = true},
        {.id = Opt::pattern,
         .name = "pattern",
         .commands = {Command::cut},
         .group = Group::output,
         .line = "SVG and PDF of the cut outlines in true size",
         .text = "In place of the sheet's drawing. With SVG: the cut outlines alone, as they lie "
                 "on the roll, in true millimeters, for a plotter's own software. With PDF: every "
                 "piece in full size, tiled over pages, with marks to join them by and a line of "
                 "100 mm to check the printer by; name the panels with --only, for a whole vehicle "
                 "takes hundreds of pages.",
         .repeats = true},
        {.id = Opt::paper,
         .name = "paper",
         .kind = Kind::choice,
         .choices = {{"a4"}, {"letter"}},
         .initial = "a4",
         .commands = {Command::cut, Command::quote, Command::list},
         .group = Group::output,
         .line = "size of paper for PDF",
         .text = "The paper of a PDF: 210 x 297 mm or 8.5 x 11 in."},
        {.id = Opt::form,
         .name = "form",
         .commands = {Command::list},
         .group = Group::output,
         .line = "a blank form for measuring, as PDF or CSV",
         .text = "Makes a form to write measures on, as PDF: how to measure, a list of panels with "
                 "width and height, and squared paper with a table of points. With NAME, a "
                 "vehicle, its panels are listed, and each has its page. Give it a file with "
                 "--out; one that ends in .csv is a table to fill in, which is then a vehicle.",
         .repeats = true},
        {.id = Opt::names,
         .name = "names",
         .commands = {Command::list},
         .group = Group::output,
         .line = "names alone, for scripts and shells",
         .text = "One name a line, with its kind and a tab before it: \"vehicle\" and \"film\" of "
                 "what is installed. With NAME, a vehicle, what options may name of it: \"panel\", "
                 "\"group\", \"extra\", and \"part\" for --leave. Shells complete by it.",
         .repeats = true},
        {.id = Opt::date,
         .name = "date",
         .kind = Kind::date,
         .value = "DATE",
         .commands = {Command::cut, Command::quote},
         .group = Group::output,
         .line = "a date to print on the sheet",
         .text = "Prints this date on the sheet, as it is written here. Without it the sheet has a "
                 "blank to write one in: the same files then give the same sheet on any day."},
        {.id = Opt::fill,
         .name = "fill",
         .kind = Kind::filling,
         .value = "WORD=TEXT",
         .commands = {Command::cut},
         .group = Group::output,
         .line = "fills a blank of the sheet: job, customer, plate, ...",
         .text = "Fills a blank on the sheet: \"--fill job=1042 --fill 'customer=A. Miller'\". The "
                 "blanks are job, customer, plate, color, batch, date and measured by. Any other "
                 "word makes a line of its own. What is not filled stays blank to write on.",
         .repeats = true},
        {.id = Opt::schema,
         .name = "schema",
         .kind = Kind::choice,
         .choices = {{"vehicle"}, {"film"}, {"stock"}, {"shop"}, {"jobs"}},
         .commands = {Command::check},
         .group = Group::output,
         .line = "what such a file may say, for editors",
         .text = "Prints a JSON Schema (draft 2020-12) of that kind of file, by which editors "
                 "suggest keys and mark what cannot stand. No FILE is read. The schema lets pass "
                 "some of what 'pelt check FILE' refuses."},
    };
}

} // namespace pelt::cli
