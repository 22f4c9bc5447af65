// SPDX-License-Identifier: MIT
#include "cli/commands.hpp"

#include "model/error.hpp"

namespace pelt::cli {
namespace {

CommandRow cut_row() {
    return {
        Command::cut,
        "cut",
        "VEHICLE... FILM",
        2,
        std::nullopt,
        "order length, waste and cut sheet",
        "Plans the whole job: how much film to order, how much of it is wasted, and a cut sheet "
        "with every piece in its place on the roll. Several vehicles make one order.",
        {
            {"pelt cut town-hatchback satin-hybrid", "the demonstration car, cut by hand"},
            {"pelt cut van.yaml film.yaml --only roof,hood", "two panels of your own van"},
            {"pelt cut van.yaml film.yaml -o sheet.txt -o roll.svg",
             "the sheet and a drawing of the roll"},
            {"pelt cut town-hatchback satin-hybrid -o plan.pdf", "the sheet to print and tick off"},
        },
        true};
}

CommandRow area_row() {
    return {
        Command::area,
        "area",
        "VEHICLE [FILM]",
        1,
        2,
        "areas of every panel, and the stretch it asks of the film",
        "Lists every panel with its visible area, the film that stays on it, its size laid flat "
        "and the stretch that its shape asks. With FILM also what is cut from the roll.",
        {
            {"pelt area town-hatchback", "how large every panel is"},
            {"pelt area van.yaml film.yaml --format csv", "for a spreadsheet"},
        },
        true};
}

CommandRow compare_row() {
    return {
        Command::compare,
        "compare",
        "VEHICLE FILM...",
        2,
        std::nullopt,
        "films and widths by what they cost: length, waste, price",
        "Plans the same job with every FILM, and with every roll width that is asked for, and "
        "prints one row for each, the cheapest first, and what makes the difference: more film, or "
        "a dearer one. CSV and JSON keep the order given, and have the rank.",
        {
            {"pelt compare town-hatchback satin-hybrid gloss-cast-yard", "two films, side by side"},
            {"pelt compare van.yaml film.yaml --width 1220 --width 1524", "two roll widths"},
        },
        true};
}

CommandRow quote_row() {
    return {
        Command::quote,
        "quote",
        "JOBS",
        1,
        1,
        "many jobs, one row each: film, hours, price, the day it is ready",
        "Plans every job of a file of jobs, pelt-jobs(5), and says what it costs, how many hours "
        "it takes and when it is ready. Rows come in the order of the file. A job that is wrong "
        "gets a row that says so and stops no other; the exit status is that of the worst. JSON "
        "has one object a line. A PDF is the customer's page, one a job.",
        {
            {"pelt quote jobs.yaml --shop shop.yaml", "what each job costs, and when it is ready"},
            {"pelt quote jobs.yaml --shop shop.yaml --format csv > quotes.csv",
             "for a spreadsheet"},
            {"pelt quote jobs.yaml --shop shop.yaml -o quotes.pdf", "a page for each customer"},
        },
        true};
}

CommandRow strip_row() {
    return {
        Command::strip,
        "strip",
        "VEHICLE [FILM]",
        1,
        2,
        "parts to take off: order, tools, minutes, clips",
        "Lists the parts that come off before the chosen panels are wrapped, in the order of "
        "taking them off, with tools, minutes and clips, and what must lie ready. With FILM also "
        "whether it may go over radar, cameras and sensors.",
        {
            {"pelt strip town-hatchback", "what comes off, and what to have ready"},
            {"pelt strip town-hatchback satin-hybrid --only mirrors", "for the mirrors alone"},
        },
        true};
}

CommandRow check_row() {
    return {
        Command::check,
        "check",
        "FILE...",
        1,
        std::nullopt,
        "read files and list everything that is wrong with them",
        "Reads every FILE and lists all that is wrong with it, with its place and what to do. A "
        "good file gets one line. With vehicles and a film together it also checks what needs "
        "both, such as whether every panel fits the roll.",
        {
            {"pelt check van.yaml", "is the file right?"},
            {"pelt check van.yaml film.yaml", "and do its panels fit this film?"},
            {"pelt check --schema vehicle", "what a vehicle file may say, for an editor"},
        },
        true};
}

CommandRow list_row() {
    return {
        Command::list,
        "list",
        "[NAME]",
        0,
        1,
        "the vehicles and films that are installed",
        "Lists the vehicles and films that can be called by their name alone, and says which are "
        "yours: those below ~/.local/share/pelt. With NAME it prints that file, to copy and "
        "edit. With --form it makes a form to measure by.",
        {
            {"pelt list", "what there is"},
            {"pelt list town-hatchback > mine.yaml", "a start for a file of your own"},
            {"pelt list --form -o form.pdf", "a form to measure by"},
            {"pelt list town-hatchback -o mine.csv", "a vehicle as a spreadsheet"},
        },
        true};
}

} // namespace

const std::vector<CommandRow>& commands() {
    static const std::vector<CommandRow> table{
        cut_row(), area_row(), compare_row(), quote_row(), strip_row(), check_row(), list_row(),
    };
    return table;
}

const CommandRow& row_of(Command command) {
    for (const CommandRow& row : commands())
        if (row.id == command)
            return row;
    throw ProgramError("a command is missing from the table");
}

const CommandRow* command_named(std::string_view name) {
    for (const CommandRow& row : commands())
        if (row.name == name)
            return &row;
    return nullptr;
}

} // namespace pelt::cli
