// SPDX-License-Identifier: MIT
#include "cli/completed.hpp"

#include "model/error.hpp"

#include <sstream>

namespace pelt::cli {
namespace {

Operand operand_called(const std::string& word) {
    if (word == "VEHICLE")
        return Operand::vehicle;
    if (word == "FILM")
        return Operand::film;
    if (word == "JOBS")
        return Operand::file;
    throw ProgramError("shells cannot complete the operand " + word);
}

/// FILE and NAME stand for a vehicle or a film.
std::vector<Operand> operands_called(const std::string& word) {
    if (word == "FILE" || word == "NAME")
        return {Operand::vehicle, Operand::film};
    return {operand_called(word)};
}

} // namespace

std::string_view name_of(Operand operand) {
    switch (operand) {
    case Operand::vehicle:
        return "vehicle";
    case Operand::film:
        return "film";
    case Operand::file:
        return "file";
    }
    return "";
}

Operands operands_of(const CommandRow& command) {
    Operands out;
    std::istringstream words{std::string(command.operands)};
    std::string word;
    while (words >> word) {
        std::erase_if(word, [](char c) { return c == '[' || c == ']'; });
        const std::size_t dots = word.find("...");
        const bool repeats = dots != std::string::npos;
        word = word.substr(0, dots);
        const std::vector<Operand> can_be = operands_called(word);
        const bool is_first = out.first.empty();
        if (is_first)
            out.first = can_be;
        if (!is_first || repeats)
            out.later.insert(out.later.end(), can_be.begin(), can_be.end());
    }
    return out;
}

std::vector<OptionRow> options_for(Command command) {
    std::vector<OptionRow> out;
    for (const OptionRow& row : options())
        if (row.works && belongs_to(row, command))
            out.push_back(as_of(row, command));
    return out;
}

std::vector<OptionRow> options_before_commands() {
    std::vector<OptionRow> out;
    for (const OptionRow& row : options())
        if (row.works && row.commands.empty())
            out.push_back(row);
    return out;
}

std::vector<std::string> spellings_of(const OptionRow& row) {
    if (row.letter == 0)
        return {spelled(row)};
    return {std::string{'-', row.letter}, spelled(row)};
}

std::string quoted_for_shell(std::string_view text) {
    std::string out = "'";
    for (const char c : text)
        out += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return out + "'";
}

} // namespace pelt::cli
