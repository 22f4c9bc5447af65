// SPDX-License-Identifier: MIT
#include "cli/help.hpp"

#include "cli/options.hpp"
#include "cli/statuses.hpp"
#include "cli/wrap.hpp"

namespace pelt::cli {
namespace {

constexpr std::size_t text_column = 28;
constexpr std::string_view purpose =
    "pelt tells a vehicle-wrap installer how much film to order and how to cut it.";
constexpr std::string_view operands_text =
    "VEHICLE and FILM are a file, - for standard input, or the name of an installed file "
    "(pelt list).";
constexpr std::string_view where_to_report =
    "Report problems to whoever gave you pelt, with your files, the command and its messages.";

std::string usage_line(const CommandRow& row) {
    return "pelt " + std::string(row.name) + " [OPTION]... " + std::string(row.operands);
}

std::string examples_of(const CommandRow& row) {
    std::string text;
    for (const Example& example : row.examples)
        text += wrapped(example.what, "  " + std::string(example.line), 6);
    return text;
}

std::string left_column(const OptionRow& row) {
    return (row.letter == 0 ? std::string("  ") : std::string("  -") + row.letter + ", ") +
           spelled_with_value(row);
}

std::string line_of(const OptionRow& row) {
    std::string text(row.line);
    if (!row.initial.empty())
        text += " (default: " + std::string(row.initial) + ")";
    return wrapped(text, left_column(row), text_column);
}

std::string options_of(const std::optional<Command>& command) {
    std::string text;
    for (const Group group : groups()) {
        std::string lines;
        for (const OptionRow& row : options())
            if (row.works && row.group == group &&
                (command ? belongs_to(row, *command) : row.commands.empty()))
                lines += line_of(command ? as_of(row, *command) : row);
        if (!lines.empty())
            text += "\n" + std::string(name_of(group)) + ":\n" + lines;
    }
    return text;
}

std::string statuses_text() {
    std::string text = "\nExit status:\n";
    for (const StatusRow& row : statuses())
        text += wrapped(row.meaning, "  " + std::to_string(row.status), 8);
    return text;
}

std::string command_lines() {
    std::string text = "\nCommands:\n";
    for (const CommandRow& row : commands())
        if (row.works)
            text +=
                wrapped(row.line, "  " + std::string(row.name) + " " + std::string(row.operands),
                        text_column);
    return text;
}

} // namespace

std::string main_help() {
    return "Usage: pelt COMMAND [OPTION]... OPERAND...\n\n" + wrapped(purpose, "", 0) +
           "\nExamples:\n" + examples_of(row_of(Command::cut)) +
           examples_of(row_of(Command::check)) + command_lines() + "\n" +
           wrapped("'pelt COMMAND --help' lists the options of a command.", "", 0) + "\n" +
           wrapped(operands_text, "", 0) + options_of(std::nullopt) + statuses_text() + "\n" +
           wrapped(where_to_report, "", 0);
}

std::string help_of_command(Command command) {
    const CommandRow& row = row_of(command);
    return "Usage: " + usage_line(row) + "\n\nExamples:\n" + examples_of(row) + "\n" +
           wrapped(row.text, "", 0) + "\n" + wrapped(operands_text, "", 0) + options_of(command) +
           "\n" + wrapped("'pelt --help' lists the exit statuses; pelt(1) says more.", "", 0) +
           wrapped(where_to_report, "", 0);
}

std::string short_help() {
    return "Usage: pelt COMMAND [OPTION]... OPERAND...\n\n" + wrapped(purpose, "", 0) +
           "\nExamples:\n" + examples_of(row_of(Command::cut)) +
           "\nSee 'pelt --help' for the commands and options.\n";
}

std::string version() {
    return PELT_VERSION;
}

std::string version_text() {
    return "pelt " + version() +
           "\n\nMIT license: free to use, change and pass on, without warranty.\n";
}

} // namespace pelt::cli
