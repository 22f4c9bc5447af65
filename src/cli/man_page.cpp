// SPDX-License-Identifier: MIT
#include "cli/man_page.hpp"

#include "cli/options.hpp"
#include "cli/statuses.hpp"
#include "model/error.hpp"
#include "model/limits.hpp"

#include <array>
#include <charconv>
#include <set>

namespace pelt::cli {
namespace {

using Fillings = std::map<std::string, std::string>;

std::string synopsis() {
    std::string text;
    for (const CommandRow& row : commands()) {
        if (!row.works)
            continue;
        text += ".Nm\n.Cm " + std::string(row.name) + "\n.Op Ar OPTION ...\n";
        std::string_view rest = row.operands;
        while (!rest.empty()) {
            const std::size_t end = std::min(rest.find(' '), rest.size());
            std::string operand(rest.substr(0, end));
            rest.remove_prefix(std::min(end + 1, rest.size()));
            const bool optional = operand.front() == '[';
            if (optional)
                operand = operand.substr(1, operand.size() - 2);
            const std::size_t dots = operand.find("...");
            const std::string more = dots == std::string::npos ? "" : " ...";
            text += (optional ? ".Op Ar " : ".Ar ") + operand.substr(0, dots) + more + "\n";
        }
    }
    return text;
}

std::string command_list() {
    std::string text = ".Bl -tag -width Ds\n";
    for (const CommandRow& row : commands())
        if (row.works)
            text += ".It Cm " + std::string(row.name) + "\n" + sentences(row.text) + "\n";
    return text + ".El\n";
}

std::string value_of(const OptionRow& row) {
    if (!row.value.empty())
        return " Ar " + std::string(row.value);
    std::string text;
    for (const Choice& choice : row.choices)
        if (choice.works)
            text += (text.empty() ? " Cm " : " | Cm ") + std::string(choice.word);
    return text;
}

std::string commands_of(const OptionRow& row) {
    std::string text;
    for (const Command command : row.commands)
        if (row_of(command).works)
            text += (text.empty() ? "" : ", ") + std::string(row_of(command).name);
    return text;
}

std::string entry_of(const OptionRow& row) {
    const std::string letter =
        row.letter == 0 ? "" : std::string("Fl ") + row.letter + value_of(row) + " , ";
    std::string text = ".It " + letter + "Fl -" + std::string(row.name) + value_of(row) + "\n" +
                       sentences(row.text) + "\n";
    if (!row.initial.empty())
        text += "The default is " + escaped(row.initial) + ".\n";
    return row.commands.empty() ? text : text + "For " + commands_of(row) + ".\n";
}

std::string option_lists() {
    std::string text;
    for (const Group group : groups()) {
        std::string entries;
        for (const OptionRow& row : options())
            if (row.works && row.group == group)
                entries += entry_of(row);
        if (!entries.empty())
            text +=
                ".Ss " + std::string(name_of(group)) + "\n.Bl -tag -width Ds\n" + entries + ".El\n";
    }
    return text;
}

std::string status_list() {
    std::string text = ".Bl -tag -width Ds\n";
    for (const StatusRow& row : statuses())
        text += ".It " + std::to_string(row.status) + "\n" + escaped(row.meaning) + "\n";
    return text + ".El\n";
}

std::string example_list() {
    std::string text = ".Bl -tag -width Ds\n";
    for (const CommandRow& row : commands())
        for (const Example& example : row.works ? row.examples : std::vector<Example>{})
            text += ".It Li " + escaped(example.line) + "\n" + escaped(example.what) + "\n";
    return text + ".El\n";
}

} // namespace

std::string limit_list() {
    std::string text = ".Bl -tag -width \"00,000,000 bytes\" -compact\n";
    for (const limit::Told& one : limit::all())
        text += ".It " + escaped(one.most) + "\n" + escaped(one.what) + "\n";
    return text + ".El\n";
}

std::string escaped(std::string_view text) {
    std::string out;
    bool in_option = false; // its dashes are to be copied as they are: minus signs, not hyphens
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char before = i == 0 ? '\n' : text[i - 1];
        in_option = text[i] == '-' && (in_option || before == ' ' || before == '\n')
                        ? true
                        : in_option && text[i] != ' ' && text[i] != '\n';
        if (before == '\n' && (text[i] == '.' || text[i] == '\''))
            out += "\\&";
        if (text[i] == '\\')
            out += "\\e";
        else
            out += text[i] == '-' && in_option ? std::string("\\-") : std::string(1, text[i]);
    }
    return out;
}

std::string sentences(std::string_view text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool ends = text[i] == ' ' && i > 0 && (text[i - 1] == '.' || text[i - 1] == '?');
        out += ends ? '\n' : text[i];
    }
    return escaped(out);
}

std::string filled(std::string_view text, const Fillings& fillings) {
    std::string out;
    std::set<std::string> used;
    while (true) {
        const std::size_t open = text.find('@');
        const std::size_t close = open == std::string_view::npos ? open : text.find('@', open + 1);
        out += text.substr(0, open);
        if (close == std::string_view::npos)
            break;
        const std::string word(text.substr(open + 1, close - open - 1));
        const auto filling = fillings.find(word);
        if (filling == fillings.end())
            throw ProgramError("the manual's template asks for @" + word + "@");
        used.insert(word);
        out += filling->second;
        if (!out.empty() && out.back() == '\n')
            out.pop_back();
        text.remove_prefix(close + 1);
    }
    for (const auto& [word, filling] : fillings)
        if (used.count(word) == 0)
            throw ProgramError("the manual's template does not use @" + word + "@");
    return out;
}

Fillings manual_fillings() {
    return {{"SYNOPSIS", synopsis()},
            {"COMMANDS", command_list()},
            {"OPTIONS", option_lists()},
            {"STATUSES", status_list()},
            {"EXAMPLES", example_list()}};
}

std::string mdoc_date(std::string_view iso_date) {
    constexpr std::array<std::string_view, 12> months{
        "January", "February", "March",     "April",   "May",      "June",
        "July",    "August",   "September", "October", "November", "December"};
    int month = 0;
    int day = 0;
    if (iso_date.size() == 10) {
        std::from_chars(iso_date.data() + 5, iso_date.data() + 7, month);
        std::from_chars(iso_date.data() + 8, iso_date.data() + 10, day);
    }
    if (month < 1 || month > 12 || day < 1 || day > 31)
        throw ProgramError("not a date: " + std::string(iso_date));
    return std::string(months[static_cast<std::size_t>(month - 1)]) + " " + std::to_string(day) +
           ", " + std::string(iso_date.substr(0, 4));
}

} // namespace pelt::cli
