// SPDX-License-Identifier: MIT
// CLI11 2.1 splits the words; what they may be, and every sentence about them, is ours. Each
// command has an application of its own instead of a CLI11 subcommand: subcommands would take a
// file called "list" for the command of that name.
#include "cli/parse.hpp"

#include "cli/complaints.hpp"
#include "cli/values.hpp"

#include <CLI/CLI.hpp>

#include <algorithm>

namespace pelt::cli {
namespace {

using Words = std::vector<std::string>;

std::string names_for_library(const OptionRow& row) {
    return (row.letter == 0 ? "" : std::string("-") + row.letter + ",") + spelled(row);
}

void add_option(CLI::App& app, const OptionRow& row) {
    if (row.kind == Kind::flag) {
        app.add_flag(names_for_library(row))->disable_flag_override();
        return;
    }
    // Not expected(-1): that would swallow the operands behind it.
    app.add_option(names_for_library(row))
        ->type_size(1)
        ->expected(1)
        ->allow_extra_args(false)
        ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
}

void collect(const CLI::App& app, const OptionRow& row, Arguments& into) {
    const CLI::Option* option = app.get_option(spelled(row));
    Words& values = into.values[row.id];
    const Words& results = option->results();
    values.insert(values.end(), results.begin(), results.end());
    if (values.empty())
        into.values.erase(row.id);
}

/// The part before the command: options of every command, then the rest untouched.
Words split_off_command(const Words& args, Arguments& into) {
    CLI::App app;
    app.set_help_flag();
    app.allow_extras()->prefix_command();
    for (const OptionRow& row : options())
        if (row.commands.empty())
            add_option(app, row);
    app.parse(Words(args.rbegin(), args.rend()));
    for (const OptionRow& row : options())
        if (row.commands.empty())
            collect(app, row, into);
    return app.remaining();
}

/// The part behind the command; returns the options that are none. Operands are what CLI11 leaves
/// over: a positional of its own would split one that is written "[a,b]".
Words read_rest(const Words& args, Arguments& into) {
    CLI::App app;
    app.set_help_flag();
    app.allow_extras();
    for (const OptionRow& row : options())
        add_option(app, row);
    app.parse(Words(args.rbegin(), args.rend()));
    for (const OptionRow& row : options())
        collect(app, row, into);
    Words unknown;
    bool only_operands = false;
    for (const std::string& word : app.remaining()) {
        if (!only_operands && word == "--")
            only_operands = true;
        else if (!only_operands && word.size() > 1 && word.front() == '-')
            unknown.push_back(word);
        else
            into.operands.push_back(word);
    }
    return unknown;
}

void check_values(const Arguments& arguments, Faults& faults) {
    for (const auto& [id, values] : arguments.values) {
        const auto command = arguments.command;
        const OptionRow row = command ? as_of(row_of(id), *command) : row_of(id);
        if (values.size() > 1 && !(command ? may_repeat(row, *command) : row.repeats))
            faults.push_back(usage(spelled(row) + " is given more than once", "give it once"));
        if (row.kind == Kind::flag)
            continue;
        for (const std::string& value : values)
            if (const auto complaint = complaint_about(row, value))
                faults.push_back(usage(complaint->what, complaint->remedy));
    }
}

void check_options(const Arguments& arguments, Command command, Faults& faults) {
    for (const auto& [id, values] : arguments.values) {
        const OptionRow& row = row_of(id);
        if (!row.works)
            faults.push_back(not_known_yet(row, command));
        else if (!belongs_to(row, command))
            faults.push_back(of_other_command(row, command));
    }
}

/// A schema is printed and nothing else is done.
void check_alone(const Arguments& arguments, Faults& faults) {
    if (!arguments.operands.empty())
        faults.push_back(usage("--schema reads no file, and " +
                                   in_quotes(arguments.operands.front()) + " is given",
                               "leave one of the two out"));
    if (arguments.count(Opt::out) > 0)
        faults.push_back(usage("--out goes with drawings only, and --schema prints a schema",
                               "send what it prints to a file: 'pelt check --schema vehicle > FILE'"));
}

/// Reads what stands behind the command.
void parse_rest(const Words& args, Arguments& into, Faults& faults) {
    const Command command = *into.command;
    for (const std::string& word : read_rest(args, into))
        faults.push_back(unknown_option(word, command));
    check_options(into, command, faults);
    if (faults.empty())
        check_values(into, faults);
    if (faults.empty() && into.count(Opt::schema) > 0)
        check_alone(into, faults);
    else if (faults.empty())
        check_operands(into.operands, command, faults);
}

bool asks_for_help(const Arguments& arguments) {
    return arguments.count(Opt::help) > 0 || arguments.count(Opt::version) > 0;
}

/// `--help` and `--version` are answered whatever else is wrong, so they are looked for first.
bool has_help_word(const Words& args) {
    const auto end = std::find(args.begin(), args.end(), "--");
    return std::any_of(args.begin(), end, [](const std::string& word) {
        return word == "--help" || word == "-h" || word == "--version" || word == "-V";
    });
}

void note_help_words(const Words& args, Arguments& into) {
    const auto end = std::find(args.begin(), args.end(), "--");
    for (auto word = args.begin(); word != end; ++word) {
        if (*word == "--help" || *word == "-h")
            into.values[Opt::help].emplace_back();
        if (*word == "--version" || *word == "-V")
            into.values[Opt::version].emplace_back();
        if (!into.command)
            if (const CommandRow* row = command_named(*word); row != nullptr && row->works)
                into.command = row->id;
    }
}

void take_command(Words& rest, Arguments& into, Faults& faults) {
    if (rest.front() == "--")
        rest.erase(rest.begin());
    if (rest.empty())
        return;
    const std::string word = rest.front();
    const CommandRow* row = command_named(word);
    if (row != nullptr && row->works) {
        into.command = row->id;
        rest.erase(rest.begin());
    } else {
        faults.push_back(word.size() > 1 && word.front() == '-' ? option_before_command(word)
                                                                : unknown_command(word));
    }
}

} // namespace

std::size_t Arguments::count(Opt option) const {
    const auto found = values.find(option);
    return found == values.end() ? 0 : found->second.size();
}

std::optional<std::string> Arguments::value(Opt option) const {
    const auto found = values.find(option);
    return found == values.end() ? std::nullopt : std::optional(found->second.back());
}

std::string Arguments::value_or_initial(Opt option) const {
    return value(option).value_or(std::string(row_of(option).initial));
}

std::vector<std::string> Arguments::names(Opt option) const {
    std::vector<std::string> out;
    const auto found = values.find(option);
    if (found == values.end())
        return out;
    for (const std::string& text : found->second)
        for (std::string& name : names_in(text).value_or(std::vector<std::string>{}))
            out.push_back(std::move(name));
    return out;
}

Arguments parse(const std::vector<std::string>& args, Faults& faults) {
    Arguments out;
    if (has_help_word(args)) {
        note_help_words(args, out);
        return out;
    }
    check_spelling(args, faults);
    if (!faults.empty())
        return out;
    try {
        Words rest = split_off_command(args, out);
        if (!rest.empty())
            take_command(rest, out, faults);
        if (out.command)
            parse_rest(rest, out, faults);
        else if (faults.empty())
            check_values(out, faults);
    } catch (const CLI::ParseError&) {
        // Not known to happen: check_spelling has refused all that CLI11 refuses. Its own text
        // speaks of types and is not shown.
        faults.push_back(usage("the command line cannot be understood", "see 'pelt --help'"));
    }
    if (asks_for_help(out))
        faults.clear();
    return out;
}

} // namespace pelt::cli
