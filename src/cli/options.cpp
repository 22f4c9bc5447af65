// SPDX-License-Identifier: MIT
#include "cli/options.hpp"

#include "cli/option_table.hpp"
#include "model/error.hpp"

#include <algorithm>

namespace pelt::cli {
namespace {

bool contains(const std::vector<Command>& commands, Command command) {
    return std::find(commands.begin(), commands.end(), command) != commands.end();
}

} // namespace

std::string_view name_of(Group group) {
    switch (group) {
    case Group::job:
        return "The job";
    case Group::film:
        return "Film and rolls";
    case Group::search:
        return "How hard to look";
    case Group::output:
        return "Output";
    case Group::everywhere:
        return "Everywhere";
    }
    return "";
}

const std::vector<Group>& groups() {
    static const std::vector<Group> order{Group::job, Group::film, Group::search, Group::output,
                                          Group::everywhere};
    return order;
}

const std::vector<OptionRow>& options() {
    static const std::vector<OptionRow> table = [] {
        std::vector<OptionRow> all = job_options();
        for (const auto& part : {film_options(), shop_options(), search_options(), output_options(),
                                 everywhere_options()})
            all.insert(all.end(), part.begin(), part.end());
        return all;
    }();
    return table;
}

const OptionRow& row_of(Opt option) {
    for (const OptionRow& row : options())
        if (row.id == option)
            return row;
    throw ProgramError("an option is missing from the table");
}

const OptionRow* option_named(std::string_view name) {
    for (const OptionRow& row : options())
        if (row.name == name)
            return &row;
    return nullptr;
}

const OptionRow* option_lettered(char letter) {
    for (const OptionRow& row : options())
        if (row.letter == letter && letter != 0)
            return &row;
    return nullptr;
}

bool belongs_to(const OptionRow& option, Command command) {
    return option.commands.empty() || contains(option.commands, command);
}

bool may_repeat(const OptionRow& option, Command command) {
    return option.repeats || contains(option.repeats_with, command);
}

OptionRow as_of(const OptionRow& option, Command command) {
    OptionRow row = option;
    row.choices.erase(std::remove_if(row.choices.begin(), row.choices.end(),
                                     [&](const Choice& choice) {
                                         return !choice.commands.empty() &&
                                                !contains(choice.commands, command);
                                     }),
                      row.choices.end());
    return row;
}

std::string spelled(const OptionRow& option) {
    return "--" + std::string(option.name);
}

std::string choices_of(const OptionRow& option) {
    std::string text;
    for (const Choice& choice : option.choices)
        if (choice.works)
            text += (text.empty() ? "" : "|") + std::string(choice.word);
    return text;
}

std::string spelled_with_value(const OptionRow& option) {
    if (option.kind == Kind::flag)
        return spelled(option);
    return spelled(option) + " " +
           (option.value.empty() ? choices_of(option) : std::string(option.value));
}

} // namespace pelt::cli
